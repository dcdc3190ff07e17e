package weatherlap.sim.code;

import static weatherlap.sim.code.CodeCheck.Verdict.FAILS;
import static weatherlap.sim.code.CodeCheck.Verdict.OPEN;
import static weatherlap.sim.code.CodeCheck.Verdict.PASSES;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import weatherlap.sim.Units;
import weatherlap.sim.code.Finding.EscapeMeasure;
import weatherlap.sim.code.Finding.Shortfall;
import weatherlap.sim.geometry.ClearOpening;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.Rect;
import weatherlap.sim.house.Opening;

/**
 * Window rules of the International Residential Code (2018 numbering), held against one unit. The limits are the code's own:
 *
 * <pre>
 *   R310.2     net clear opening ≥ 5.7 ft² (5.0 where its sill is within 44 in. of grade), height ≥ 24 in., width ≥ 20 in., sill ≤ 44 in.
 *   R303.1     glazing ≥ 8 %, openable area ≥ 4 % of the floor
 *   R308.4.3   safety glazing: a lite > 9 ft², its bottom < 18 in., its top > 36 in. over the floor, walked on within 36 in.
 *   R308.4.5   likewise near a tub or shower: its bottom < 60 in. over where one stands, within 60 in. of the water
 *   R308.4.6   likewise beside stairs and landings: its bottom < 36 in. over the walking surface, within 36 in. of it
 *   R308.4.7   likewise within 60 in. of the foot of a stair: its bottom < 36 in. over the landing
 *   R312.2     an opening > 72 in. over grade and < 24 in. over the floor passes no 4 in. sphere, or has a guard
 * </pre>
 *
 * They are hints to a measurer and no ruling. Of a mulled opening one unit must let people out; light and air add up over the windows
 * of a room. Where a tub or a stair is was not measured: the rules on wet and stair glazing are asked of every window of a bath or stair.
 */
public final class ResidentialCode {
    private static final double ESCAPE_FT2 = 5.7;
    private static final double ESCAPE_AT_GRADE_FT2 = 5.0;
    private static final double ESCAPE_HEIGHT_IN = 24;
    private static final double ESCAPE_WIDTH_IN = 20;
    private static final double ESCAPE_SILL_IN = 44;
    private static final double LIGHT_SHARE = 0.08;
    private static final double OPENABLE_SHARE = 0.04;
    private static final double LARGE_LITE_FT2 = 9;
    private static final double WET_BOTTOM_IN = 60;
    private static final double STAIR_BOTTOM_IN = 36;
    /** Rules asked of one window. */
    private static final int MOST_OF_WINDOW = 3;

    private static final CodeCheck NO_LARGE_LOW_LITE =
            new CodeCheck(CodeRule.SAFETY_GLAZING, PASSES, Finding::noLargeLowLite);
    private static final CodeCheck DOES_NOT_OPEN = new CodeCheck(CodeRule.FALL, PASSES, Finding::doesNotOpen);

    private static final double NOISE = 1e-9;

    private ResidentialCode() {}

    /** The rules asked of one window; whether one applies hangs on its opening alone: it is asked of old and new unit, or of neither. */
    static List<CodeCheck> ofWindow(Unit unit) {
        List<CodeCheck> checks = new ArrayList<>(MOST_OF_WINDOW);
        if (unit.floorIn.isPresent()) {
            checks.add(safetyGlazing(unit, unit.floorIn.getAsDouble()));
        }
        switch (unit.opening().place().room()) {
            case BATH -> checks.add(lowGlazing(CodeRule.WET_GLAZING, unit, WET_BOTTOM_IN));
            case STAIR -> checks.add(lowGlazing(CodeRule.STAIR_GLAZING, unit, STAIR_BOTTOM_IN));
            case BEDROOM, KITCHEN, LIVING, BASEMENT, OTHER -> {}
        }
        if (unit.floorIn.isPresent()) {
            checks.add(fall(unit, unit.floorIn.getAsDouble()));
        }
        return checks;
    }

    /** Whether the unit works as the old one did, or opens as far: what R310.2.5 asks of it beside its size. */
    static boolean mayBeRelieved(Unit today, Unit after) {
        return after.opening().newOperation() == after.opening().operation()
                || after.clear().areaFt2() >= today.clear().areaFt2() - NOISE;
    }

    /** What the rules ask of the units of an opening, old or new. */
    static final class Unit {
        private final Opening opening;
        private final Glass glass;
        private final ClearOpening clear;
        private final OptionalDouble floorIn;
        /** When it was first asked for; the same whoever asks first. */
        private CodeCheck escape;

        /**
         * @param clear opening of one unit
         * @param floorIn height of the room's floor in the opening's frame; empty: unknown
         */
        private Unit(Opening opening, Glass glass, ClearOpening clear, OptionalDouble floorIn) {
            this.opening = opening;
            this.glass = glass;
            this.clear = clear;
            this.floorIn = floorIn;
        }

        static Unit today(OpeningGeometry geometry) {
            ClearOpening clear = geometry.existingClear();
            OptionalDouble sillIn = geometry.opening().place().interiorSillIn();
            OptionalDouble floorIn =
                    sillIn.isPresent() ? OptionalDouble.of(clear.rect().bottomIn() - sillIn.getAsDouble()) : sillIn;
            return new Unit(geometry.opening(), geometry.existing(), clear, floorIn);
        }

        /** The one that a method puts in its place. */
        Unit after(OpeningGeometry geometry) {
            return new Unit(opening, geometry.replaced(), geometry.clear(), floorIn);
        }

