package weatherlap.reports.compare;

import java.util.List;
import java.util.function.Consumer;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.format.SourceNames;
import weatherlap.reports.page.ReportWords;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.explain.Origin;

/**
 * Trees of amounts as lines of text: each amount with its unit, how its parts make it, and for a leaf the row it comes from.
 *
 * @param sources what the tables that were read are called
 */
public record ExplainText(SourceNames sources) {
    /**
     * The lines, the root first.
     *
     * @param depth levels to show, 1 or more: the root alone, its parts, ...; an ellipsis stands where there are more
     */
    public void print(Amount root, int depth, Consumer<String> line) {
        line.accept(text(root, depth));
        printParts(root, "", depth - 1, line);
    }

    private void printParts(Amount amount, String indent, int depth, Consumer<String> line) {
        if (depth == 0) {
            return;
        }
        List<Amount> parts = amount.parts();
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            line.accept(indent + (last ? "\u2514\u2500 " : "\u251c\u2500 ") + text(parts.get(i), depth));
            printParts(parts.get(i), indent + (last ? "   " : "\u2502  "), depth - 1, line);
        }
    }

    private String text(Amount amount, int depth) {
        boolean cut = depth == 1 && !amount.parts().isEmpty();
        return amount.name() + ": " + number(amount.value()) + (amount.unit().isEmpty() ? "" : " " + amount.unit())
                + (cut ? " \u2026" : rule(amount))
                + amount.origin().map(this::text).orElse("");
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

    private String text(Origin origin) {
        return "  [" + sources.rowOfTable(origin.table(), origin.row()) + "; " + ReportWords.of(origin.basis())
                + (origin.source().isEmpty() ? "" : ": " + origin.source()) + "]";
    }

    /** Six significant digits, so that parts can be added up by hand. */
    private static String number(double value) {
        if (value == 0) {
            return "0";
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        int decimals = Math.max(0, Math.min(9, 6 - whole));
        return Numbers.trimmed(value, decimals);
    }
}
