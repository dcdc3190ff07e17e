package weatherlap.reports.handout;

import java.util.List;

/**
 * The part of the page on which the family ticks a method window by window.
 *
 * @param rows one a window, or windows that are ticked together
 * @param presets choices of the sheet, ticked at once
 * @param together whether some windows are ticked together
 * @param priced whether the page tells prices
 * @param total whether something is taken off a price or put on it
 * @param house its key; untrusted text
 * @param crew people of it
 * @param years of the horizon, in words
 * @param json for the script of the page; safe to stand in it as it is
 */
public record Ticks(
        List<Row> rows,
        List<Preset> presets,
        boolean together,
        boolean priced,
        boolean total,
        String house,
        String crew,
        String years,
        String json) {
    public Ticks {
        rows = List.copyOf(rows);
        presets = List.copyOf(presets);
    }

    /**
     * What is ticked with one tick.
     *
     * @param name of its radio buttons
     * @param mark letter of its kind of window
     * @param size of the frame
     * @param where rooms and walls
     */
    public record Row(String name, String mark, String size, String where, List<Option> options) {
        public Row {
            options = List.copyOf(options);
        }
    }

    /**
     * One method.
     *
     * @param value position among those of the row
     * @param label the method
     * @param glass that it leaves
     */
    public record Option(String value, String label, String style, String glass, boolean ticked) {}

    /**
     * A choice of the sheet.
     *
     * @param values of the rows, in their order, between commas
     */
    public record Preset(String title, String values) {}
}
