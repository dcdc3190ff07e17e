package weatherlap.sim.geometry;

import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Operation;

/**
 * One unit taken apart as it is seen square on from outside. With frame (head h, jamb j, sill s) and sash (top rail t, bottom rail b,
 * stile a, meeting rail m) of the {@link Sightline}, a unit W × H shows
 *
 * <pre>
 *   casement, awning, picture   1 lite   (W − 2j − 2a)         × (H − h − s − t − b)
 *   double and single hung      2 lites  (W − 2j − 2a)         × (H − h − s − t − b − m)/2
 *   slider                      2 lites  (W − 2j − 2a − m)/2   × (H − h − s − t − b)
 * </pre>
 *
 * Both lites of a sliding pair show equally much, and the two sashes overlap by the meeting rail, of which the outer one is seen. A
 * unit too small for its own rails shows no glass.
 *
 * @param unit outside to outside
 * @param inside of the frame, where the sashes stand
 * @param sashes outlines, the outer one first: upper before lower, left before right; those of a sliding pair overlap
 * @param lites visible glass, in the order of the sashes
 */
public record Lites(Rect unit, Rect inside, List<Rect> sashes, List<Rect> lites) {
    public Lites {
        sashes = List.copyOf(sashes);
        lites = List.copyOf(lites);
    }

    /** @param tiling gets the pieces that cover the unit once */
    static Lites of(Rect unit, Sightline sightline, Operation operation, Tiling tiling) {
        Rect inside = unit.inset(sightline.jambIn(), sightline.headIn(), sightline.sillIn());
        tiling.ring(Part.FRAME, unit, inside);
        Rect daylight = inside.inset(sightline.stileIn(), sightline.topRailIn(), sightline.bottomRailIn());
        List<Rect> meeting = meetingRail(daylight, sightline, operation);
        List<Rect> lites = lites(daylight, meeting, operation);
        if (Each.any(lites, Rect::isEmpty)) {
            tiling.add(Part.SASH, inside);
            return new Lites(unit, inside, List.of(), List.of());
        }
        tiling.ring(Part.SASH, inside, daylight);
        tiling.add(Part.SASH, meeting);
        tiling.add(Part.GLASS, lites);
        return new Lites(unit, inside, sashes(inside, meeting, operation), lites);
    }

    /** Lites that an operation divides a unit into. */
    static int count(Operation operation) {
        return switch (operation) {
            case DOUBLE_HUNG, SINGLE_HUNG, SLIDER -> 2;
            case CASEMENT, AWNING, PICTURE -> 1;
        };
    }

    static boolean stacked(Operation operation) {
        return operation == Operation.DOUBLE_HUNG || operation == Operation.SINGLE_HUNG;
    }

    private static List<Rect> meetingRail(Rect daylight, Sightline sightline, Operation operation) {
        if (count(operation) == 1) {
            return List.of();
        }
        double railIn = sightline.meetingRailIn();
        if (stacked(operation)) {
            double bottomIn = daylight.bottomIn() + (daylight.heightIn() - railIn) / 2;
            return List.of(Rect.between(daylight.leftIn(), bottomIn, daylight.rightIn(), bottomIn + railIn));
        }
        double leftIn = daylight.leftIn() + (daylight.widthIn() - railIn) / 2;
        return List.of(Rect.between(leftIn, daylight.bottomIn(), leftIn + railIn, daylight.topIn()));
    }

    private static List<Rect> lites(Rect daylight, List<Rect> meeting, Operation operation) {
        return halves(daylight, meeting, stacked(operation), false);
    }

    private static List<Rect> sashes(Rect inside, List<Rect> meeting, Operation operation) {
        return halves(inside, meeting, stacked(operation), true);
    }

    /** The area on both sides of the meeting rail, with the rail in both or in neither. */
    private static List<Rect> halves(Rect area, List<Rect> meeting, boolean stacked, boolean withRail) {
        if (meeting.isEmpty()) {
            return List.of(area);
        }
        Rect rail = meeting.get(0);
        if (stacked) {
            double upperFromIn = withRail ? rail.bottomIn() : rail.topIn();
            double lowerToIn = withRail ? rail.topIn() : rail.bottomIn();
            return List.of(
                    Rect.between(area.leftIn(), upperFromIn, area.rightIn(), area.topIn()),
                    Rect.between(area.leftIn(), area.bottomIn(), area.rightIn(), lowerToIn));
        }
        double leftToIn = withRail ? rail.rightIn() : rail.leftIn();
        double rightFromIn = withRail ? rail.leftIn() : rail.rightIn();
        return List.of(
                Rect.between(area.leftIn(), area.bottomIn(), leftToIn, area.topIn()),
                Rect.between(rightFromIn, area.bottomIn(), area.rightIn(), area.topIn()));
    }
}
