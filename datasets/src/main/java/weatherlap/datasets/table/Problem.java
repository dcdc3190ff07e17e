package weatherlap.datasets.table;

/**
 * One thing wrong with the input, and where.
 *
 * @param file name of the file, without its folder
 * @param row physical line in the file, from 1; 0 where the whole file is meant
 * @param column name of the column, or of the key in TOML; empty where the whole row is meant
 * @param message what is wrong and what was expected
 */
public record Problem(String file, int row, String column, String message) {
    /** {@code openings.csv:17:frame_width_in: "3O" is not a number (inches, 8 to 144)}. */
    @Override
    public String toString() {
        return file + (row > 0 ? ":" + row : "") + (column.isEmpty() ? "" : ":" + column) + ": " + message;
    }
}
