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
 * @param lites visible glass, that of the outer sash first: upper before lower, left before right
 */
public record Lites(Rect unit, Rect inside, List<Rect> lites) {
    public Lites {
        lites = List.copyOf(lites);
    }

    /** @param rings gets those that cover the unit once */
    static Lites of(Rect unit, Sightline sightline, Operation operation, List<Glass.Ring> rings) {
        Rect inside = unit.inset(sightline.jambIn(), sightline.headIn(), sightline.sillIn());
        rings.add(new Glass.Ring(Part.FRAME, unit, inside));
        Rect daylight = inside.inset(sightline.stileIn(), sightline.topRailIn(), sightline.bottomRailIn());
        List<Rect> meeting = meetingRail(daylight, sightline, operation);
        List<Rect> lites = lites(daylight, meeting, operation);
        if (Each.any(lites, Rect::isEmpty)) {
            rings.add(Glass.Ring.whole(Part.SASH, inside));
            return new Lites(unit, inside, List.of());
        }
        rings.add(new Glass.Ring(Part.SASH, inside, daylight));
        meeting.forEach(rail -> rings.add(Glass.Ring.whole(Part.SASH, rail)));
        lites.forEach(lite -> rings.add(Glass.Ring.whole(Part.GLASS, lite)));
        return new Lites(unit, inside, lites);
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

    /** The area on both sides of the meeting rail, or all of it. */
    private static List<Rect> lites(Rect daylight, List<Rect> meeting, Operation operation) {
        if (meeting.isEmpty()) {
            return List.of(daylight);
        }
        Rect rail = meeting.get(0);
        return stacked(operation)
                ? List.of(
                        Rect.between(daylight.leftIn(), rail.topIn(), daylight.rightIn(), daylight.topIn()),
                        Rect.between(daylight.leftIn(), daylight.bottomIn(), daylight.rightIn(), rail.bottomIn()))
                : List.of(
                        Rect.between(daylight.leftIn(), daylight.bottomIn(), rail.leftIn(), daylight.topIn()),
                        Rect.between(rail.rightIn(), daylight.bottomIn(), daylight.rightIn(), daylight.topIn()));
    }
}
