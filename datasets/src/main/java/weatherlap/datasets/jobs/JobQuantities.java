package weatherlap.datasets.jobs;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.method.Method;
import weatherlap.sim.quantity.Breakage;

/**
 * Quantity of every driver of a job, from what its record holds. Judgement where the record is silent: openings 36 × 60 in., hence 16
 * ft around; edges in the proportion 3 to 5; screws as far apart as the scenario says; one layer of return all around; ten panels an
 * opening where there are any, of which as many break as the scenario expects on that day; a wall for every three openings, at most four; a day for every 4 full-flange or 9 insert openings.
 */
final class JobQuantities {
    private static final double PERIMETER_FT = 16;
    private static final double WIDTH_SHARE = 3.0 / 16;
    private static final double HEIGHT_SHARE = 5.0 / 16;
    private static final double GLASS_SHARE_OF_FRAME = 0.73;
    private static final double PANELS_AN_OPENING = 10;
    private static final double OPENINGS_A_WALL = 3;
    private static final double WALLS = 4;

    private JobQuantities() {}

    static Map<Driver, Double> of(JobRecord job, Map<Fact, String> facts, Scenario scenario) {
        Method method = job.method();
        double n = job.openings();
        double around = job.counted().perimeterFt().orElse(n * PERIMETER_FT);
        double units = n * Integer.parseInt(facts.get(Fact.UNITS));
        Map<Driver, Double> quantities = new EnumMap<>(Driver.class);
        for (Driver driver : Driver.values()) {
            double quantity =
                    switch (driver) {
                        case JOB -> 1;
                        case DAY -> job.counted().days().orElse(Math.ceil(n / openingsADay(method)));
                        case ELEVATION ->
                            job.counted().elevations().orElse(Math.min(WALLS, Math.ceil(n / OPENINGS_A_WALL)));
                        case PANEL -> panels(job, facts);
                        case BROKEN_PANEL ->
                            Breakage.panels(
                                    panels(job, facts),
                                    scenario.value(Scalar.BREAKAGE_FRACTION),
                                    scenario.value(Scalar.TEMPERATURE_F),
                                    SidingCondition.valueOf(
                                            facts.get(Fact.SIDING_CONDITION).toUpperCase(Locale.ROOT)));
                        case OPENING -> n;
                        case UNIT -> units;
                        case CORNER -> 4 * n;
                        case UNITED_INCH -> Units.feetToInches(around / 2);
                        case PERIMETER_FT -> around;
                        case CAPPING_FT -> method.isCapped() ? around : 0;
                        case HEAD_FT, SILL_FT -> around * WIDTH_SHARE;
                        case JAMB_FT -> around * 2 * HEIGHT_SHARE;
                        case RETURN_FT ->
                            method.cutsReturns() ? job.counted().returnFt().orElse(around) : 0;
                        case FASTENER ->
                            method.hasFlange()
                                    ? job.counted()
                                            .fasteners()
                                            .orElse(Units.feetToInches(around)
                                                    / scenario.value(Scalar.FASTENER_SPACING_IN))
                                    : 0;
                        case GLASS_FT2 ->
                            n * GLASS_SHARE_OF_FRAME * WIDTH_SHARE * HEIGHT_SHARE * Math.pow(around / n, 2);
                        // bought, never worked by the piece
                        case TAPE_FT, SEALANT_IN3, FOAM_IN3, CAPPING_FT2 -> 0;
                    };
            quantities.put(driver, quantity);
        }
        return Collections.unmodifiableMap(quantities);
    }

    /** Openings that a crew does in a day. */
    static double openingsADay(Method method) {
        return switch (method) {
            case FULL_FLANGE -> 4;
            case FULL_FRAME -> 5;
            case INSERT -> 9;
        };
    }

    private static double panels(JobRecord job, Map<Fact, String> facts) {
        Cladding cladding = Cladding.valueOf(facts.get(Fact.CLADDING).toUpperCase(Locale.ROOT));
        boolean down = job.method().takesSidingDown() && cladding.inCourses();
        return down ? job.counted().panels().orElse(job.openings() * PANELS_AN_OPENING) : 0;
    }
}
