package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.Calibrate;
import weatherlap.reports.jobs.CalibrateADay;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.OutputOptions;
import weatherlap.sim.method.Method;

@Command(
        name = "calibrate",
        description = {
            "Sets the labor rates by your finished jobs, or by the windows a day that your crew does. Writes them as"
                    + " assumption tables."
        },
        footer = {
            "",
            "Examples, with made-up job records:",
            "  weatherlap generate --houses 1 --jobs 40 --out made-up-shop",
            "  weatherlap calibrate made-up-shop/jobs.csv --out fitted",
            "  weatherlap compare my-houses --assumptions fitted/assumptions --out report",
            "",
            "No records? Say what your crew does in a day, here nine inserts or four full-flange, on the",
            "standard job (ten wood double hungs of 32 x 54 in., one story, sound frames)",
            "or on a house of yours:",
            "  weatherlap calibrate --a-day insert=9 --a-day full_flange=4 --out mine",
            "  weatherlap calibrate my-houses --a-day insert=7 --like EXAMPLE --out mine"
        })
final class CalibrateCommand implements Callable<Integer> {
    private static final double MOST_A_DAY = 1000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "JOBS.csv",
            arity = "0..1",
            description =
                    "Table of finished jobs, one per row: job_id, method, openings, person_hours and whatever else you"
                            + " know. With --a-day: the folder that holds the house of --like (default: the bundled demo).")
    private Path jobs;

    @Option(
            names = "--portfolio",
            paramLabel = "DIR",
            description = "Folder of measured houses. A job that names one by house_id gets its measurements from"
                    + " there.")
    private Path portfolio;

    @Option(
            names = "--since",
            paramLabel = "DIR",
            description = "Folder that an earlier run wrote. Says which rates have moved since, and how sure that is.")
    private Path since;

    @Option(
            names = "--a-day",
            paramLabel = "METHOD=N",
            description =
                    "Windows a day that your crew does by that method, on the standard job or on the house of --like."
                            + " Give it once for each method.")
    private Map<String, Double> aDay = Map.of();

    @Option(
            names = "--like",
            paramLabel = "HOUSE",
            description = "With --a-day: the house that your windows a day are for.")
    private String like = "";

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (aDay.isEmpty()) {
            if (jobs == null || !like.isEmpty()) {
                throw new ParameterException(
                        spec.commandLine(),
                        "Name JOBS.csv, a table of finished jobs, or say how many windows a day your crew does:"
                                + " --a-day insert=9");
            }
            new Calibrate(
                            InputPaths.table(jobs, "jobs.csv"),
                            Optional.ofNullable(portfolio),
                            Optional.ofNullable(since),
                            assumptions.folder(),
                            assumptions.changes(),
                            output.request())
                    .run(common.messages());
            return 0;
        }
        if (portfolio != null || since != null) {
            throw new ParameterException(
                    spec.commandLine(), "--portfolio and --since go with JOBS.csv; leave them out with --a-day");
        }
        if (jobs != null && like.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "With --a-day name a house of " + jobs + " by --like, or leave the folder out");
        }
        new CalibrateADay(
                        byMethod(),
                        Optional.ofNullable(jobs),
                        like,
                        assumptions.folder(),
                        assumptions.changes(),
                        output.request())
                .run(common.messages());
        return 0;
    }

    private Map<Method, Double> byMethod() {
        Map<Method, Double> rates = new EnumMap<>(Method.class);
        aDay.forEach((word, rate) -> {
            Method method = Method.of(word)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(),
                            "--a-day: \"" + word + "\" is not a method; methods are "
                                    + Stream.of(Method.values())
                                            .map(Method::word)
                                            .collect(Collectors.joining(", "))));
            if (!(rate > 0 && rate <= MOST_A_DAY)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--a-day " + word + "=" + rate + ": windows a day must be above 0 and at most 1000");
            }
            rates.put(method, rate);
        });
        return rates;
    }
}
