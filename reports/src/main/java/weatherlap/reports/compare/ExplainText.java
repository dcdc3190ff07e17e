package weatherlap.reports.compare;

import java.util.List;
import java.util.function.Consumer;
import weatherlap.charts.Numbers;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.explain.Origin;

/** A tree of amounts as lines of text: each amount with its unit, how its parts make it, and for a leaf the row it comes from. */
public final class ExplainText {
    private ExplainText() {}

    /** The lines, the root first. */
    public static void print(Amount root, Consumer<String> line) {
        line.accept(text(root));
        printParts(root, "", line);
    }

    private static void printParts(Amount amount, String indent, Consumer<String> line) {
        List<Amount> parts = amount.parts();
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            line.accept(indent + (last ? "\u2514\u2500 " : "\u251c\u2500 ") + text(parts.get(i)));
            printParts(parts.get(i), indent + (last ? "   " : "\u2502  "), line);
        }
    }

    private static String text(Amount amount) {
        return amount.name() + ": " + number(amount.value()) + (amount.unit().isEmpty() ? "" : " " + amount.unit())
                + rule(amount) + amount.origin().map(ExplainText::text).orElse("");
    }

    private static String rule(Amount amount) {
        return switch (amount.rule()) {
            case GIVEN -> "";
            case SUM -> ", the sum of";
            case PRODUCT -> ", the product of";
            case DIFFERENCE -> ", the first less the rest of";
            case FORMULA -> ", from";
        };
    }

    private static String text(Origin origin) {
        return "  [" + origin.table() + ":" + origin.row() + "; " + Words.of(origin.basis())
                + (origin.source().isEmpty() ? "" : ": " + origin.source()) + "]";
    }

    /** Six significant digits, so that parts can be added up by hand. */
    private static String number(double value) {
        if (value == 0) {
            return "0";
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        int decimals = Math.max(0, Math.min(9, 6 - whole));
        String text = Numbers.plain(value, decimals);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
