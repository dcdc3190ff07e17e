package weatherlap.sim.quantity;

import weatherlap.sim.Check;
import weatherlap.sim.house.SidingCondition;

/**
 * Share of handled siding panels that break.
 *
 * <p>Judgement, no published rates found: the share when warm and sound, at 50 °F and above, times 10/3 at 32 °F and 25/3 at 20 °F
 * and below (1.5, 5 and 12.5 %), straight between; doubled for brittle siding, and half as much again where nobody has looked. At
 * most 1.
 */
public final class Breakage {
    private static final double WARM_F = 50;
    private static final double FREEZING_F = 32;
    private static final double COLD_F = 20;
    private static final double AT_FREEZING = 10.0 / 3;
    private static final double AT_COLD = 25.0 / 3;

    private Breakage() {}

    /**
     * Expected panels, from those that are handled.
     *
     * @param handled panels or boards, a count, 0 or more
     * @param warmAndSound share that breaks at 50 °F and above, 0 to 1
     */
    public static double panels(double handled, double warmAndSound, double temperatureF, SidingCondition condition) {
        return handled * fraction(warmAndSound, temperatureF, condition);
    }

    static double fraction(double warmAndSound, double temperatureF, SidingCondition condition) {
        Check.fraction("breakage when warm and sound", warmAndSound);
        return Math.min(1, warmAndSound * cold(temperatureF) * worn(condition));
    }

    private static double cold(double temperatureF) {
        if (temperatureF >= FREEZING_F) {
            double above = Math.min(1, (temperatureF - FREEZING_F) / (WARM_F - FREEZING_F));
            return AT_FREEZING + above * (1 - AT_FREEZING);
        }
        double below = Math.min(1, (FREEZING_F - temperatureF) / (FREEZING_F - COLD_F));
        return AT_FREEZING + below * (AT_COLD - AT_FREEZING);
    }

    private static double worn(SidingCondition condition) {
        return switch (condition) {
            case SOUND, MISINSTALLED -> 1;
            case UNKNOWN -> 1.5;
            case BRITTLE -> 2;
        };
    }
}
