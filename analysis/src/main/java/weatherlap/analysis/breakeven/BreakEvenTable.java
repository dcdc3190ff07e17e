package weatherlap.analysis.breakeven;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.analysis.breakeven.BreakEven.Crossing;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Method;

/** {@code breakeven.csv} and what it says. */
public final class BreakEvenTable {
    public static final Layout<Line> LAYOUT = Layout.<Line>of(
                    "breakeven.csv", "Break-even", "One house or segment and the assumption varied.")
            .text("name", "name", "what was varied", Line::name)
            .text("preferred_below", "below", "method preferred below the value", line -> line.below()
                    .word())
            .text("preferred_above", "above", "method preferred above it", line -> line.above()
                    .word())
            .optionalNumber(
                    "value",
                    "value",
                    "of the assumption",
                    4,
                    "where the two cost the same; empty: nowhere in the range",
                    line -> line.number(Crossing::value))
            .optionalInterval(
                    "of the assumption", 4, line -> line.number(Crossing::low90), line -> line.number(Crossing::high90))
            .build();

    private static final int DIGITS = 4;

    /** @param crossing none where the preference is the same all over */
    private record Line(String name, Method below, Method above, Optional<Crossing> crossing) {
        OptionalDouble number(ToDoubleFunction<Crossing> of) {
            return crossing.stream().mapToDouble(of).findFirst();
        }
    }

    private BreakEvenTable() {}

    /** One row a crossing; one without a value for a name that has none. */
    public static ResultTable of(List<BreakEven> found) {
        return ResultTable.of(
                LAYOUT, found.stream().flatMap(BreakEvenTable::lines).toList());
    }

    private static Stream<Line> lines(BreakEven found) {
        return found.crossings().isEmpty()
                ? Stream.of(new Line(found.name(), found.preferredAtLow(), found.preferredAtLow(), Optional.empty()))
                : found.crossings().stream()
                        .map(crossing -> new Line(
                                found.name(),
                                crossing.preferredBelow(),
                                crossing.preferredAbove(),
                                Optional.of(crossing)));
    }

    /**
     * What was found, a line a crossing.
     *
     * @param unit of the value; may be empty
     * @param present value that the assumptions hold
     */
    public static List<String> words(BreakEven found, String unit, double present) {
        return found(found, unit).stream()
                .map(line -> line + " The value now is " + number(present, unit) + ".")
                .toList();
    }

    private static List<String> found(BreakEven found, String unit) {
        if (found.crossings().isEmpty()) {
            return List.of(String.format(
                    Locale.ROOT,
                    "%s: no crossing from %s to %s: %s is preferred all over.",
                    found.name(),
                    number(found.low(), unit),
                    number(found.high(), unit),
                    found.preferredAtLow().inSentence()));
        }
        return found.crossings().stream()
                .map(c -> String.format(
                        Locale.ROOT,
                        "%s: below %s %s is preferred, above it %s (90%% interval of the sampling %s to %s; looked from %s to %s).",
                        found.name(),
                        number(c.value(), unit),
                        c.preferredBelow().inSentence(),
                        c.preferredAbove().inSentence(),
                        number(c.low90(), unit),
                        number(c.high90(), unit),
                        number(found.low(), unit),
                        number(found.high(), unit)))
                .toList();
    }

    private static String number(double value, String unit) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS));
        String digits = Numbers.trimmed(rounded.doubleValue(), Math.max(0, rounded.scale()));
        if (unit.startsWith("USD")) {
            return (value < 0 ? digits.substring(0, 1) + "$" + digits.substring(1) : "$" + digits)
                    + unit.substring("USD".length());
        }
        return digits + (unit.isEmpty() ? "" : " " + unit);
    }
}
