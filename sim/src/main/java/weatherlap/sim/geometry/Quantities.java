package weatherlap.sim.geometry;

import java.util.Optional;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * How much of each driver an opening holds. Edges are those of the new units: of the one assembly where the old frame is out, of every
 * unit where it stays.
 *
 * <pre>
 *   sealant   bead section × edge: behind the flange (the sill only where it is sealed) and once around inside;
 *             without a flange once around outside and once around inside
 *   foam      gap between units and what they go into × depth × share filled
 * </pre>
 */
final class Quantities {
    private Quantities() {}

    static OpeningQuantities of(
            OrderSize order,
            Glass replaced,
            Optional<CutBack> cutBack,
            Optional<Fastening> fastening,
            Flashing flashing,
            Capping capping,
            Scenario scenario) {
        boolean assembled = !order.method().keepsOldFrame();
        int frames = assembled ? 1 : order.units();
        double acrossIn = frames * (assembled ? order.overallWidthIn() : order.widthIn());
        double uprightIn = frames * 2 * order.heightIn();
        double perimeterIn = 2 * acrossIn + uprightIn;
        boolean sillOpen = order.method().hasFlange()
                && scenario.choice(Choice.SILL_FLANGE).equals("open");
        double sealedIn = 2 * perimeterIn - (sillOpen ? acrossIn : 0);
        double sealantIn3 = sealedIn * beadIn2(scenario.value(Scalar.SEALANT_BEAD_IN));
        double foamIn3 = replaced.areaIn2(Part.GAP)
                * scenario.value(Scalar.FOAM_GAP_DEPTH_IN)
                * scenario.value(Scalar.FOAM_FILL);
        double[] counted = OpeningQuantities.none();
        counted[Driver.OPENING.ordinal()] = 1.0;
        counted[Driver.UNIT.ordinal()] = order.units();
        counted[Driver.UNITED_INCH.ordinal()] = order.unitedInches();
        counted[Driver.PERIMETER_FT.ordinal()] = Units.inchesToFeet(perimeterIn);
        counted[Driver.HEAD_FT.ordinal()] = Units.inchesToFeet(acrossIn);
        counted[Driver.JAMB_FT.ordinal()] = Units.inchesToFeet(uprightIn);
        counted[Driver.SILL_FT.ordinal()] = Units.inchesToFeet(acrossIn);
        counted[Driver.CORNER.ordinal()] = 4.0 * frames;
        counted[Driver.RETURN_FT.ordinal()] = cutBack.map(CutBack::returnFt).orElse(0.0);
        counted[Driver.FASTENER.ordinal()] = fastening.map(Fastening::count).orElse(0);
        counted[Driver.CAPPING_FT.ordinal()] = Units.inchesToFeet(capping.edgeIn());
        counted[Driver.CAPPING_FT2.ordinal()] = Units.squareInchesToSquareFeet(capping.areaIn2());
        counted[Driver.GLASS_FT2.ordinal()] = replaced.glassFt2();
        counted[Driver.TAPE_FT.ordinal()] = Units.inchesToFeet(flashing.lengthIn());
        counted[Driver.SEALANT_IN3.ordinal()] = sealantIn3;
        counted[Driver.FOAM_IN3.ordinal()] = foamIn3;
        return new OpeningQuantities(order.method(), counted);
    }

    /** Section of a round bead, πw²/4. Yields in print are often wrong by two; the volume is not. */
    static double beadIn2(double widthIn) {
        return Math.PI / 4 * widthIn * widthIn;
    }
}
