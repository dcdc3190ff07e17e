package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.options.Bounds;
import weatherlap.reports.options.InputOptions;
import weatherlap.reports.options.MethodsOption;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.ShopOption;
import weatherlap.reports.scenarios.CompareScenarios;
import weatherlap.reports.scenarios.ScenarioWord;

@Command(
        name = "compare",
        description =
                "Compares two methods for every window of your houses. Writes two pages for the owner, an appendix, a page for the"
                        + " screen, a workbook and tables.",
        footer = {
            "",
            "Examples:",
            "  weatherlap compare --out report",
            "  weatherlap compare my-houses --assumptions my-assumptions --set crew_size=3 --out report --force",
            "  weatherlap compare my-houses --methods full_frame,insert --out frames",
            "  weatherlap compare my-houses --repeat report/run.json --out again",
            "  weatherlap compare my-houses --scenario base --scenario thin=gross_margin=0.3 --out sets",
            "  weatherlap compare my-houses --scenario-file scenarios.toml --out sets"
        })
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Mixin
    private ShopOption shop;

    @Mixin
    private MethodsOption methods;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description =
                    "How often to run the numbers, 1 to 1,000,000. More is slower and surer. Same as --set draws=N (bundled:"
                            + " 256).")
    private String draws;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Whole number. The same seed gives the same report. Same as --set seed=N (bundled: 1).")
    private String seed;

    @Option(
            names = "--sampling",
            paramLabel = "WAY",
            description =
                    "How to spread the runs: sobol (evenly over several causes at once), stratified (evenly over each"
                            + " one) or plain (by chance). Same as --set sampling=WAY (bundled: sobol).")
    private String sampling;

    @Option(
            names = "--crew",
            paramLabel = "NAME",
            description =
                    "Price the work of this crew from crews.csv, which calibrate writes with its assumptions (default:"
                            + " an ordinary crew). Same as --set crew=NAME.")
    private String crew;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Threads to use, 1 to 1024 (default: one for each processor). The results stay the same.")
    private Integer threads;

    @Option(
            names = "--scenario",
            paramLabel = "NAME[=SET]",
            description =
                    "A set of assumptions to put next to others. Give it twice or more. NAME alone is the run as it"
                            + " stands, NAME=DIR a folder of tables, NAME=SETTING=VALUE,... single settings. Writes what differs between the"
                            + " sets in place of the report. All sets meet the same luck.")
    private List<String> scenarios = List.of();

    @Option(
            names = "--scenario-file",
            paramLabel = "FILE",
            description =
                    "Sets of assumptions in a TOML file, one table for each: assumptions = \"DIR\" and single settings, such as gross_margin = 0.3.")
    private Path scenarioFile;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        int used = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        Bounds.within(spec, "--threads", used, 1, 1024);
        if (!scenarios.isEmpty() || scenarioFile != null) {
            List<ScenarioWord> sets = ScenarioWord.of(Optional.ofNullable(scenarioFile), scenarios);
            new CompareScenarios(paths(), sets, output.requestOr("scenarios"), used).run(common.messages());
            return 0;
        }
        new Compare(paths(), output.requestOr("report"), used).run(common.messages());
        return 0;
    }

    private InputPaths paths() {
        return methods.in(input.paths())
                .withShop(shop.path())
                .with(Stream.of(
                                change("draws", draws),
                                change("seed", seed),
                                change("crew", crew),
                                change("sampling", sampling))
                        .flatMap(Optional::stream));
    }

    private static Optional<String> change(String name, String value) {
        return Optional.ofNullable(value).map(given -> name + "=" + given);
    }
}
