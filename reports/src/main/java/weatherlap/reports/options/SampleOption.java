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
                    "How many houses to run, 1 to 1,000,000, picked evenly from yours (default: ${DEFAULT-VALUE})."
                            + " More is slower and surer.")
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
