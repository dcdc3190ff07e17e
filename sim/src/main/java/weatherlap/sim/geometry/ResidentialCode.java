package weatherlap.sim.geometry;

import static weatherlap.sim.geometry.CodeCheck.Verdict.FAILS;
import static weatherlap.sim.geometry.CodeCheck.Verdict.OPEN;
import static weatherlap.sim.geometry.CodeCheck.Verdict.PASSES;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Room;

/**
 * Window rules of the International Residential Code (2018 numbering), held against one unit. The limits are the code's own:
 *
 * <pre>
 *   R310.2     net clear opening ≥ 5.7 ft² (5.0 where its sill is within 44 in. of grade), height ≥ 24 in., width ≥ 20 in., sill ≤ 44 in.
 *   R303.1     glazing ≥ 8 %, openable area ≥ 4 % of the floor
 *   R308.4.3   safety glazing: a lite > 9 ft², its bottom < 18 in., its top > 36 in. over the floor, walked on within 36 in.
 *   R312.2     an opening > 72 in. over grade and < 24 in. over the floor passes no 4 in. sphere, or has a guard
 * </pre>
 *
 * They are hints to a measurer and no ruling. Of a mulled opening one unit must let people out; light and air add up.
 */
public final class ResidentialCode {
    /** Where a replacement may be relieved of R310.2; never counted as a pass here. */
    public static final String REPLACEMENT_RELIEF =
            "R310.2.5 relieves a replacement window that is the maker's largest standard size"
                    + " to fit the existing frame or rough opening, works as the old one did or opens as far, and comes with no"
                    + " change of occupancy; whether an insert may lean on it is disputed.";

    private static final double ESCAPE_FT2 = 5.7;
    private static final double ESCAPE_AT_GRADE_FT2 = 5.0;
    private static final double ESCAPE_HEIGHT_IN = 24;
    private static final double ESCAPE_WIDTH_IN = 20;
    private static final double ESCAPE_SILL_IN = 44;
    private static final double LIGHT_SHARE = 0.08;
    private static final double OPENABLE_SHARE = 0.04;
    private static final double NOISE = 1e-9;

    private ResidentialCode() {}

