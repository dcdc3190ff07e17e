package weatherlap.analysis.columns;

import java.util.function.BiConsumer;
import weatherlap.analysis.words.Decimals;

/** Puts parts together. */
final class BuiltText implements TextParts {
    private final StringBuilder text = new StringBuilder();

    private BuiltText() {}

    static <R> String of(R row, BiConsumer<? super R, TextParts> parts) {
        BuiltText built = new BuiltText();
        parts.accept(row, built);
        return built.text.toString();
    }

    @Override
    public void add(String word) {
        text.append(word);
    }

    @Override
    public void add(double number, int decimals) {
        text.append(Decimals.fixed(number, decimals));
    }
}
