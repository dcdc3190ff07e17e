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
 * @param pieces every part in sight
 * @param glassIn2 area of the glass in sight, in²
 * @param largestLiteIn2 of it in one lite, in²; 0 without glass
 */
public record Glass(Rect hole, List<Lites> units, List<Piece> pieces, double glassIn2, double largestLiteIn2) {
    /** A rectangle of an opening's elevation that one kind of part covers. */
    public record Piece(Part part, Rect rect) {}

    public Glass {
        units = List.copyOf(units);
        pieces = List.copyOf(pieces);
    }

    /** The unit that stands. */
    public static Glass existing(Opening opening, Assumptions assumptions) {
        Sightline sightline = assumptions.existingSightline(opening);
        Rect frame = frame(opening);
        Tiling tiling = new Tiling();
        return assemble(frame, mulled(frame, opening, assumptions), sightline, opening.operation(), tiling);
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
        Tiling tiling = new Tiling();
        tiling.ring(Part.GAP, hole, assembly);
        return assemble(
                hole, mulled(assembly, opening, assumptions), order.sightline(), opening.newOperation(), tiling);
    }

    private static Glass insideOldFrame(Opening opening, OrderSize order, Assumptions assumptions) {
        Sightline old = assumptions.existingSightline(opening);
        Rect frame = frame(opening);
        Mulled cells = mulled(frame, opening, assumptions);
        Tiling tiling = new Tiling();
        tiling.add(Part.OLD_FRAME, cells.posts());
        List<Rect> units = new ArrayList<>();
        for (Rect cell : cells.cells()) {
            Rect inside = cell.inset(old.jambIn(), old.headIn(), old.sillIn());
            tiling.ring(Part.OLD_FRAME, cell, inside);
            Rect unit = inside.centred(order.widthIn(), order.heightIn());
            tiling.ring(Part.GAP, inside, unit);
            units.add(unit);
        }
        return with(frame, units, order.sightline(), opening.newOperation(), tiling);
    }

    private static Glass assemble(Rect hole, Mulled mulled, Sightline sightline, Operation operation, Tiling tiling) {
        tiling.add(Part.MULL_POST, mulled.posts());
        return with(hole, mulled.cells(), sightline, operation, tiling);
    }

    private static Glass with(Rect hole, List<Rect> units, Sightline sightline, Operation operation, Tiling tiling) {
        List<Lites> lites = Each.of(units, unit -> Lites.of(unit, sightline, operation, tiling));
        List<Piece> pieces = tiling.pieces();
        return new Glass(hole, lites, pieces, areaIn2(pieces, Part.GLASS), largestIn2(lites));
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

    /** Area of one kind of part in sight, in². */
    double areaIn2(Part part) {
        return areaIn2(pieces, part);
    }

    private static double areaIn2(List<Piece> pieces, Part part) {
        double area = 0;
        for (Piece piece : pieces) {
            if (piece.part() == part) {
                area += piece.rect().areaIn2();
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
