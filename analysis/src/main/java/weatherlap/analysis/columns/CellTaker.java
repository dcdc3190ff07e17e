package weatherlap.analysis.columns;

import java.util.function.BiConsumer;

/** Takes the cells of a row as its columns hand them over. */
public interface CellTaker {
    void text(String text);

    /** A text that a row puts together from parts; it may come to nothing. */
    default <R> void text(R row, BiConsumer<? super R, TextParts> parts) {
        text(BuiltText.of(row, parts));
    }

    /** @param decimals shown after the point */
    void number(double number, int decimals);

    /** A cell that may be empty and is. */
    void nothing();
}
