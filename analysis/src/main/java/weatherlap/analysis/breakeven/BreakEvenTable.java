package weatherlap.analysis.breakeven;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import weatherlap.analysis.breakeven.BreakEven.Crossing;
import weatherlap.analysis.columns.StudySchemas;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;

/** {@code breakeven.csv} and what it says. */
public final class BreakEvenTable {
    private static final int DIGITS = 4;

    private BreakEvenTable() {}

    /** One row a crossing; one without a value for a name that has none. */
    public static ResultTable of(List<BreakEven> found) {
        TableBuilder table = new TableBuilder(StudySchemas.BREAKEVEN);
        for (BreakEven one : found) {
            if (one.crossings().isEmpty()) {
                String method = one.preferredAtLow().word();
                OptionalDouble none = OptionalDouble.empty();
                table.row(one.name(), method, method, none, none, none);
            }
            for (Crossing crossing : one.crossings()) {
                table.row(
                        one.name(),
                        crossing.preferredBelow().word(),
                        crossing.preferredAbove().word(),
                        OptionalDouble.of(crossing.value()),
                        OptionalDouble.of(crossing.low90()),
                        OptionalDouble.of(crossing.high90()));
            }
        }
        return table.build();
    }

    /** @param unit of the value; may be empty */
    public static List<String> words(BreakEven found, String unit) {
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
                        "%s: below %s %s is preferred, above it %s (90 %% interval of the sampling %s to %s; looked from %s to %s).",
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
        String digits = new BigDecimal(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
        return digits + (unit.isEmpty() ? "" : " " + unit);
    }
}
