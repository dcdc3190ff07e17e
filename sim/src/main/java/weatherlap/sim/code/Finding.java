package weatherlap.sim.code;

import java.util.List;
import java.util.OptionalDouble;

/** What a check can find, each with the numbers that it rests on; lengths in inches, areas in square feet. */
public interface Finding {
    /** A finding with its numbers: in records, since a house makes hundreds, and a lambda that holds numbers takes longer to make. */
    interface Told {
        String to(Finding words);
    }

    /** What R310.2 limits of a way out. */
    enum EscapeMeasure {
        AREA_FT2,
        HEIGHT_IN,
        WIDTH_IN,
        SILL_OVER_FLOOR_IN
    }

    /** A measure beyond its limit. */
    record Shortfall(EscapeMeasure measure, double found, double limit) {}

    /**
     * A way out.
     *
     * @param shortfalls none where it is large enough
     */
    String escape(boolean sillKnown, List<Shortfall> shortfalls, double widthIn, double heightIn, double areaFt2);

    record Escape(boolean sillKnown, List<Shortfall> shortfalls, double widthIn, double heightIn, double areaFt2)
            implements Told {
        @Override
        public String to(Finding words) {
            return words.escape(sillKnown, shortfalls, widthIn, heightIn, areaFt2);
        }
    }

    /** Glass or what opens, as a share of the floor. */
    String share(CodeRule rule, double areaFt2, double floorFt2, double neededShare);

    record Share(CodeRule rule, double areaFt2, double floorFt2, double neededShare) implements Told {
        @Override
        public String to(Finding words) {
            return words.share(rule, areaFt2, floorFt2, neededShare);
        }
    }

    /** A lite large and low enough for safety glazing. */
    String largeLowLite(double areaFt2, double bottomOverFloorIn);

    String noLargeLowLite();

    /**
     * Glass at a tub, a shower or a stair.
     *
     * @param overFloorIn its lowest edge; empty where that was not measured
     * @param low whether it is, or may be, under the height that asks for safety glazing
     */
    String roomGlazing(CodeRule rule, OptionalDouble overFloorIn, boolean low);

    record RoomGlazing(CodeRule rule, OptionalDouble overFloorIn, boolean low) implements Told {
        @Override
        public String to(Finding words) {
            return words.roomGlazing(rule, overFloorIn, low);
        }
    }

    /** @param low whether so low over the floor and high over grade that a child may fall out */
    String fall(boolean low, double overFloorIn, double overGradeIn);

    record Fall(boolean low, double overFloorIn, double overGradeIn) implements Told {
        @Override
        public String to(Finding words) {
            return words.fall(low, overFloorIn, overGradeIn);
        }
    }

    String doesNotOpen();
}
