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
 * Quantity of every driver of a job, from what its record holds. Where the record is silent, the scenario's {@code job_...} say what is
 * ordinary: the size of a window, panels at one, windows on a wall and a day; screws stand as far apart as it says, one layer of return
 * goes all around, and of the panels as many break as it expects on that day.
 */
public final class JobQuantities {
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
        double around = around(job, scenario);
        return switch (driver) {
            case JOB -> 1;
            case DAY -> days(job.method(), job.openings(), scenario);
            case ELEVATION -> Math.min(WALLS, Math.ceil(n / scenario.value(Scalar.JOB_WINDOWS_PER_WALL)));
            case PANEL -> n * scenario.value(Scalar.JOB_PANELS_PER_WINDOW);
            case BROKEN_PANEL ->
                Breakage.panels(
                        quantity(Driver.PANEL, job, facts, scenario),
                        word(facts, Fact.SIDING_CONDITION, SidingCondition.class),
                        scenario);
            case OPENING -> n;
            case UNIT -> n * Integer.parseInt(facts.get(Fact.UNITS));
            case CORNER -> 4 * n;
            case UNITED_INCH -> Units.feetToInches(around / 2);
            case PERIMETER_FT, CAPPING_FT, RETURN_FT -> around;
            case HEAD_FT, SILL_FT -> around * widthShare(scenario);
            case JAMB_FT -> around * 2 * heightShare(scenario);
            case FASTENER -> Units.feetToInches(around) / scenario.value(Scalar.FASTENER_SPACING_IN);
            case GLASS_FT2 ->
                scenario.value(Scalar.JOB_GLASS_SHARE) * head(job, scenario) * jamb(job, scenario) / 2 / n;
            case TAPE_FT, SEALANT_IN3, FOAM_IN3, CAPPING_FT2 -> 0;
        };
    }

    private static double head(JobRecord job, Scenario scenario) {
        return job.counted().of(Driver.HEAD_FT).orElse(around(job, scenario) * widthShare(scenario));
    }

    private static double jamb(JobRecord job, Scenario scenario) {
        return job.counted().of(Driver.JAMB_FT).orElse(around(job, scenario) * 2 * heightShare(scenario));
    }

    /** As kept, else the sum of the edges where they were kept, else that of openings of the usual size. */
    private static double around(JobRecord job, Scenario scenario) {
        JobRecord.Counted kept = job.counted();
        boolean edges = Stream.of(Driver.HEAD_FT, Driver.JAMB_FT, Driver.SILL_FT)
                .allMatch(edge -> kept.of(edge).isPresent());
        return kept.of(Driver.PERIMETER_FT)
                .orElseGet(() -> edges
                        ? kept.quantities().get(Driver.HEAD_FT)
                                + kept.quantities().get(Driver.JAMB_FT)
                                + kept.quantities().get(Driver.SILL_FT)
                        : job.openings() * windowFt(scenario));
    }

    private static <E extends Enum<E>> E word(Map<Fact, String> facts, Fact fact, Class<E> type) {
        return Enum.valueOf(type, facts.get(fact).toUpperCase(Locale.ROOT));
    }

    /** Around an ordinary window, ft. */
    private static double windowFt(Scenario scenario) {
        return Units.inchesToFeet(
                2 * (scenario.value(Scalar.JOB_WINDOW_WIDTH_IN) + scenario.value(Scalar.JOB_WINDOW_HEIGHT_IN)));
    }

    /** Head of an ordinary window over the way around it. */
    private static double widthShare(Scenario scenario) {
        return Units.inchesToFeet(scenario.value(Scalar.JOB_WINDOW_WIDTH_IN)) / windowFt(scenario);
    }

    private static double heightShare(Scenario scenario) {
        return Units.inchesToFeet(scenario.value(Scalar.JOB_WINDOW_HEIGHT_IN)) / windowFt(scenario);
    }

    /** Working days of a crew for so many openings. */
    public static double days(Method method, int openings, Scenario scenario) {
        return Math.ceil(openings / openingsADay(method, scenario));
    }

    private static double openingsADay(Method method, Scenario scenario) {
        return scenario.value(
                switch (method) {
                    case FULL_FLANGE -> Scalar.JOB_WINDOWS_A_DAY_FULL_FLANGE;
                    case FULL_FRAME -> Scalar.JOB_WINDOWS_A_DAY_FULL_FRAME;
                    case INSERT -> Scalar.JOB_WINDOWS_A_DAY_INSERT;
                });
    }
}
