package weatherlap.sim.quantity;

import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.SidingCondition;

/**
 * Share of handled siding panels that break: {@code breakage_fraction} when warm and sound, at 50 °F and above, times
 * {@code breakage_freezing_factor} at 32 °F and {@code breakage_cold_factor} at 20 °F and below, straight between; and times a factor
 * for siding that is brittle or that nobody has looked at. At most 1.
 */
public final class Breakage {
    private static final double WARM_F = 50;
    private static final double FREEZING_F = 32;
    private static final double COLD_F = 20;

    private Breakage() {}

    /**
     * Expected panels that break, from those that are handled.
     *
     * @param handled panels or boards, a count, 0 or more
     */
    public static double panels(double handled, SidingCondition condition, Scenario scenario) {
        return handled * fraction(condition, scenario);
    }

    static double fraction(SidingCondition condition, Scenario scenario) {
        return Math.min(1, scenario.value(Scalar.BREAKAGE_FRACTION) * cold(scenario) * worn(condition, scenario));
    }

    private static double cold(Scenario scenario) {
        double temperatureF = scenario.value(Scalar.TEMPERATURE_F);
        double freezing = scenario.value(Scalar.BREAKAGE_FREEZING_FACTOR);
        if (temperatureF >= FREEZING_F) {
            double above = Math.min(1, (temperatureF - FREEZING_F) / (WARM_F - FREEZING_F));
            return freezing + above * (1 - freezing);
        }
        double below = Math.min(1, (FREEZING_F - temperatureF) / (FREEZING_F - COLD_F));
        return freezing + below * (scenario.value(Scalar.BREAKAGE_COLD_FACTOR) - freezing);
    }

    private static double worn(SidingCondition condition, Scenario scenario) {
        return switch (condition) {
            case SOUND, MISINSTALLED -> 1;
            case UNKNOWN -> scenario.value(Scalar.BREAKAGE_UNKNOWN_FACTOR);
            case BRITTLE -> scenario.value(Scalar.BREAKAGE_BRITTLE_FACTOR);
        };
    }
}
