package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.handout.HandoutMaker;
import weatherlap.reports.handout.TwoPages;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.OneHouse;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.page.Paper;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;

/**
 * Writes the homeowner's handout of one house, as a page and as a printed sheet.
 *
 * @param house its key; empty: the only one
 */
public record MakeHandout(InputPaths paths, String house, Paper paper, OutputRequest output) {
    /** @throws BadInput with every problem of the tables, or where there is no such house to show */
    public void run(Messages messages) throws IOException {
        OneHouse one = OneHouse.read(paths, house, messages);
        Inputs inputs = one.inputs();
        House found = one.house();
        messages.warn(inputs.warnings());
        HandoutMaker handout =
                HandoutMaker.of(found, inputs.simulator(), inputs.assumptions().assumptions(), inputs.rain());
        try (OutputFolder folder = output.open(paths.named())) {
            folder.write("handout.html", Content.of(Html.render("handout.jte", handout.page())));
            folder.write("handout.pdf", TwoPages.of(handout, paper));
            folder.commit(new RunRecord(Version.current(), "handout", settings(inputs, found), inputs.checksums()));
        }
        messages.note("the handout is in " + NextCommand.pages(output.folder(), "handout"));
    }

    private Map<String, Object> settings(Inputs inputs, House found) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("house", found.id());
        settings.put("paper", paper.word());
        settings.put("seed", inputs.seed());
        settings.put("draws", inputs.scenario().whole(Scalar.DRAWS));
        return settings;
    }
}
