package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.handout.HandoutMaker;
import weatherlap.reports.handout.InsideSheet;
import weatherlap.reports.handout.SheetWords;
import weatherlap.reports.handout.TwoPages;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.OneHouse;
import weatherlap.reports.offer.ChoiceLine;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.page.Paper;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.run.PlanParts;

/**
 * Writes the homeowner's handout of one house, as a page and as a printed sheet.
 *
 * @param house its key; empty: the only one
 */
public record MakeHandout(InputPaths paths, String house, Paper paper, HandoutWishes wishes, OutputRequest output) {
    /** @throws BadInput with every problem of the tables, or where there is no such house to show */
    public void run(Messages messages) throws IOException {
        OneHouse one = OneHouse.read(paths, house, messages);
        Inputs inputs = one.inputs();
        House found = one.house();
        messages.warn(inputs.warnings());
        HandoutMaker handout = handout(inputs, found);
        try (OutputFolder folder = output.open(paths.named())) {
            folder.write("handout.html", Content.of(Html.render("handout.jte", handout.page())));
            folder.write("handout.pdf", TwoPages.of(handout, paper));
            if (wishes.inside()) {
                folder.write("inside.pdf", inside(handout, found, inputs));
            }
            folder.commit(new RunRecord(Version.current(), "handout", settings(inputs, found), inputs.checksums()));
        }
        messages.note("the handout is in " + NextCommand.pages(output.folder(), "handout"));
    }

    private HandoutMaker handout(Inputs inputs, House found) {
        try {
            return HandoutMaker.of(
                    found,
                    inputs.simulator(),
                    inputs.assumptions().assumptions(),
                    inputs.rain(),
                    new SheetWords(FamilyWords.in(wishes.language()), inputs.shop(), wishes.prices()),
                    Optional.of(wishes.choice()).filter(line -> !line.isEmpty()));
        } catch (ChoiceLine.Refused e) {
            throw new BadInput(List.of("--choice: " + e.getMessage()));
        }
    }

    /** Prices without margin, service and overhead are the direct cost; with service and overhead, and no profit, they are the floor. */
    private Content inside(HandoutMaker handout, House found, Inputs inputs) {
        Scenario scenario = inputs.assumptions().assumptions().scenario();
        Scenario plain =
                scenario.with(Scalar.GROSS_MARGIN, 0).with(Scalar.NET_PROFIT, 0).with(Choice.PRICING, "gross_margin");
        InsideSheet sheet = handout.inside(
                paper,
                parts(found, inputs, plain.with(Scalar.SERVICE_RESERVE, 0)),
                parts(found, inputs, plain.with(Choice.PRICING, "overhead_and_net")),
                scenario.value(Scalar.SERVICE_RESERVE));
        return Pdf.of("Inside the shop: not for the family", Html.render("inside.jte", sheet));
    }

    private static PlanParts parts(House found, Inputs inputs, Scenario scenario) {
        return inputs.simulator(scenario).simulateForPlans(found).parts();
    }

    private Map<String, Object> settings(Inputs inputs, House found) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("house", found.id());
        settings.put("paper", paper.word());
        settings.put("language", wishes.language().word());
        settings.put("prices", wishes.prices());
        settings.put("choice", wishes.choice());
        settings.put("seed", inputs.seed());
        settings.put("draws", inputs.scenario().whole(Scalar.DRAWS));
        return settings;
    }
}
