package weatherlap.analysis.columns;

/** Takes the cells of a row as its columns hand them over. */
public interface CellTaker {
    void text(String text);

    /** @param decimals shown after the point */
    void number(double number, int decimals);

    /** A cell that may be empty and is. */
    void nothing();
}
