package weatherlap.reports.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.portfolio.SortedPortfolio;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;

/** Finds every problem of the tables; nothing is simulated, nothing is written. */
public record CheckInputs(InputPaths paths) {
    /** Counts houses, none of which is kept. */
    private static final class Tally {
        private int houses;
        private int openings;

        void add(House house) {
            houses++;
            openings += house.openingCount();
        }

        Loaded<Portfolio> read(Path folder, Optional<Assumptions> assumptions) {
            try (SortedPortfolio portfolio =
                    SortedPortfolio.open(folder, PortfolioScan.of(folder), assumptions, Scratch.inMemory())) {
                portfolio.forEachRemaining(this::add);
                return portfolio.loaded(new Portfolio(List.of()));
            }
        }
    }

    /** @throws BadInput with every problem found */
    public void run(Messages messages) {
        Tally tally = new Tally();
        Inputs inputs = Inputs.read(paths, tally::read);
        inputs.portfolio().houses().forEach(tally::add); // of the demo
        messages.warn(inputs.warnings());
        int warnings = inputs.warnings().size();
        String whose = paths.portfolio().isPresent() ? "" : "the bundled demo, ";
        messages.result(whose + Numbers.count(tally.houses, "house", "houses") + ", "
                + Numbers.count(tally.openings, "opening", "openings") + ": nothing wrong"
                + (warnings == 0 ? "" : ", " + Numbers.count(warnings, "warning", "warnings")));
        paths.portfolio()
                .ifPresent(folder ->
                        messages.note("next: " + NextCommand.command("compare", paths.words(), "--out", "report")));
    }
}
