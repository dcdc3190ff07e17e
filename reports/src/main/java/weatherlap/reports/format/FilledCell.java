package weatherlap.reports.format;

/**
 * What a cell of a {@link CellSheet} holds.
 *
 * @param style among those of the sheet, from 0
 * @param formula empty for none
 * @param characters for which its column has to be wide enough
 */
record FilledCell(int style, String formula, String value, boolean isText, int characters) {
    /** @param look its style, as an attribute */
    void write(String look, SheetRows row) {
        if (isText) {
            row.text(look, value);
        } else {
            row.number(look, formula, value);
        }
    }
}
