package weatherlap.sim.labour;

import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/** What a working day leaves for the windows. */
public final class WorkingDay {
    /** A day that leaves less is none: judgement. */
    public static final double LEAST_MINUTES = 60;

    private WorkingDay() {}

    /**
     * Minutes that are left of a day when the crew has been on the road and has done every step that each day asks for, whatever house it is
     * at: the least that any house leaves. Below 0 where those take more than the day.
     */
    public static double leastLeftMinutes(Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        Pace pace = new Pace(scenario, 1, false);
        double daily = assumptions.steps().stream()
                .filter(step -> step.driver() == Driver.DAY)
                .mapToDouble(step -> new LabourLine(step, 1, pace.anywhere(step)).meanMinutes())
                .sum();
        return scenario.value(Scalar.HOURS_PER_DAY) * Units.MINUTES_PER_HOUR
                - scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY)
                - daily / scenario.whole(Scalar.CREW_SIZE);
    }
}
