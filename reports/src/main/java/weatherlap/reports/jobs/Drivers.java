package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weatherlap.analysis.drivers.DriverRow;
import weatherlap.analysis.drivers.DriverStudy;
import weatherlap.analysis.drivers.DriverTable;
import weatherlap.analysis.drivers.DriverWords;
import weatherlap.analysis.drivers.Houses;
import weatherlap.analysis.drivers.Outcome;
import weatherlap.analysis.drivers.SimulatedPortfolio;
import weatherlap.analysis.sensitivity.SobolIndices.Design;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.study.DriverIndices;
import weatherlap.charts.study.Swings;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.reports.format.Content;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.output.Version;
import weatherlap.reports.weather.ClimateMemo;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Streams;

/**
 * Ranks the assumptions by what they do to the answer.
 *
 * @param effort how much to run
 */
public record Drivers(InputPaths paths, OutputRequest output, Effort effort) {
    private static final int SHOWN_SWINGS = 20;

    /**
     * @param houses of the portfolio to simulate, at most
     * @param draws a house, for what varies by luck
     * @param points of each sequence
     * @param replicates sequences
     * @param singly rows that get indices by themselves
     * @param information points for the worth of knowing a row
     */
    public record Effort(int houses, int draws, int points, int replicates, int singly, int information) {}

    /** @throws BadInput with every problem of the tables, before anything is simulated or written */
    public void run(Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        output.refuseOther(inputs.checksums());
        messages.warn(inputs.warnings());
        Assumptions base = inputs.assumptions().assumptions();
        refuseContradictions(base);
        List<House> houses = SimulatedPortfolio.sample(inputs.portfolio().houses(), effort.houses);
        try (OutputFolder folder = output.open(paths.named())) {
            DriverStudy study = study(base, houses, inputs, messages);
            TableWriter.CSV.write(folder, List.of(DriverTable.of(study)));
            String scope = houses.size() + " of "
                    + Numbers.count(inputs.portfolio().houses().size(), "house", "houses");
            for (Outcome outcome : Outcome.values()) {
                write(folder, outcome.key() + "-indices", indices(study, outcome, scope));
            }
            write(folder, "cost_difference-swings", swings(study, base, scope));
            folder.commit(new RunRecord(Version.current(), "drivers", settings(inputs, houses), inputs.checksums()));
            messages.result(
                    "What drives the difference, " + base.scenario().contrast().less() + ", over " + scope + ".");
            DriverWords.of(study).forEach(messages::result);
            messages.result(DriverWords.held(base.scenario()));
        }
        messages.note("drivers.csv and charts are in " + output.folder() + "; a browser shows "
                + output.folder().resolve("charts").resolve("cost_difference-swings.svg"));
    }

    /** Numbers are tried anywhere in their ranges, all at once. */
    private static void refuseContradictions(Assumptions base) {
        List<String> problems = AssumptionTables.contradictionsInRanges(base).stream()
                .map(problem -> problem + " (somewhere in their ranges, all of which drivers tries)")
                .toList();
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
    }

    private DriverStudy study(Assumptions base, List<House> swung, Inputs inputs, Messages messages) {
        Function<Scenario, RainClimate> climate = new ClimateMemo(inputs.climate());
        List<House> dealt = SimulatedPortfolio.sample(inputs.portfolio().houses(), effort.replicates);
        DriverStudy.Effort asked = new DriverStudy.Effort(
                new Design(effort.points, effort.replicates, new Streams(inputs.seed())),
                effort.singly,
                effort.information);
        Function<List<House>, Houses> simulated =
                houses -> new SimulatedPortfolio(houses, climate, effort.draws, inputs.seed());
        int runs = DriverStudy.runs(base, simulated.apply(swung), asked);
        try (Messages.Progress progress = messages.progress("runs", runs)) {
            return DriverStudy.of(
                    base,
                    new Counted(simulated.apply(dealt), progress),
                    new Counted(simulated.apply(swung), progress),
                    asked);
        }
    }

    /** Tells of every run. */
    private record Counted(Houses houses, Messages.Progress progress) implements Houses {
        @Override
        public int count() {
            return houses.count();
        }

        @Override
        public OneHouse house(int position, Assumptions base) {
            OneHouse house = houses.house(position, base);
            return known -> {
                Difference difference = house.at(known);
                progress.step();
                return difference;
            };
        }
    }

    private static DriverIndices indices(DriverStudy study, Outcome outcome, String scope) {
        return new DriverIndices(
                scope,
                outcome == Outcome.COST_DIFFERENCE ? "the cost difference" : "the risk difference",
                study.rows().stream()
                        .filter(row -> row.outcome() == outcome && row.indices().isPresent())
                        .map(row -> {
                            Index index = row.indices().orElseThrow();
                            return new DriverIndices.Driver(
                                    (row.group() ? "all of " : "") + row.assumption(),
                                    index.firstOrder().value(),
                                    index.firstOrder().error(),
                                    index.total().value(),
                                    index.total().error());
                        })
                        .toList());
    }

    private static Swings swings(DriverStudy study, Assumptions base, String scope) {
        List<Swings.Swing> widest = study.rows().stream()
                .filter(row -> row.outcome() == Outcome.COST_DIFFERENCE && !row.group())
                .sorted(Comparator.comparingDouble(
                        (DriverRow row) -> -row.swing().width()))
                .limit(SHOWN_SWINGS)
                .map(Drivers::swing)
                .toList();
        return new Swings(
                base.scenario().contrast(),
                scope,
                "cost over " + Numbers.count(base.scenario().whole(Scalar.HORIZON_YEARS), "year", "years"),
                study.middle().get(Outcome.COST_DIFFERENCE.ordinal()),
                widest);
    }

    private static Swings.Swing swing(DriverRow row) {
        return new Swings.Swing(
                row.assumption(),
                row.lowValue(),
                row.highValue(),
                row.swing().low(),
                row.swing().high());
    }

    /** Writes a chart of a study. */
    static void write(OutputFolder folder, String name, Picture picture) throws IOException {
        folder.write("charts/" + name + ".svg", Content.svg(picture.svg()));
    }

    private Map<String, Object> settings(Inputs inputs, List<House> houses) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("seed", inputs.seed());
        settings.put("houses", houses.size());
        settings.put("draws", effort.draws);
        settings.put("points", effort.points);
        settings.put("replicates", effort.replicates);
        settings.put("singly", effort.singly);
        settings.put("information_points", effort.information);
        return settings;
    }
}
