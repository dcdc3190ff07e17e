package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.Comparison;
import weatherlap.analysis.unmeasured.SwingStudy;
import weatherlap.datasets.assumptions.PriceDates;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.portfolio.SortedPortfolio;
import weatherlap.datasets.shortform.ShortPortfolio;
import weatherlap.datasets.table.Problem;
import weatherlap.reports.compare.CompareReport;
import weatherlap.reports.compare.Findings;
import weatherlap.reports.compare.ResultFiles;
import weatherlap.reports.compare.ResultFiles.Rows;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.inputs.AssumedWords;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.LargePortfolio;
import weatherlap.reports.inputs.TableNames;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.reports.output.Warnings;
import weatherlap.reports.unmeasured.UnmeasuredSection;
import weatherlap.reports.whatif.FrontSheets;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.many.Ahead;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.JobAlternatives;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/**
 * The main job: simulates a portfolio under both methods and writes the report.
 *
 * @param threads to simulate with, 1 or more
 * @param largestWholeBytes tables of openings beyond so many bytes are read house by house, in the order of {@code house_id}
 */
public record Compare(InputPaths paths, OutputRequest output, int threads, long largestWholeBytes) {
    /** What came of the houses, of those shown also by other crews and over other horizons. */
    private record Sums(Comparison.Sum sum, List<Map<Method, JobParts>> jobs) {}

    /** The same, and what is doubtful in their tables. */
    private record Simulated(Sums sums, List<String> warnings) {}

    /** Some houses in a row; of those not shown no other crews and horizons. */
    private record Done(Rows rows, List<Map<Method, JobParts>> jobs) {}

    public Compare(InputPaths paths, OutputRequest output, int threads) {
        this(paths, output, threads, LargePortfolio.LARGEST_WHOLE_BYTES);
    }

    /** @throws BadInput with every problem of the tables, before anything is simulated or written; of a large portfolio, before anything is
     *     put in place */
    public void run(Messages messages) throws IOException {
        Optional<Ahead<PortfolioScan>> scan = scan();
        Inputs inputs = inputs();
        Pdf.loadAhead();
        run(inputs, scan, messages);
    }

    /** Of a large portfolio, begun while all else is read. */
    private Optional<Ahead<PortfolioScan>> scan() {
        return large().map(folder -> Ahead.of(() -> PortfolioScan.of(folder)));
    }

    private Optional<Path> large() {
        return LargePortfolio.in(paths, largestWholeBytes);
    }

    /** What the run reads; of a large portfolio all but the houses. */
    Inputs inputs() {
        return large().isPresent() ? Inputs.besidePortfolio(paths) : Inputs.read(paths);
    }

    /** @param inputs as {@link #inputs} gives them */
    void run(Inputs inputs, Messages messages) throws IOException {
        run(inputs, scan(), messages);
    }

    private void run(Inputs inputs, Optional<Ahead<PortfolioScan>> scanned, Messages messages) throws IOException {
        output.refuseOther(inputs.checksums());
        messages.warn(inputs.warnings());
        try (OutputFolder folder = output.asked(options()).open(paths.named())) {
            Simulator simulator = inputs.simulator();
            Simulated simulated = simulated(inputs, scanned, simulator, folder, messages);
            SecondCompiler.afterHouses();
            messages.warn(simulated.warnings());
            Comparison comparison = simulated.sums().sum().comparison();
            Optional<SwingStudy> unmeasured = paths.portfolio()
                    .flatMap(ShortPortfolio::in)
                    .map(houses -> SwingStudy.of(houses, simulator))
                    .filter(study -> !study.swings().isEmpty());
            CompareReport report = write(
                    paths,
                    inputs,
                    simulator,
                    comparison,
                    simulated.sums().jobs(),
                    simulated.warnings(),
                    unmeasured,
                    folder);
            inputs.refuseEdited(paths);
            folder.commit(record("compare", inputs));
            report.lines().forEach(messages::result);
            unmeasured.flatMap(UnmeasuredSection::inALine).ifPresent(messages::note);
        }
        messages.note("the report is in " + NextCommand.pages(output.folder(), "report"));
    }

