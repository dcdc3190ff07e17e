package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.WriteCrewSheet;
import weatherlap.reports.page.Paper;
import weatherlap.sim.assumptions.Method;

@Command(
        name = "crewsheet",
        description =
                "Writes the crew's sheet of one house by one method: each wall drawn to scale, sizes to order, cut-backs, pick list,"
                        + " lap order.",
        footer = {
            "",
            "Examples:",
            "  weatherlap crewsheet --house brick --method insert --out sheet",
            "  weatherlap crewsheet my-houses --house 12 --method full_flange --paper a4 --out sheet"
        })
final class CrewsheetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Option(names = "--house", paramLabel = "ID", required = true, description = "Key of the house.")
    private String house;

    @Option(names = "--method", paramLabel = "M", required = true, description = "full_flange or insert.")
    private String method;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "letter", description = "letter or a4; else letter.")
    private String paper;

    @Mixin
    private InputOptions input;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new WriteCrewSheet(input.paths(portfolio), output.request(), house, parsedMethod(), parsedPaper())
                .run(common.messages());
        return 0;
    }

    private Method parsedMethod() {
        return Arrays.stream(Method.values())
                .filter(m -> m.name().toLowerCase(Locale.ROOT).equals(method.replace('-', '_')))
                .findFirst()
                .orElseThrow(() -> bad("--method", method, "full_flange or insert"));
    }

    private Paper parsedPaper() {
        return Paper.of(paper).orElseThrow(() -> bad("--paper", paper, "letter or a4"));
    }

    private ParameterException bad(String option, String value, String expected) {
        return new ParameterException(spec.commandLine(), option + " (" + value + ") must be " + expected);
    }
}
