package weatherlap.analysis.columns;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.columns.Column.Kind;

/** Builds the columns of a schema in order. */
final class Columns {
    private final List<Column> columns = new ArrayList<>();

    static Columns start() {
        return new Columns();
    }

    Columns text(String name, String title, String meaning) {
        return add(new Column(name, title, Kind.TEXT, "", 0, false, meaning));
    }

    /** Text or nothing. */
    Columns optionalText(String name, String title, String meaning) {
        return add(new Column(name, title, Kind.TEXT, "", 0, true, meaning));
    }

    Columns whole(String name, String title, String meaning) {
        return add(new Column(name, title, Kind.WHOLE, "", 0, false, meaning));
    }

    Columns number(String name, String title, String unit, int decimals, String meaning) {
        return add(new Column(name, title, Kind.NUMBER, unit, decimals, false, meaning));
    }

    Columns optionalNumber(String name, String title, String unit, int decimals, String meaning) {
        return add(new Column(name, title, Kind.NUMBER, unit, decimals, true, meaning));
    }

    /** Mean and 10, 50 and 90 % points of one quantity over the draws. */
    Columns spread(String name, String title, String unit, int decimals, String meaning) {
        return number(name + "_mean", title + ", mean", unit, decimals, meaning + ": mean of the draws")
                .number(name + "_p10", title + ", 10 %", unit, decimals, meaning + ": one draw in ten is below")
                .number(name + "_p50", title + ", 50 %", unit, decimals, meaning + ": half the draws are below")
                .number(name + "_p90", title + ", 90 %", unit, decimals, meaning + ": nine draws in ten are below");
    }

    List<Column> list() {
        return List.copyOf(columns);
    }

    private Columns add(Column column) {
        columns.add(column);
        return this;
    }
}