    /**
     * Writes the report of houses that were compared, and the assumptions.
     *
     * @param paths that the inputs were read from
     * @param simulator that made the results
     * @param jobs of the houses shown, by the {@link FrontSheets#alternatives} to the run
     * @param warnings what is doubtful in the tables of the houses
     * @param unmeasured what a short table left out
     */
    public static CompareReport write(
            InputPaths paths,
            Inputs inputs,
            Simulator simulator,
            Comparison comparison,
            List<Map<Method, JobParts>> jobs,
            List<String> warnings,
            Optional<SwingStudy> unmeasured,
            OutputFolder folder)
            throws IOException {
        Assumptions assumptions = inputs.assumptions().assumptions();
        RainClimate climate = inputs.rain();
        CompareReport report = new CompareReport(
                inputs.name(),
                comparison,
                jobs,
                simulator,
                assumptions,
                climate,
                inputs.shop().terms(),
                AssumedWords.of(inputs.assumptions(), paths.assumptions()),
                TableNames.sources(paths.portfolio(), paths.assumptions()),
                Stream.concat(inputs.warnings().stream(), warnings.stream()).toList(),
                shown(paths, inputs),
                unmeasured,
                Ahead.of(() -> Findings.of(comparison, assumptions, climate)));
        report.write(folder);
        WriteAssumptions.write(inputs.assumptions(), "assumptions/", folder);
        return report;
    }

    /** What a run of a command depends on. */
    public static RunRecord record(String command, Inputs inputs) {
        return new RunRecord(Version.current(), command, settings(inputs), inputs.checksums());
    }

    private Simulated simulated(
            Inputs inputs,
            Optional<Ahead<PortfolioScan>> scanned,
            Simulator simulator,
            OutputFolder folder,
            Messages messages)
            throws IOException {
        if (scanned.isEmpty()) {
            List<House> houses = inputs.portfolio().houses();
            return new Simulated(simulate(simulator, houses.iterator(), houses.size(), folder, messages), List.of());
        }
        PortfolioScan scan = scanned.get().get();
        if (scan.order().isEmpty()) {
            messages.note("the tables are not in order of house_id, so they are sorted first");
        }
        Optional<Assumptions> assumptions = Optional.of(inputs.assumptions().assumptions());
        try (SortedPortfolio houses =
                SortedPortfolio.open(paths.portfolio().orElseThrow(), scan, assumptions, folder.scratch())) {
            Sums sums = simulate(simulator, houses, scan.houses(), folder, messages);
            if (!houses.errors().isEmpty()) {
                throw Inputs.refused(
                        paths, houses.errors().stream().map(Problem::toString).toList());
            }
            return new Simulated(sums, Warnings.grouped(houses.warnings()));
        }
    }

    /** @param count about how many houses there are */
    private Sums simulate(
            Simulator simulator, Iterator<House> houses, int count, OutputFolder folder, Messages messages)
            throws IOException {
        Comparison.Sum sum = new Comparison.Sum(simulator.draws(), count);
        List<Map<Method, JobParts>> jobs = new ArrayList<>();
        JobAlternatives alternatives = FrontSheets.alternatives(simulator);
        double riskLimit = simulator.assumptions().scenario().value(Scalar.RISK_LIMIT);
        EveryFew shown = new EveryFew(houses, Comparison.step(count));
        Function<List<SimulatedHouse>, Done> done = some -> new Done(
                Rows.of(HouseChoice.each(some, riskLimit)),
                Each.of(some, house -> shown.has(house.result().house()) ? alternatives.of(house) : Map.of()));
        try (ResultFiles files = new ResultFiles(folder);
                Messages.Progress progress = messages.progress("houses", count)) {
            simulator.run(shown, threads, done, some -> {
                files.add(some.rows());
                some.rows().choices().forEach(choice -> {
                    sum.add(choice);
                    progress.step();
                });
                jobs.addAll(Each.where(some.jobs(), parts -> !parts.isEmpty()));
            });
        }
        return new Sums(sum, jobs);
    }

    /** The tables that the run writes hold every change, but not which of their prices had no way to the year asked for. */
    private List<String> options() {
        return Stream.concat(
                        RunFile.OWN_TABLES.stream(),
                        PriceDates.asked(paths.changes()).map(year -> "--as-of=" + year).stream())
                .toList();
    }

    /** What decides the result beside the input files; threads do not. */
    private static Map<String, Object> settings(Inputs inputs) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("any_bearing", inputs.climate().anyBearing());
        settings.put("seed", inputs.seed());
        settings.put("draws", inputs.scenario().whole(Scalar.DRAWS));
        return settings;
    }

    private static Map<String, String> shown(InputPaths paths, Inputs inputs) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("program", "weatherlap " + Version.current());
        settings(inputs).forEach((name, value) -> shown.put(name, value.toString()));
        Map<String, Path> folders = RunSums.folders(paths.portfolio(), paths.assumptions(), Optional.empty());
        inputs.checksums().forEach((name, sum) -> shown.put(TableNames.ofSum(name, folders), "SHA-256 " + sum));
        return shown;
    }
}