        Opening opening() {
            return opening;
        }

        Glass glass() {
            return glass;
        }

        ClearOpening clear() {
            return clear;
        }

        /** Clear opening of all units, ft². */
        double clearFt2() {
            return opening.units() * clear.areaFt2();
        }

        /** Whether one of the units lets people out. */
        CodeCheck escape() {
            if (escape == null) {
                Rect way = clear.rect();
                boolean atGrade = opening.place().sillHeightIn() + way.bottomIn() <= ESCAPE_SILL_IN;
                escape = ResidentialCode.escape(way.widthIn(), way.heightIn(), atGrade, overFloorIn(way.bottomIn()));
            }
            return escape;
        }

        private OptionalDouble overFloorIn(double yIn) {
            return floorIn.isPresent() ? OptionalDouble.of(yIn - floorIn.getAsDouble()) : floorIn;
        }
    }

    /** Whether an opening of these measures lets people out, sill known or not. */
    public static CodeCheck escape(double widthIn, double heightIn, boolean atGrade, OptionalDouble sillOverFloorIn) {
        double areaFt2 = Units.squareInchesToSquareFeet(widthIn * heightIn);
        double neededFt2 = atGrade ? ESCAPE_AT_GRADE_FT2 : ESCAPE_FT2;
        List<Shortfall> shortfalls = new ArrayList<>();
        if (areaFt2 < neededFt2 - NOISE) {
            shortfalls.add(new Shortfall(EscapeMeasure.AREA_FT2, areaFt2, neededFt2));
        }
        if (heightIn < ESCAPE_HEIGHT_IN - NOISE) {
            shortfalls.add(new Shortfall(EscapeMeasure.HEIGHT_IN, heightIn, ESCAPE_HEIGHT_IN));
        }
        if (widthIn < ESCAPE_WIDTH_IN - NOISE) {
            shortfalls.add(new Shortfall(EscapeMeasure.WIDTH_IN, widthIn, ESCAPE_WIDTH_IN));
        }
        if (sillOverFloorIn.orElse(0) > ESCAPE_SILL_IN + NOISE) {
            shortfalls.add(
                    new Shortfall(EscapeMeasure.SILL_OVER_FLOOR_IN, sillOverFloorIn.getAsDouble(), ESCAPE_SILL_IN));
        }
        boolean sillKnown = sillOverFloorIn.isPresent();
        return new CodeCheck(
                CodeRule.ESCAPE,
                !shortfalls.isEmpty() ? FAILS : sillKnown ? PASSES : OPEN,
                new Finding.Escape(sillKnown, shortfalls, widthIn, heightIn, areaFt2));
    }

    /** @param glassFt2 of all windows of a room */
    static CodeCheck light(double glassFt2, double floorFt2) {
        return share(CodeRule.LIGHT, glassFt2, floorFt2, LIGHT_SHARE);
    }

    /** @param openFt2 that opens, of all windows of a room */
    static CodeCheck ventilation(double openFt2, double floorFt2) {
        return share(CodeRule.VENTILATION, openFt2, floorFt2, OPENABLE_SHARE);
    }

    private static CodeCheck share(CodeRule rule, double areaFt2, double floorFt2, double needed) {
        return new CodeCheck(
                rule,
                areaFt2 / floorFt2 >= needed - NOISE ? PASSES : FAILS,
                new Finding.Share(rule, areaFt2, floorFt2, needed));
    }

    private static CodeCheck safetyGlazing(Unit unit, double floorIn) {
        boolean anyLarge = Units.squareInchesToSquareFeet(unit.glass().largestLiteIn2()) > LARGE_LITE_FT2;
        List<Rect> lites = anyLarge ? unit.glass().lites() : List.of();
        for (Rect lite : lites) {
            if (needsSafetyGlazing(lite.areaFt2(), lite.bottomIn() - floorIn, lite.topIn() - floorIn)) {
                return new CodeCheck(
                        CodeRule.SAFETY_GLAZING,
                        OPEN,
                        finding -> finding.largeLowLite(lite.areaFt2(), lite.bottomIn() - floorIn));
            }
        }
        return NO_LARGE_LOW_LITE;
    }

    /** The three measures of R308.4.3; the fourth, a walking surface within 36 in., is presumed. */
    public static boolean needsSafetyGlazing(double liteFt2, double bottomOverFloorIn, double topOverFloorIn) {
        return liteFt2 > LARGE_LITE_FT2 && bottomOverFloorIn < 18 && topOverFloorIn > 36;
    }

    /** Of a bath or a stair, where it is asked for higher over the floor. */
    private static CodeCheck lowGlazing(CodeRule rule, Unit unit, double limitIn) {
        OptionalDouble bottomIn = unit.overFloorIn(unit.glass().lowestLiteIn());
        boolean low = bottomIn.isEmpty() || bottomIn.getAsDouble() < limitIn;
        return new CodeCheck(rule, low ? OPEN : PASSES, new Finding.RoomGlazing(rule, bottomIn, low));
    }

    private static CodeCheck fall(Unit unit, double floorIn) {
        if (!unit.clear().opens()) {
            return DOES_NOT_OPEN;
        }
        double overFloorIn = unit.clear().rect().bottomIn() - floorIn;
        double overGradeIn =
                unit.opening().place().sillHeightIn() + unit.clear().rect().bottomIn();
        boolean low = overGradeIn > 72 && overFloorIn < 24;
        return new CodeCheck(CodeRule.FALL, low ? OPEN : PASSES, new Finding.Fall(low, overFloorIn, overGradeIn));
    }
}
