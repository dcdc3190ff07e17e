package weatherlap.reports.options;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Holds numbers of the command line within their range. */
public final class Bounds {
    private Bounds() {}

    /** @throws ParameterException where the value is out of range, which is bad usage */
    public static void within(CommandSpec spec, String option, long value, long low, long high) {
        if (value < low || value > high) {
            throw new ParameterException(
                    spec.commandLine(), option + " (" + value + ") must be from " + low + " to " + high);
        }
    }
}
