package weatherlap.sim.geometry;

import java.util.List;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Opening;

/**
 * What a flanged unit, which stands deeper in the wall than the old one, takes off the interior returns.
 *
 * <pre>  depth left = wall depth − (frame depth − flange setback)</pre>
 *
 * from the flange on the sheathing inwards (plane geometry), 0 or above; the depth to cut is the setback of the opening, or the
 * scenario's. The sill board, two jambs and the head are cut each in one piece.
 *
 * @param cutIn depth to cut off, 0: nothing is cut
 * @param depthLeftIn return that stays
 * @param layers to cut through
 * @param sawDepthIn through all layers and no deeper: studs, wires and pipes stand behind
 * @param pieces in the order they are cut
 */
public record CutBack(double cutIn, double depthLeftIn, int layers, double sawDepthIn, List<Cut> pieces) {
    /** One edge to cut along. */
    public record Cut(String tradeName, double lengthIn) {}

    public CutBack {
        pieces = List.copyOf(pieces);
    }

    /** @param frameDepthIn of the new unit, outside to inside, in. */
    static CutBack of(Opening opening, double frameDepthIn, Scenario scenario) {
        double cutIn = opening.inside().setbackIn().orElse(scenario.value(Scalar.SETBACK_IN));
        double depthLeftIn = returnDepthIn(
                scenario.value(Scalar.WALL_DEPTH_IN), frameDepthIn, scenario.value(Scalar.FLANGE_SETBACK_IN));
        List<Cut> pieces = cutIn > 0 ? pieces(opening) : List.of();
        return new CutBack(
                cutIn,
                depthLeftIn,
                opening.inside().layers(),
                opening.inside().layers() * scenario.value(Scalar.RETURN_THICKNESS_IN),
                pieces);
    }

    /** Depth of return between the unit and the room, in. */
    static double returnDepthIn(double wallDepthIn, double frameDepthIn, double flangeSetbackIn) {
        return Math.max(0, wallDepthIn - (frameDepthIn - flangeSetbackIn));
    }

    /** Edge length × layers, ft. */
    double returnFt() {
        return Units.inchesToFeet(layers * Sum.of(pieces, Cut::lengthIn));
    }

    private static List<Cut> pieces(Opening opening) {
        return List.of(
                new Cut("sill board", opening.frame().widthIn()),
                new Cut("left jamb", opening.frame().heightIn()),
                new Cut("right jamb", opening.frame().heightIn()),
                new Cut("head", opening.frame().widthIn()));
    }
}
