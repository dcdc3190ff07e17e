package weatherlap.analysis.columns;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.Summary;

/**
 * Builds a layout column by column; columns that many tables have stand here once.
 *
 * @param <R> what a row is made from
 */
public final class LayoutBuilder<R> {
    private final String file;
    private final String title;
    private final String meaning;
    private final List<ResultColumn<R>> columns = new ArrayList<>();

    LayoutBuilder(String file, String title, String meaning) {
        this.file = file;
        this.title = title;
        this.meaning = meaning;
    }

    public Layout<R> build() {
        return new Layout<>(file, title, meaning, columns);
    }

    public LayoutBuilder<R> text(String name, String title, String meaning, Function<? super R, String> of) {
        return add(new ResultColumn<>(name, title, "", 0, false, meaning, new Cell.Text<>(of)));
    }

    /** Text or nothing. */
    public LayoutBuilder<R> optionalText(String name, String title, String meaning, Function<? super R, String> of) {
        return add(new ResultColumn<>(name, title, "", 0, true, meaning, new Cell.Text<>(of)));
    }

    /** Text put together from parts, or nothing. */
    public LayoutBuilder<R> optionalText(
            String name, String title, String meaning, BiConsumer<? super R, TextParts> of) {
        return add(new ResultColumn<>(name, title, "", 0, true, meaning, new Cell.Parts<>(of)));
    }

    /** The words yes and no. */
    public LayoutBuilder<R> yesNo(String name, String title, String meaning, Predicate<? super R> of) {
        return text(name, title, meaning, row -> of.test(row) ? "yes" : "no");
    }

    public LayoutBuilder<R> whole(String name, String title, String meaning, ToIntFunction<? super R> of) {
        return add(new ResultColumn<>(name, title, "", 0, false, meaning, new Cell.Whole<>(of)));
    }

    public LayoutBuilder<R> number(
            String name, String title, String unit, int decimals, String meaning, ToDoubleFunction<? super R> of) {
        return add(new ResultColumn<>(name, title, unit, decimals, false, meaning, new Cell.Number<>(of)));
    }

    public LayoutBuilder<R> optionalNumber(
            String name,
            String title,
            String unit,
            int decimals,
            String meaning,
            Function<? super R, OptionalDouble> of) {
        return add(new ResultColumn<>(name, title, unit, decimals, true, meaning, new Cell.OptionalNumber<>(of)));
    }

    /** Mean and 10, 50 and 90 % points of one quantity over the draws. */
    public LayoutBuilder<R> spread(
            String name, String title, String unit, int decimals, String meaning, Function<? super R, Summary> of) {
        return number(name + "_mean", title + ", mean", unit, decimals, meaning + ": mean of the runs", row -> of.apply(
                                row)
                        .mean())
                .number(
                        name + "_p10",
                        title + ", 10%",
                        unit,
                        decimals,
                        meaning + ": one run in ten is below",
                        row -> of.apply(row).p10())
                .number(
                        name + "_p50",
                        title + ", 50%",
                        unit,
                        decimals,
                        meaning + ": half the runs are below",
                        row -> of.apply(row).p50())
                .number(
                        name + "_p90",
                        title + ", 90%",
                        unit,
                        decimals,
                        meaning + ": nine runs in ten are below",
                        row -> of.apply(row).p90());
    }

    public LayoutBuilder<R> house(Function<? super R, String> of) {
        return text("house_id", "house", "key of the house", of);
    }

    public LayoutBuilder<R> elevation(Function<? super R, String> of) {
        return text("elevation_id", "elevation", "key of the wall within the house", of);
    }

    public LayoutBuilder<R> opening(Function<? super R, String> of) {
        return text("opening_id", "opening", "key of the opening within the wall", of);
    }

    public LayoutBuilder<R> method(Function<? super R, Method> of) {
        return text("method", "method", "full_flange, full_frame or insert", row -> of.apply(row)
                .word());
    }

    public LayoutBuilder<R> bearing(ToDoubleFunction<? super R> of) {
        return number("bearing_deg", "bearing", "°", 0, "outward normal of the wall, degrees clockwise from north", of);
    }

    public LayoutBuilder<R> drivingRain(String meaning, ToDoubleFunction<? super R> of) {
        return number("driving_rain_l_per_m2_year", "driving rain", "L/m² year", 1, meaning, of);
    }

    public LayoutBuilder<R> shelter(ToDoubleFunction<? super R> of) {
        String meaning = "share of the free driving rain that the overhang keeps off";
        return number("shelter_fraction", "shelter", "fraction", 3, meaning, of);
    }

    /** @param of percent */
    public LayoutBuilder<R> glassLostShare(ToDoubleFunction<? super R> of) {
        return number("glass_lost_pct", "glass lost", "%", 1, "glass lost as a share of the glass today", of);
    }

    public LayoutBuilder<R> leakProbability(String meaning, ToDoubleFunction<? super R> of) {
        return number("leak_probability", "leak probability", "fraction", 4, meaning, of);
    }

    public LayoutBuilder<R> leakScore(String meaning, ToDoubleFunction<? super R> of) {
        return number("leak_score", "leak score", "0 to 100", 1, meaning, of);
    }

    /** Where the score lies over causes that are not known. */
    public LayoutBuilder<R> leakScoreRange(String below, Function<? super R, Summary> of) {
        return number("leak_score_p10", "leak score, 10%", "0 to 100", 1, below, row -> of.apply(row)
                        .p10())
                .number(
                        "leak_score_p90",
                        "leak score, 90%",
                        "0 to 100",
                        1,
                        "nine runs in ten are below",
                        row -> of.apply(row).p90());
    }

    public LayoutBuilder<R> closed(String meaning, Function<? super R, String> of) {
        return optionalText("closed", "closed by", meaning, of);
    }

    /** A 90 % interval, in the unit of what it is about. */
    public LayoutBuilder<R> interval(
            String unit, int decimals, ToDoubleFunction<? super R> low, ToDoubleFunction<? super R> high) {
        return number("low_90", "low", unit, decimals, "lower end of the 90% interval", low)
                .number("high_90", "high", unit, decimals, "upper end of it", high);
    }

    /** A 90 % interval, or nothing. */
    public LayoutBuilder<R> optionalInterval(
            String unit,
            int decimals,
            Function<? super R, OptionalDouble> low,
            Function<? super R, OptionalDouble> high) {
        return optionalNumber("low_90", "low", unit, decimals, "lower end of the 90% interval", low)
                .optionalNumber("high_90", "high", unit, decimals, "upper end of it", high);
    }

    private LayoutBuilder<R> add(ResultColumn<R> column) {
        columns.add(column);
        return this;
    }
}
