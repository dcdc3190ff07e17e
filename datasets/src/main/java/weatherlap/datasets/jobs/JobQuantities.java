package weatherlap.datasets.jobs;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
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
public final class JobQuantities {
    private static final double PERIMETER_FT = 16;
    private static final double WIDTH_SHARE = 3.0 / 16;
    private static final double HEIGHT_SHARE = 5.0 / 16;
    private static final double GLASS_SHARE_OF_FRAME = 0.73;
    private static final double PANELS_AN_OPENING = 10;
    private static final double OPENINGS_A_WALL = 3;
    private static final double WALLS = 4;

    private JobQuantities() {}

    static Map<Driver, Double> of(JobRecord job, Map<Fact, String> facts, Scenario scenario) {
        Map<Driver, Double> quantities = new EnumMap<>(Driver.class);
        for (Driver driver : Driver.values()) {
            quantities.put(driver, occurs(driver, job, facts) ? quantity(driver, job, facts, scenario) : 0);
        }
        return Collections.unmodifiableMap(quantities);
    }

    private static double quantity(Driver driver, JobRecord job, Map<Fact, String> facts, Scenario scenario) {
        return job.counted().of(driver).orElseGet(() -> filledIn(driver, job, facts, scenario));
    }

    /** Whether the method, or the wall, leaves anything to count. */
    private static boolean occurs(Driver driver, JobRecord job, Map<Fact, String> facts) {
        Method method = job.method();
        return switch (driver) {
            case PANEL, BROKEN_PANEL ->
                method.takesSidingDown()
                        && word(facts, Fact.CLADDING, Cladding.class).inCourses();
            case CAPPING_FT -> method.isCapped();
            case RETURN_FT -> method.cutsReturns();
            case FASTENER -> method.hasFlange();
            // bought, never worked by the piece
            case TAPE_FT, SEALANT_IN3, FOAM_IN3, CAPPING_FT2 -> false;
            default -> true;
        };
    }

    private static double filledIn(Driver driver, JobRecord job, Map<Fact, String> facts, Scenario scenario) {
        double n = job.openings();
        double around = around(job);
        return switch (driver) {
            case JOB -> 1;
            case DAY -> days(job.method(), job.openings());
            case ELEVATION -> Math.min(WALLS, Math.ceil(n / OPENINGS_A_WALL));
            case PANEL -> n * PANELS_AN_OPENING;
            case BROKEN_PANEL ->
                Breakage.panels(
                        quantity(Driver.PANEL, job, facts, scenario),
                        scenario.value(Scalar.BREAKAGE_FRACTION),
                        scenario.value(Scalar.TEMPERATURE_F),
                        word(facts, Fact.SIDING_CONDITION, SidingCondition.class));
            case OPENING -> n;
            case UNIT -> n * Integer.parseInt(facts.get(Fact.UNITS));
            case CORNER -> 4 * n;
            case UNITED_INCH -> Units.feetToInches(around / 2);
            case PERIMETER_FT, CAPPING_FT, RETURN_FT -> around;
            case HEAD_FT, SILL_FT -> around * WIDTH_SHARE;
            case JAMB_FT -> around * 2 * HEIGHT_SHARE;
            case FASTENER -> Units.feetToInches(around) / scenario.value(Scalar.FASTENER_SPACING_IN);
            case GLASS_FT2 -> GLASS_SHARE_OF_FRAME * head(job) * jamb(job) / 2 / n;
            case TAPE_FT, SEALANT_IN3, FOAM_IN3, CAPPING_FT2 -> 0;
        };
    }

    private static double head(JobRecord job) {
        return job.counted().of(Driver.HEAD_FT).orElse(around(job) * WIDTH_SHARE);
    }

    private static double jamb(JobRecord job) {
        return job.counted().of(Driver.JAMB_FT).orElse(around(job) * 2 * HEIGHT_SHARE);
    }

    /** As kept, else the sum of the edges where they were kept, else that of openings of the usual size. */
    private static double around(JobRecord job) {
        JobRecord.Counted kept = job.counted();
        boolean edges = Stream.of(Driver.HEAD_FT, Driver.JAMB_FT, Driver.SILL_FT)
                .allMatch(edge -> kept.of(edge).isPresent());
        return kept.of(Driver.PERIMETER_FT)
                .orElseGet(() -> edges
                        ? kept.quantities().get(Driver.HEAD_FT)
                                + kept.quantities().get(Driver.JAMB_FT)
                                + kept.quantities().get(Driver.SILL_FT)
                        : job.openings() * PERIMETER_FT);
    }

    private static <E extends Enum<E>> E word(Map<Fact, String> facts, Fact fact, Class<E> type) {
        return Enum.valueOf(type, facts.get(fact).toUpperCase(Locale.ROOT));
    }

    /** Working days of a crew for so many openings. */
    public static double days(Method method, int openings) {
        return Math.ceil(openings / openingsADay(method));
    }

    private static double openingsADay(Method method) {
        return switch (method) {
            case FULL_FLANGE -> 4;
            case FULL_FRAME -> 5;
            case INSERT -> 9;
        };
    }
}
