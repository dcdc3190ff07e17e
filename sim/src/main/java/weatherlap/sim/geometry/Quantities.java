package weatherlap.sim.geometry;

import java.util.EnumMap;
import java.util.Map;
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
            int fasteners,
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
        Map<Driver, Double> quantities = new EnumMap<>(Driver.class);
        quantities.put(Driver.OPENING, 1.0);
        quantities.put(Driver.UNIT, (double) order.units());
        quantities.put(Driver.UNITED_INCH, order.unitedInches());
        quantities.put(Driver.PERIMETER_FT, Units.inchesToFeet(perimeterIn));
        quantities.put(Driver.HEAD_FT, Units.inchesToFeet(acrossIn));
        quantities.put(Driver.JAMB_FT, Units.inchesToFeet(uprightIn));
        quantities.put(Driver.SILL_FT, Units.inchesToFeet(acrossIn));
        quantities.put(Driver.CORNER, 4.0 * frames);
        quantities.put(Driver.RETURN_FT, cutBack.map(CutBack::returnFt).orElse(0.0));
        quantities.put(Driver.FASTENER, (double) fasteners);
        quantities.put(Driver.CAPPING_FT, Units.inchesToFeet(capping.edgeIn()));
        quantities.put(Driver.CAPPING_FT2, Units.squareInchesToSquareFeet(capping.areaIn2()));
        quantities.put(Driver.GLASS_FT2, replaced.glassFt2());
        quantities.put(Driver.TAPE_FT, Units.inchesToFeet(flashing.lengthIn()));
        quantities.put(Driver.SEALANT_IN3, sealantIn3);
        quantities.put(Driver.FOAM_IN3, foamIn3);
        return new OpeningQuantities(order.method(), quantities);
    }

    /** Section of a round bead, πw²/4. Yields in print are often wrong by two; the volume is not. */
    static double beadIn2(double widthIn) {
        return Math.PI / 4 * widthIn * widthIn;
    }
}
