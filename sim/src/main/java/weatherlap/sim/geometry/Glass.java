package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;

/**
 * An opening as it is seen from outside, piece by piece: the pieces cover the hole in the wall exactly once, so that glass and all that
 * hides it add up to its area.
 *
 * <p>The existing unit fills its frame. A unit that replaces the frame stands in the middle of the rough opening (frame +
 * {@code rough_gap_in}); an insert stands in the middle of the inside of the old frame, whose head, jambs, sill and posts stay in sight.
 *
 * <p>That an insert never shows more glass than a full-flange unit in the same opening is no law of geometry but a property of the rows
 * of {@code sightlines.csv}: see {@link SightlineOrder}.
 *
 * @param hole the area covered: the frame where it stays, else the rough opening
 * @param units left to right
 * @param rings every part in sight
 * @param glassIn2 area of the glass in sight, in²
 * @param largestLiteIn2 of it in one lite, in²; 0 without glass
 * @param lowestLiteIn y of its lower edge; infinite without glass
 */
public record Glass(
        Rect hole, List<Lites> units, List<Ring> rings, double glassIn2, double largestLiteIn2, double lowestLiteIn) {
    /** A rectangle of an opening's elevation that one kind of part covers. */
    public record Piece(Part part, Rect rect) {}

    /** What one kind of part covers: a rectangle without one inside it, which may be empty. Few of them stand for many pieces. */
    public record Ring(Part part, Rect outer, Rect inner) {
        static Ring whole(Part part, Rect rect) {
            return new Ring(part, rect, Rect.EMPTY);
        }

        /** Uprights over the full height, head and sill between them; or the whole. */
        private List<Rect> cut() {
            return inner.isEmpty()
                    ? List.of(outer)
                    : List.of(
                            Rect.between(outer.leftIn(), outer.bottomIn(), inner.leftIn(), outer.topIn()),
                            Rect.between(inner.rightIn(), outer.bottomIn(), outer.rightIn(), outer.topIn()),
                            Rect.between(inner.leftIn(), inner.topIn(), inner.rightIn(), outer.topIn()),
                            Rect.between(inner.leftIn(), outer.bottomIn(), inner.rightIn(), inner.bottomIn()));
        }
    }

    public Glass {
        units = List.copyOf(units);
        rings = List.copyOf(rings);
    }

    /** The unit that stands. */
    public static Glass existing(Opening opening, Assumptions assumptions) {
        Sightline sightline = assumptions.existingSightline(opening);
        Rect frame = frame(opening);
        return assemble(frame, mulled(frame, opening, assumptions), sightline, opening.operation(), new ArrayList<>());
    }

    /** The unit that a method puts in. */
    public static Glass replaced(Opening opening, OrderSize order, Assumptions assumptions) {
        return order.method().keepsOldFrame()
                ? insideOldFrame(opening, order, assumptions)
                : inRoughOpening(opening, order, assumptions);
    }

    private static Glass inRoughOpening(Opening opening, OrderSize order, Assumptions assumptions) {
        double gapIn = assumptions.scenario().value(Scalar.ROUGH_GAP_IN);
        Rect hole = new Rect(
                -gapIn / 2,
                -gapIn / 2,
                opening.frame().widthIn() + gapIn,
                opening.frame().heightIn() + gapIn);
        Rect assembly = hole.centred(order.overallWidthIn(), order.heightIn());
        List<Ring> rings = new ArrayList<>();
        rings.add(new Ring(Part.GAP, hole, assembly));
        return assemble(hole, mulled(assembly, opening, assumptions), order.sightline(), opening.newOperation(), rings);
    }

    private static Glass insideOldFrame(Opening opening, OrderSize order, Assumptions assumptions) {
        Sightline old = assumptions.existingSightline(opening);
        Rect frame = frame(opening);
        Mulled cells = mulled(frame, opening, assumptions);
        List<Ring> rings = new ArrayList<>();
        cells.posts().forEach(post -> rings.add(Ring.whole(Part.OLD_FRAME, post)));
        List<Rect> units = new ArrayList<>();
        for (Rect cell : cells.cells()) {
            Rect inside = cell.inset(old.jambIn(), old.headIn(), old.sillIn());
            rings.add(new Ring(Part.OLD_FRAME, cell, inside));
            Rect unit = inside.centred(order.widthIn(), order.heightIn());
            rings.add(new Ring(Part.GAP, inside, unit));
            units.add(unit);
        }
        return with(frame, units, order.sightline(), opening.newOperation(), rings);
    }

    private static Glass assemble(
            Rect hole, Mulled mulled, Sightline sightline, Operation operation, List<Ring> rings) {
        mulled.posts().forEach(post -> rings.add(Ring.whole(Part.MULL_POST, post)));
        return with(hole, mulled.cells(), sightline, operation, rings);
    }

    private static Glass with(Rect hole, List<Rect> units, Sightline sightline, Operation operation, List<Ring> rings) {
        List<Lites> lites = Each.of(units, unit -> Lites.of(unit, sightline, operation, rings));
        return new Glass(hole, lites, rings, areaIn2(rings, Part.GLASS), largestIn2(lites), lowestIn(lites));
    }

    private static double largestIn2(List<Lites> units) {
        double largest = 0;
        for (Lites unit : units) {
            for (Rect lite : unit.lites()) {
                largest = Math.max(largest, lite.areaIn2());
            }
        }
        return largest;
    }

    private static double lowestIn(List<Lites> units) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Lites unit : units) {
            for (Rect lite : unit.lites()) {
                lowest = Math.min(lowest, lite.bottomIn());
            }
        }
        return lowest;
    }

    private static Mulled mulled(Rect whole, Opening opening, Assumptions assumptions) {
        return Mulled.of(whole, opening.units(), assumptions.scenario().value(Scalar.MULL_POST_IN));
    }

    /** The existing frame. */
    static Rect frame(Opening opening) {
        return new Rect(0, 0, opening.frame().widthIn(), opening.frame().heightIn());
    }

    /** Every visible lite, unit by unit. */
    public List<Rect> lites() {
        if (units.size() == 1) {
            return units.get(0).lites();
        }
        List<Rect> lites = new ArrayList<>();
        for (Lites unit : units) {
            lites.addAll(unit.lites());
        }
        return Collections.unmodifiableList(lites);
    }

    /** Every part in sight, cut into rectangles that cover the hole once. */
    public List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Ring ring : rings) {
            for (Rect rect : ring.cut()) {
                if (!rect.isEmpty()) {
                    pieces.add(new Piece(ring.part(), rect));
                }
            }
        }
        return List.copyOf(pieces);
    }

    /** Area of one kind of part in sight, in². */
    double areaIn2(Part part) {
        return areaIn2(rings, part);
    }

    private static double areaIn2(List<Ring> rings, Part part) {
        double area = 0;
        for (Ring ring : rings) {
            if (ring.part() == part) {
                for (Rect rect : ring.cut()) {
                    area += rect.areaIn2();
                }
            }
        }
        return area;
    }

    public double glassFt2() {
        return Units.squareInchesToSquareFeet(glassIn2);
    }

    /** Sum of the widths of the lites side by side, in. */
    public double glassWidthIn() {
        return Sum.of(units, Glass::rowWidthIn);
    }

    /** Sum of the heights of the lites one above another, in. */
    public double glassHeightIn() {
        return units.stream().mapToDouble(Glass::columnHeightIn).max().orElse(0);
    }

    private static double rowWidthIn(Lites unit) {
        List<Rect> lites = unit.lites();
        return Sum.of(Each.where(lites, lite -> lite.bottomIn() == lites.get(0).bottomIn()), Rect::widthIn);
    }

    private static double columnHeightIn(Lites unit) {
        List<Rect> lites = unit.lites();
        return Sum.of(Each.where(lites, lite -> lite.leftIn() == lites.get(0).leftIn()), Rect::heightIn);
    }
}