    /** The rules that touch an opening, before and after. */
    static List<CodeChange> review(Opening opening, Unit before, Unit after) {
        return Stream.of(
                        change(escape(opening, before), escape(opening, after)),
                        change(light(opening, before), light(opening, after)),
                        change(ventilation(opening, before), ventilation(opening, after)),
                        change(safetyGlazing(before), safetyGlazing(after)),
                        change(fall(opening, before), fall(opening, after)))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * What the rules ask of a unit.
     *
     * @param clear opening of one unit
     * @param clearFt2 of all units
     * @param floorIn height of the room's floor in the opening's frame; empty: unknown
     */
    record Unit(Glass glass, ClearOpening clear, double clearFt2, OptionalDouble floorIn) {}

    /** Whether an opening of these measures lets people out, sill known or not. */
    static CodeCheck escape(double widthIn, double heightIn, boolean atGrade, OptionalDouble sillOverFloorIn) {
        double areaFt2 = new Rect(0, 0, widthIn, heightIn).areaFt2();
        double neededFt2 = atGrade ? ESCAPE_AT_GRADE_FT2 : ESCAPE_FT2;
        List<Supplier<String>> shortfalls = new ArrayList<>();
        if (areaFt2 < neededFt2 - NOISE) {
            shortfalls.add(text("area %.2f of %.1f ft²", areaFt2, neededFt2));
        }
        if (heightIn < ESCAPE_HEIGHT_IN - NOISE) {
            shortfalls.add(text("height %.1f of %.0f in.", heightIn, ESCAPE_HEIGHT_IN));
        }
        if (widthIn < ESCAPE_WIDTH_IN - NOISE) {
            shortfalls.add(text("width %.1f of %.0f in.", widthIn, ESCAPE_WIDTH_IN));
        }
        if (sillOverFloorIn.orElse(0) > ESCAPE_SILL_IN + NOISE) {
            shortfalls.add(
                    text("sill %.1f in. over the floor, %.0f allowed", sillOverFloorIn.getAsDouble(), ESCAPE_SILL_IN));
        }
        Supplier<String> measures = text("net clear opening %.1f × %.1f in., %.2f ft²", widthIn, heightIn, areaFt2);
        if (!shortfalls.isEmpty()) {
            return new CodeCheck(
                    CodeRule.ESCAPE,
                    FAILS,
                    () -> "too small for escape: "
                            + shortfalls.stream().map(Supplier::get).collect(Collectors.joining("; ")) + " ("
                            + measures.get() + ")");
        }
        return sillOverFloorIn.isPresent()
                ? new CodeCheck(CodeRule.ESCAPE, PASSES, () -> "large enough for escape: " + measures.get())
                : new CodeCheck(
                        CodeRule.ESCAPE,
                        OPEN,
                        () -> "large enough for escape if its sill is low enough, which was not measured: "
                                + measures.get());
    }

    private static Optional<CodeCheck> escape(Opening opening, Unit unit) {
        if (opening.room() != Room.BEDROOM && opening.room() != Room.BASEMENT) {
            return Optional.empty();
        }
        Rect clear = unit.clear().rect();
        boolean atGrade = opening.sillHeightIn() + clear.bottomIn() <= ESCAPE_SILL_IN;
        return Optional.of(escape(clear.widthIn(), clear.heightIn(), atGrade, overFloorIn(clear.bottomIn(), unit)));
    }

    private static Optional<CodeCheck> light(Opening opening, Unit unit) {
        return share(CodeRule.LIGHT, "glass", unit.glass().glassFt2(), opening.floorAreaFt2(), LIGHT_SHARE);
    }

    private static Optional<CodeCheck> ventilation(Opening opening, Unit unit) {
        return share(CodeRule.VENTILATION, "openable area", unit.clearFt2(), opening.floorAreaFt2(), OPENABLE_SHARE);
    }

    private static Optional<CodeCheck> share(
            CodeRule rule, String what, double areaFt2, OptionalDouble floorFt2, double needed) {
        if (floorFt2.isEmpty()) {
            return Optional.empty();
        }
        double share = areaFt2 / floorFt2.getAsDouble();
        Supplier<String> numbers = text(
                "%s %.2f ft², %.1f %% of the floor (%.0f %% asked of the room's windows together)",
                what, areaFt2, 100 * share, 100 * needed);
        return Optional.of(
                share >= needed - NOISE
                        ? new CodeCheck(rule, PASSES, numbers)
                        : new CodeCheck(rule, OPEN, () -> numbers.get() + ": other windows must make it up"));
    }

    private static Optional<CodeCheck> safetyGlazing(Unit unit) {
        if (unit.floorIn().isEmpty()) {
            return Optional.empty();
        }
        double floorIn = unit.floorIn().getAsDouble();
        return unit.glass().lites().stream()
                .filter(lite -> needsSafetyGlazing(lite.areaFt2(), lite.bottomIn() - floorIn, lite.topIn() - floorIn))
                .findFirst()
                .map(lite -> new CodeCheck(
                        CodeRule.SAFETY_GLAZING,
                        OPEN,
                        text(
                                "a lite of %.1f ft², %.0f in. over the floor, needs safety glazing if people walk within 36 in. of it",
                                lite.areaFt2(), lite.bottomIn() - floorIn)))
                .or(() -> Optional.of(new CodeCheck(
                        CodeRule.SAFETY_GLAZING,
                        PASSES,
                        () -> "no lite is large and low enough to need safety glazing by this rule")));
    }

    /** The three measures of R308.4.3; the fourth, a walking surface within 36 in., is presumed. */
    static boolean needsSafetyGlazing(double liteFt2, double bottomOverFloorIn, double topOverFloorIn) {
        return liteFt2 > 9 && bottomOverFloorIn < 18 && topOverFloorIn > 36;
    }

    private static Optional<CodeCheck> fall(Opening opening, Unit unit) {
        if (unit.floorIn().isEmpty()) {
            return Optional.empty();
        }
        if (!unit.clear().opens()) {
            return Optional.of(new CodeCheck(CodeRule.FALL, PASSES, () -> "does not open"));
        }
        double overFloorIn = unit.clear().rect().bottomIn() - unit.floorIn().getAsDouble();
        double overGradeIn = opening.sillHeightIn() + unit.clear().rect().bottomIn();
        Supplier<String> numbers = text("opens %.0f in. over the floor, %.0f in. over grade", overFloorIn, overGradeIn);
        return Optional.of(
                overGradeIn > 72 && overFloorIn < 24
                        ? new CodeCheck(
                                CodeRule.FALL,
                                OPEN,
                                () -> numbers.get()
                                        + ": it may let no 4 in. sphere pass, or needs a guard or opening limiter")
                        : new CodeCheck(CodeRule.FALL, PASSES, numbers));
    }

    private static OptionalDouble overFloorIn(double yIn, Unit unit) {
        return unit.floorIn().isPresent()
                ? OptionalDouble.of(yIn - unit.floorIn().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Whether a rule applies hangs on the opening alone, so that it has both or neither. */
    private static Optional<CodeChange> change(Optional<CodeCheck> before, Optional<CodeCheck> after) {
        return before.flatMap(b -> after.map(a -> new CodeChange(b, a)));
    }

    private static Supplier<String> text(String format, Object... values) {
        return () -> String.format(Locale.ROOT, format, values);
    }
}
