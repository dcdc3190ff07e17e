package weatherlap.reports.spark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.storage.StorageLevel;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.Comparison;
import weatherlap.analysis.tables.PortfolioSum;
import weatherlap.reports.compare.CompareReport;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.MethodsOption;
import weatherlap.reports.options.ShopOption;
import weatherlap.reports.options.WeatherOptions;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRefused;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.whatif.FrontSheets;
import weatherlap.sim.Each;
import weatherlap.sim.run.JobAlternatives;
import weatherlap.sim.run.Simulator;

/**
 * {@code compare} as a job of Apache Spark. Rows are the same to the byte; the report is made from sums of partitions by the code that
 * {@code compare} uses, and its means may differ in their last digits, since partitions add up in another order.
 */
@Command(
        name = "compare-on-spark",
        description = "Compares two methods for every window of more houses than one machine is for.",
        mixinStandardHelpOptions = true)
public final class CompareOnSpark implements Callable<Integer> {
    private static final int MOST_PROBLEMS = 20;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "TABLES",
            description =
                    "Folder with houses.csv, elevations.csv and openings.csv, each a file or a folder of files: any"
                            + " path that Spark reads.")
    private String tables;

    @Option(
            names = "--format",
            paramLabel = "WORD",
            description = "What the tables are, as Spark calls it, and how their names end (default: csv).")
    private String format = "csv";

    @Option(
            names = "--rows",
            required = true,
            paramLabel = "PATH",
            description = "New folder for the tables of every house: any path that Spark writes.")
    private String rows;

    @Option(names = "--parquet", description = "Write those tables as Parquet, too.")
    private boolean parquet;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "New folder for the report, where the driver runs.")
    private Path out;

    @Option(
            names = "--houses-a-task",
            paramLabel = "N",
            description = "About how many houses a task takes (default: 10,000, some 20 seconds of work).")
    private int housesATask = 10_000;

    @Option(
            names = "--called",
            paramLabel = "NAME",
            description = "What the results call the houses (default: the name of their folder).")
    private String called;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private WeatherOptions weather;

    @Mixin
    private ShopOption shop;

    @Mixin
    private MethodsOption methods;

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        int status = run(out, new PrintWriter(System.err, true, StandardCharsets.UTF_8), arguments);
        if (status != 0) {
            System.exit(status);
        }
    }

    /** The job; 0, or 2 where options or tables are not as they must be, or 1. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return new CommandLine(new CompareOnSpark())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((failure, line, parsed) -> {
                    if (failure instanceof BadInput bad) {
                        bad.problems().forEach(line.getErr()::println);
                        return 2;
                    }
                    if (failure instanceof OutputRefused) {
                        line.getErr().println(failure.getMessage());
                        return 2;
                    }
                    throw failure;
                })
                .execute(arguments);
    }

    /** Options as they were given. */
    static CompareOnSpark parsed(List<String> arguments) {
        CompareOnSpark job = new CompareOnSpark();
        new CommandLine(job).parseArgs(arguments.toArray(String[]::new));
        return job;
    }

    /** What is read beside the tables; what stands beside them only where they lie in a folder of this machine. */
    InputPaths paths() {
        return methods.in(new InputPaths(
                                Optional.of(Path.of(tables)),
                                assumptions.folder(),
                                weather.climate(),
                                weather.site(),
                                assumptions.changes())
                        .called(Optional.ofNullable(called)))
                .withShop(shop.path());
    }

    @Override
    public Integer call() throws IOException {
        if (housesATask < 1) {
            throw new BadInput(List.of("--houses-a-task: must be 1 or more"));
        }
        Inputs inputs = Inputs.besidePortfolio(paths());
        SparkSession spark =
                SparkSession.builder().appName("weatherlap compare").getOrCreate();
        RowFiles files = new RowFiles(spark, rows, parquet);
        files.refuseWhatStands();
        try (OutputFolder folder = new OutputRequest(out, false).open(paths().named())) {
            HouseLines lines = HouseLines.read(spark, tables, format);
            long houses = lines.houses();
            int tasks = (int) Math.max(1, (houses + housesATask - 1) / housesATask);
            Worker worker = new Worker(
                    List.copyOf(spec.commandLine().getParseResult().originalArgs()),
                    lines.headers(),
                    new TreeMap<>(inputs.checksums()));
            JavaRDD<Part> parts =
                    lines.byHouse(tasks).toJavaRDD().mapPartitions(worker).persist(StorageLevel.DISK_ONLY());
            refuse(parts);
            report(inputs, lines, parts, houses, folder);
            files.write(parts);
            inputs.refuseEdited(paths());
            folder.commit(Compare.record("compare-on-spark", inputs));
            parts.unpersist(false);
        }
        return 0;
    }

    private static void refuse(JavaRDD<Part> parts) {
        List<String> problems = parts.mapPartitions(CompareOnSpark::problems).collect();
        if (!problems.isEmpty()) {
            throw new BadInput(problems.stream().limit(MOST_PROBLEMS).toList());
        }
        if (parts.isEmpty()) {
            throw new BadInput(List.of("the tables have no houses"));
        }
    }

    private static Iterator<String> problems(Iterator<Part> parts) {
        Iterable<Part> all = () -> parts;
        return StreamSupport.stream(all.spliterator(), false)
                .flatMap(part -> part.problems().stream())
                .limit(MOST_PROBLEMS)
                .iterator();
    }

    private void report(Inputs inputs, HouseLines lines, JavaRDD<Part> parts, long houses, OutputFolder folder)
            throws IOException {
        Simulator simulator = inputs.simulator();
        PortfolioSum sum = new PortfolioSum(simulator.draws());
        parts.mapPartitions(some ->
                        Stream.of(summed(some)).flatMap(Optional::stream).iterator())
                .collect()
                .forEach(sum::add);
        List<String> shown = shown(parts, Comparison.step(houses));
        List<HouseChoice> choices = Worker.choices(lines.byHouse(shown).toLocalIterator(), lines.headers(), simulator);
        int doubtful = parts.map(Part::doubtful).reduce(Integer::sum);
        List<String> warnings = doubtful == 0
                ? List.of()
                : List.of("some cells of the tables are doubtful; check, run on some of the houses, names them");
        JobAlternatives alternatives = FrontSheets.alternatives(simulator);
        CompareReport report = Compare.write(
                paths(),
                inputs,
                simulator,
                sum.comparison(choices),
                Each.of(choices, choice -> alternatives.of(choice.result())),
                warnings,
                Optional.empty(),
                folder);
        PrintWriter said = spec.commandLine().getOut();
        report.lines().forEach(said::println);
        said.flush();
    }

    private static Optional<PortfolioSum> summed(Iterator<Part> parts) {
        Optional<PortfolioSum> sum = parts.hasNext() ? Optional.of(parts.next().sum()) : Optional.empty();
        sum.ifPresent(first -> parts.forEachRemaining(part -> first.add(part.sum())));
        return sum;
    }

    /** Every so many'th house over the partitions, as {@link Comparison} shows them. */
    private static List<String> shown(JavaRDD<Part> parts, int step) {
        return new ArrayList<>(parts.flatMap(part -> part.houses().iterator())
                .zipWithIndex()
                .filter(house -> house._2() % step == 0)
                .keys()
                .collect());
    }
}
