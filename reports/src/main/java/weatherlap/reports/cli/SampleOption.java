package weatherlap.reports.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** How many houses of a portfolio stand for all of it. */
final class SampleOption {
    private static final int MOST = 1_000_000;

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--houses",
            paramLabel = "N",
            description = "Houses to simulate, at even steps through the portfolio; more are slower and surer.")
    private Integer houses;

    /** @param other where the user names no number */
    int houses(int other) {
        int asked = houses == null ? other : houses;
        Bounds.within(spec, "--houses", asked, 1, MOST);
        return asked;
    }
}
