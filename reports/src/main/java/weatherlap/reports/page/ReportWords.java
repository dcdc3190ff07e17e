package weatherlap.reports.page;

import java.util.stream.Collectors;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.run.Summary;

/** Results in words and numbers for people. */
public final class ReportWords {
    private ReportWords() {}

    public static String of(Method method) {
        return method.label();
    }

    /** A constant as people write it: VINYL_SIDING gives vinyl siding. */
    public static String of(Enum<?> constant) {
        return InWords.of(constant);
    }

    public static String of(MethodScope scope) {
        return scope.equals(MethodScope.EVERY)
                ? "every method"
                : scope.methods().stream().map(InWords::of).collect(Collectors.joining(", "));
    }

    public static String usd(double usd) {
        return Numbers.usd(usd);
    }

    /** Mean with the range of eight draws in ten. */
    public static String usd(Summary summary) {
        return within(Numbers.usd(summary.mean()), Numbers.usd(summary.p10()), Numbers.usd(summary.p90()));
    }

    /** A number with its range; alone where the range reads the same as the number. */
    public static String within(String number, String low, String high) {
        return low.equals(number) && high.equals(number) ? number : number + " (" + low + " to " + high + ")";
    }

    public static String number(double value, int decimals) {
        return Numbers.plain(value, decimals);
    }

    public static String number(Summary summary, int decimals) {
        return within(
                number(summary.mean(), decimals), number(summary.p10(), decimals), number(summary.p90(), decimals));
    }

    public static String percent(double fraction, int decimals) {
        return Numbers.percent(fraction, decimals);
    }
}
