package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.Explain;
import weatherlap.sim.assumptions.Method;

@Command(
        name = "explain",
        description = "Prints one opening's numbers as a tree, down to the rows of the assumption tables.",
        footer = {"", "Example:", "  weatherlap explain my-houses --opening h1/north/a --method insert"})
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Mixin
    private InputOptions input;

    @Option(
            names = "--opening",
            paramLabel = "HOUSE/ELEVATION/OPENING",
            required = true,
            description = "Keys of the opening.")
    private String opening;

    @Option(names = "--method", paramLabel = "M", description = "full_flange or insert; else both.")
    private String method;

    @Override
    public Integer call() {
        new Explain(input.paths(portfolio), opening, methods()).run(common.messages());
        return 0;
    }

    private List<Method> methods() {
        if (method == null) {
            return List.of(Method.values());
        }
        return switch (method) {
            case "full_flange" -> List.of(Method.FULL_FLANGE);
            case "insert" -> List.of(Method.INSERT);
            default ->
                throw new ParameterException(
                        spec.commandLine(), "--method (" + method + ") must be full_flange or insert");
        };
    }
}
