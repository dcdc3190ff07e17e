package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.tables.Comparison;
import weatherlap.datasets.portfolio.SortedPortfolio;
import weatherlap.datasets.table.Problem;
import weatherlap.reports.compare.CompareReport;
import weatherlap.reports.compare.ResultFiles;
import weatherlap.reports.compare.ResultFiles.Rows;
import weatherlap.reports.output.Content;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.run.Simulator;

/**
 * The main job: simulates a portfolio under both methods and writes the report.
 *
 * @param threads to simulate with, 1 or more
 * @param largestWholeBytes tables of openings beyond so many bytes are read house by house, if they are sorted
 */
public record Compare(InputPaths paths, OutputRequest output, int threads, long largestWholeBytes) {
    /** Some thousand houses. */
    private static final long LARGEST_WHOLE_BYTES = 2L << 20;

    public Compare(InputPaths paths, OutputRequest output, int threads) {
        this(paths, output, threads, LARGEST_WHOLE_BYTES);
    }

    /** @throws BadInput with every problem of the tables, before anything is simulated or written; of a large portfolio, before anything is
     *     put in place */
    public void run(Messages messages) throws IOException {
        if (paths.portfolio().isPresent() && isLarge(paths.portfolio().orElseThrow())) {
            runHouseByHouse(paths.portfolio().orElseThrow(), messages);
        } else {
            run(Inputs.read(paths), messages);
        }
    }

    private boolean isLarge(Path portfolio) {
        try {
            return Inputs.PORTFOLIO_FILES.stream().allMatch(file -> Files.isRegularFile(portfolio.resolve(file)))
                    && Files.size(portfolio.resolve("openings.csv")) > largestWholeBytes;
        } catch (IOException e) {
            return false;
        }
    }

    private void runHouseByHouse(Path portfolio, Messages messages) throws IOException {
        Inputs inputs = Inputs.besidePortfolio(paths);
        try (SortedPortfolio houses =
                SortedPortfolio.open(portfolio, inputs.assumptions().assumptions())) {
            run(inputs, houses, lines(portfolio.resolve("houses.csv")), () -> warnings(houses), messages);
        } catch (SortedPortfolio.OutOfOrder e) {
            messages.note("the tables are not all in the order of house_id; they are read whole");
            run(Inputs.read(paths), messages);
        }
    }

    private static long lines(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
            return lines.count() - 1;
        }
    }

    private static List<String> warnings(SortedPortfolio houses) {
        if (!houses.errors().isEmpty()) {
            throw new BadInput(houses.errors().stream().map(Problem::toString).toList());
        }
        return Warnings.grouped(houses.warnings());
    }

    void run(Inputs inputs, Messages messages) throws IOException {
        List<House> houses = inputs.portfolio().houses();
        if (houses.isEmpty()) {
            throw new BadInput(List.of("houses.csv: holds no house; there is nothing to compare"));
        }
        run(inputs, houses.iterator(), houses.size(), List::of, messages);
    }

    /**
     * @param count about how many houses there are
     * @param warnings of the houses, once all of them were read
     */
    private void run(
            Inputs inputs, Iterator<House> houses, long count, Supplier<List<String>> warnings, Messages messages)
            throws IOException {
        inputs.warnings().forEach(warning -> messages.note("warning: " + warning));
        try (OutputFolder folder = output.open(paths.named())) {
            Simulator simulator = inputs.simulator();
            Comparison.Sum sum = simulate(simulator, houses, count, folder, messages);
            List<String> allWarnings = new ArrayList<>(inputs.warnings());
            for (String warning : warnings.get()) {
                messages.note("warning: " + warning);
                allWarnings.add(warning);
            }
            Comparison comparison = sum.comparison();
            Assumptions assumptions = inputs.assumptions().assumptions();
            CompareReport report = new CompareReport(
                    inputs.name(),
                    comparison,
                    simulator,
                    Decision.of(comparison.shown(), simulator::takeoff, assumptions.scenario()),
                    assumptions,
                    inputs.climate().name(),
                    inputs.assumed(),
                    allWarnings,
                    shown(inputs));
            report.write(folder);
            for (Map.Entry<String, String> text : inputs.assumptions().texts().entrySet()) {
                folder.write(
                        "assumptions/" + text.getKey(),
                        Content.of(text.getValue().getBytes(StandardCharsets.UTF_8)));
            }
            folder.commit(new RunRecord(Version.current(), "compare", settings(inputs), inputs.checksums()));
            report.lines().forEach(messages::result);
        }
        messages.note("the report is in " + Next.pages(output.folder(), "report"));
    }

    private Comparison.Sum simulate(
            Simulator simulator, Iterator<House> houses, long count, OutputFolder folder, Messages messages)
            throws IOException {
        Comparison.Sum sum = new Comparison.Sum(simulator.draws(), count);
        try (ResultFiles files = new ResultFiles(folder);
                Messages.Progress progress = messages.progress("houses", Math.toIntExact(count))) {
            simulator.run(houses, threads, results -> Rows.of(results, simulator.draws()), rows -> {
                files.add(rows);
                rows.houses().forEach(house -> {
                    sum.add(house);
                    progress.step();
                });
            });
        }
        return sum;
    }

    /** What decides the result beside the input files; threads do not. */
    private static Map<String, Object> settings(Inputs inputs) {
        Scenario scenario = inputs.assumptions().assumptions().scenario();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("seed", (long) scenario.value(Scalar.SEED));
        settings.put("draws", scenario.whole(Scalar.DRAWS));
        return settings;
    }

    private static Map<String, String> shown(Inputs inputs) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("program", "weatherlap " + Version.current());
        settings(inputs).forEach((name, value) -> shown.put(name, value.toString()));
        inputs.checksums().forEach((name, sum) -> shown.put(name, "SHA-256 " + sum));
        return shown;
    }
}
