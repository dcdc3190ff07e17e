package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;

/**
 * Widths that hide glass, seen square on, and what an order takes off the opening. All in inches.
 *
 * @param headIn frame at the head
 * @param jambIn frame at one jamb
 * @param sillIn frame at the sill
 * @param meetingRailIn where two sashes meet; 0 without
 * @param topRailIn sash or glazing bead at the top
 * @param bottomRailIn likewise at the bottom
 * @param stileIn sash or glazing bead at one side
 * @param widthDeductionIn order width below the opening it goes into; 0 for an existing unit
 * @param heightDeductionIn likewise
 * @param depthIn frame depth, outside to inside
 */
public record Sightline(
        Product product,
        FrameMaterial material,
        Operation operation,
        double headIn,
        double jambIn,
        double sillIn,
        double meetingRailIn,
        double topRailIn,
        double bottomRailIn,
        double stileIn,
        double widthDeductionIn,
        double heightDeductionIn,
        double depthIn,
        Origin origin) {
    public Sightline {
        Check.notNegative("head", headIn);
        Check.notNegative("jamb", jambIn);
        Check.notNegative("sill", sillIn);
        Check.notNegative("meeting rail", meetingRailIn);
        Check.notNegative("top rail", topRailIn);
        Check.notNegative("bottom rail", bottomRailIn);
        Check.notNegative("stile", stileIn);
        Check.notNegative("width deduction", widthDeductionIn);
        Check.notNegative("height deduction", heightDeductionIn);
        Check.positive("depth", depthIn);
    }
}
