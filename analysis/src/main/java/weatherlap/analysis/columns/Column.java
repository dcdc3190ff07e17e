package weatherlap.analysis.columns;

import weatherlap.sim.Check;

/**
 * One column of a result table.
 *
 * @param name as in CSV headers; ends in the unit where there is one
 * @param title as people read it
 * @param unit such as ft², USD; empty without one
 * @param decimals shown after the point, 0 to 9; 0 for texts
 * @param mayBeEmpty whether a cell may hold nothing
 * @param meaning one line
 */
public record Column(
        String name, String title, Kind kind, String unit, int decimals, boolean mayBeEmpty, String meaning) {
    /** What a cell holds. */
    public enum Kind {
        /** May have come from a user's table: never to be trusted as a formula or a tag. */
        TEXT,
        WHOLE,
        NUMBER
    }

    public Column {
        Check.text("column name", name);
        Check.text("column title", title);
        Check.within("decimals", decimals, 0, 9);
        Check.text("meaning of " + name, meaning);
    }

    /** The title with the unit after it, such as {@code glass lost (ft²)}. */
    public String titleWithUnit() {
        return unit.isEmpty() ? title : title + " (" + unit + ")";
    }
}
