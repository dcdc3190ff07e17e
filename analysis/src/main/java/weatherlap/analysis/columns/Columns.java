package weatherlap.analysis.columns;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.columns.Column.Kind;

/** Builds the columns of a schema in order; columns that many tables have stand here once. */
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

    Columns house() {
        return text("house_id", "house", "key of the house");
    }

    Columns elevation() {
        return text("elevation_id", "elevation", "key of the wall within the house");
    }

    Columns opening() {
        return text("opening_id", "opening", "key of the opening within the wall");
    }

    Columns method() {
        return text("method", "method", "full_flange or insert");
    }

    Columns bearing() {
        return number("bearing_deg", "bearing", "°", 0, "outward normal of the wall, degrees clockwise from north");
    }

    Columns drivingRain(String meaning) {
        return number("driving_rain_l_per_m2_year", "driving rain", "L/m² year", 1, meaning);
    }

    Columns shelter() {
        String meaning = "share of the free driving rain that the overhang keeps off";
        return number("shelter_fraction", "shelter", "fraction", 3, meaning);
    }

    Columns glassLostShare() {
        return number("glass_lost_pct", "glass lost", "%", 1, "glass lost as a share of the glass today");
    }

    Columns leakProbability(String meaning) {
        return number("leak_probability", "leak probability", "fraction", 4, meaning);
    }

    Columns leakScore(String meaning) {
        return number("leak_score", "leak score", "0 to 100", 1, meaning);
    }

    /** Where the score lies over causes that are not known. */
    Columns leakScoreRange(String below) {
        return number("leak_score_p10", "leak score, 10 %", "0 to 100", 1, below)
                .number("leak_score_p90", "leak score, 90 %", "0 to 100", 1, "nine draws in ten are below");
    }

    Columns closed(String meaning) {
        return optionalText("closed", "closed by", meaning);
    }

    /** A 90 % interval, in the unit of what it is about. */
    Columns interval(String unit, int decimals, boolean mayBeEmpty) {
        return add(new Column(
                        "low_90", "low", Kind.NUMBER, unit, decimals, mayBeEmpty, "lower end of the 90 % interval"))
                .add(new Column("high_90", "high", Kind.NUMBER, unit, decimals, mayBeEmpty, "upper end of it"));
    }

    List<Column> list() {
        return List.copyOf(columns);
    }

    private Columns add(Column column) {
        columns.add(column);
        return this;
    }
}
