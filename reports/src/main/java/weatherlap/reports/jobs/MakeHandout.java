package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.reports.handout.HandoutMaker;
import weatherlap.reports.handout.TwoPages;
import weatherlap.reports.output.Content;
import weatherlap.reports.output.Html;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.Pdf;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.page.Paper;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;

/**
 * Writes the homeowner's handout of one house, as a page and as a printed sheet.
 *
 * @param house its key
 */
public record MakeHandout(InputPaths paths, String house, Paper paper, OutputRequest output) {
    private static final String TITLE = "Two ways to replace your windows";

    /** @throws BadInput with every problem of the tables, or where there is no such house */
    public void run(Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        House found = inputs.portfolio().houses().stream()
                .filter(candidate -> candidate.id().equals(house))
                .findFirst()
                .orElseThrow(() -> new BadInput(List.of(missing(inputs))));
        if (found.openingCount() == 0) {
            throw new BadInput(
                    List.of("openings.csv: the house " + house + " has no opening; there is nothing to show"));
        }
        inputs.warnings().forEach(warning -> messages.note("warning: " + warning));
        Scenario scenario = inputs.assumptions().assumptions().scenario();
        HandoutMaker handout = HandoutMaker.of(
                found,
                inputs.simulator(),
                inputs.assumptions().assumptions(),
                RainClimate.of(inputs.climate(), scenario));
        try (OutputFolder folder = output.open(paths.named())) {
            byte[] page = Html.render("handout.jte", handout.page()).getBytes(StandardCharsets.UTF_8);
            folder.write("handout.html", Content.of(page));
            folder.write("handout.pdf", Pdf.of(TITLE, TwoPages.of(handout, paper)));
            folder.commit(new RunRecord(Version.current(), "handout", settings(inputs, scenario), inputs.checksums()));
        }
        messages.note("the handout is in " + output.folder());
    }

    private Map<String, Object> settings(Inputs inputs, Scenario scenario) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("house", house);
        settings.put("paper", paper.word());
        settings.put("seed", (long) scenario.value(Scalar.SEED));
        settings.put("draws", scenario.whole(Scalar.DRAWS));
        return settings;
    }

    private String missing(Inputs inputs) {
        List<House> houses = inputs.portfolio().houses();
        return "houses.csv: there is no house " + house
                + (houses.isEmpty()
                        ? "; the table holds none"
                        : "; the first of " + houses.size() + " is "
                                + houses.get(0).id());
    }
}
