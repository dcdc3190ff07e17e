package weatherlap.reports.options;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** How many houses of a portfolio stand for all of it. */
public final class SampleOption {
    private static final int MOST = 1_000_000;

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--houses",
            paramLabel = "N",
            description =
                    "Houses to simulate, 1 to 1,000,000, at even steps through the portfolio; more are slower and surer. Else:"
                            + " ${DEFAULT-VALUE}.")
    private int houses;

    /** @param usual where the user names no number */
    public SampleOption(int usual) {
        houses = usual;
    }

    public int houses() {
        Bounds.within(spec, "--houses", houses, 1, MOST);
        return houses;
    }
}
