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
import weatherlap.sim.run.Simulator;

/**
 * Writes the homeowner's handout of one house, as a page and as a printed sheet.
 *
 * @param house its key; empty: the only one
 */
public record MakeHandout(InputPaths paths, String house, Paper paper, HandoutWishes wishes, OutputRequest output) {
    /** @throws BadInput with every problem of the tables, or where there is no such house to show */
    public void run(Messages messages) throws IOException {
        Pdf.loadAhead();
        OneHouse one = OneHouse.read(paths, house, messages);
        Inputs inputs = one.inputs();
        messages.warn(inputs.warnings());
        try (OutputFolder folder = output.open(paths.named())) {
            new Maker(inputs).write(one.house(), folder::write);
            commit(folder, inputs, one.house().id());
        }
        messages.note("the handout is in " + NextCommand.pages(output.folder(), "handout"));
    }

    /**
     * A handout for every house of the portfolio.
     *
     * @throws BadInput with every problem of the tables
     */
    public void runAll(Messages messages) throws IOException {
        Pdf.loadAhead();
        Inputs inputs = Inputs.read(paths);
        messages.warn(inputs.warnings());
        Maker maker = new Maker(inputs);
        try (OutputFolder folder = output.open(paths.named())) {
            new SheetFolder("handout", "Handouts", inputs).write(folder, maker::write, messages);
            commit(folder, inputs, "all");
        }
        messages.note("the handouts are in " + SheetFolder.where(output));
    }

    /** Writes the files of one house after another, with what all of them rest on. */
    private final class Maker {
        private final Inputs inputs;
        private final Simulator simulator;

        Maker(Inputs inputs) {
            this.inputs = inputs;
            this.simulator = inputs.simulator();
        }

        void write(House found, SheetFolder.Files files) throws IOException {
            HandoutMaker handout = handout(found);
            files.write("handout.html", Content.of(Html.render("handout.jte", handout.page())));
            files.write("handout.pdf", TwoPages.of(handout, paper));
            if (wishes.inside()) {
                files.write("inside.pdf", inside(handout, found));
            }
        }

        private HandoutMaker handout(House found) {
            try {
                return HandoutMaker.of(
                        found,
                        simulator,
                        new SheetWords(FamilyWords.in(wishes.language()), inputs.shop(), wishes.prices()),
                        Optional.of(wishes.choice()).filter(line -> !line.isEmpty()));
            } catch (ChoiceLine.Refused e) {
                throw new BadInput(List.of("--choice: " + e.getMessage()));
            }
        }

        /** Prices without margin, service and overhead are the direct cost; with service and overhead, and no profit, they are the floor. */
        private Content inside(HandoutMaker handout, House found) {
            Scenario scenario = inputs.scenario();
            Scenario plain = scenario.with(Scalar.GROSS_MARGIN, 0)
                    .with(Scalar.NET_PROFIT, 0)
                    .with(Choice.PRICING, "gross_margin");
            InsideSheet sheet = handout.inside(
                    paper,
                    parts(found, plain.with(Scalar.SERVICE_RESERVE, 0)),
                    parts(found, plain.with(Choice.PRICING, "overhead_and_net")),
                    scenario.value(Scalar.SERVICE_RESERVE));
            return Pdf.of("Inside the shop: not for the family", Html.render("inside.jte", sheet));
        }

        private PlanParts parts(House found, Scenario scenario) {
            return inputs.simulator(scenario).simulateForPlans(found).parts();
        }
    }

    private void commit(OutputFolder folder, Inputs inputs, String of) throws IOException {
        folder.commit(new RunRecord(Version.current(), "handout", settings(inputs, of), inputs.checksums()));
    }

    private Map<String, Object> settings(Inputs inputs, String of) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("house", of);
        settings.put("paper", paper.word());
        settings.put("language", wishes.language().word());
        settings.put("prices", wishes.prices());
        settings.put("choice", wishes.choice());
        settings.put("seed", inputs.seed());
        settings.put("draws", inputs.scenario().whole(Scalar.DRAWS));
        return settings;
    }
}
