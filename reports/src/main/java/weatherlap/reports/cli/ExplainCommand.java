package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.Explain;
import weatherlap.reports.options.Bounds;
import weatherlap.reports.options.InputOptions;
import weatherlap.reports.options.MethodOption;

@Command(
        name = "explain",
        description = "Shows where one window's numbers come from, step by step, down to the rows of the assumption"
                + " tables.",
        footer = {
            "",
            "In a large portfolio, only the rows of this house are read and checked.",
            "",
            "Examples, the first in the bundled demo:",
            "  weatherlap explain --opening G0014/front/W1",
            "  weatherlap explain my-houses --opening EXAMPLE/front/W1 --method insert --depth 2"
        })
final class ExplainCommand implements Callable<Integer> {
    private static final int DEEPEST = 100;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Option(
            names = "--opening",
            paramLabel = "HOUSE/ELEVATION/OPENING",
            required = true,
            description = "The window: its house, elevation and opening, as in openings.csv.")
    private String opening;

    @Option(
            names = "--depth",
            paramLabel = "N",
            description = "How many levels to show, 1 to 100 (default: all). 2 shows each number with its parts.")
    private Integer depth;

    @Mixin
    private MethodOption method;

    @Override
    public Integer call() {
        int levels = depth == null ? DEEPEST : depth;
        Bounds.within(spec, "--depth", levels, 1, DEEPEST);
        new Explain(input.paths(), opening, method.oneOrAll(), levels).run(common.messages());
        return 0;
    }
}
