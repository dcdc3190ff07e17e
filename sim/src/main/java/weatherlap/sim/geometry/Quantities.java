package weatherlap.sim.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * How much of each driver an opening holds. Edges are those of the new units: of the one assembly for full-flange, of every unit for an
 * insert.
 *
 * <pre>
 *   sealant   bead section × edge: behind the flange (the sill only where it is sealed) and once around inside;
 *             for an insert once around outside and once around inside
 *   foam      gap between units and what they go into × depth × share filled
 * </pre>
 */
final class Quantities {
    private Quantities() {}

    static Map<Driver, Double> of(
            OrderSize order,
            Glass replaced,
            Optional<CutBack> cutBack,
            int fasteners,
            Flashing flashing,
            Capping capping,
            Scenario scenario) {
        boolean flanged = order.method() == Method.FULL_FLANGE;
        int frames = flanged ? 1 : order.units();
        double acrossIn = frames * (flanged ? order.overallWidthIn() : order.widthIn());
        double uprightIn = frames * 2 * order.heightIn();
        double perimeterIn = 2 * acrossIn + uprightIn;
        boolean sillOpen = flanged && scenario.choice(Choice.SILL_FLANGE).equals("open");
        double sealedIn = 2 * perimeterIn - (sillOpen ? acrossIn : 0);
        Map<Driver, Double> quantities = new EnumMap<>(Driver.class);
        for (Driver driver : Driver.values()) {
            switch (driver) {
                case JOB, DAY, ELEVATION, PANEL -> {}
                case OPENING -> quantities.put(driver, 1.0);
                case UNIT -> quantities.put(driver, (double) order.units());
                case UNITED_INCH -> quantities.put(driver, order.unitedInches());
                case PERIMETER_FT -> quantities.put(driver, Units.inchesToFeet(perimeterIn));
                case HEAD_FT, SILL_FT -> quantities.put(driver, Units.inchesToFeet(acrossIn));
                case JAMB_FT -> quantities.put(driver, Units.inchesToFeet(uprightIn));
                case CORNER -> quantities.put(driver, 4.0 * frames);
                case RETURN_FT ->
                    quantities.put(driver, cutBack.map(CutBack::returnFt).orElse(0.0));
                case FASTENER -> quantities.put(driver, (double) fasteners);
                case CAPPING_FT -> quantities.put(driver, Units.inchesToFeet(capping.edgeIn()));
                case CAPPING_FT2 -> quantities.put(driver, Units.squareInchesToSquareFeet(capping.areaIn2()));
                case GLASS_FT2 -> quantities.put(driver, replaced.glassFt2());
                case TAPE_FT -> quantities.put(driver, Units.inchesToFeet(flashing.lengthIn()));
                case SEALANT_IN3 ->
                    quantities.put(driver, sealedIn * Bead.ROUND.sectionIn2(scenario.value(Scalar.SEALANT_BEAD_IN)));
                case FOAM_IN3 ->
                    quantities.put(
                            driver,
                            replaced.areaIn2(Part.GAP)
                                    * scenario.value(Scalar.FOAM_GAP_DEPTH_IN)
                                    * scenario.value(Scalar.FOAM_FILL));
            }
        }
        return quantities;
    }
}
