package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weatherlap.reports.jobs.Explain;

@Command(
        name = "explain",
        description = "Prints one opening's numbers as a tree, down to the rows of the assumption tables.",
        footer = {
            "",
            "Of a portfolio of many houses the rows of this one alone are read and checked.",
            "",
            "Without --method both are printed.",
            "",
            "Examples, the first in the bundled demo:",
            "  weatherlap explain --opening G0014/front/W1",
            "  weatherlap explain my-houses --opening EXAMPLE/front/W1 --method insert"
        })
final class ExplainCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Option(
            names = "--opening",
            paramLabel = "HOUSE/ELEVATION/OPENING",
            required = true,
            description = "Keys of the opening, as in openings.csv.")
    private String opening;

    @Mixin
    private MethodOption method;

    @Override
    public Integer call() {
        new Explain(input.paths(), opening, method.oneOrBoth()).run(common.messages());
        return 0;
    }
}
