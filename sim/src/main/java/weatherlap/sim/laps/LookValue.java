package weatherlap.sim.laps;

import java.util.List;
import weatherlap.sim.Check;

/**
 * What it is worth to open up one window before deciding: the cost expected of the better method today, less what is expected of the
 * better method for each finding, less the price of the look.
 *
 * <pre>  V = min_m Σ_y P(y)·C_m(y) − Σ_y P(y)·min_m C_m(y) − price</pre>
 *
 * <p>The first difference is never negative; a look pays where it may change the choice often and by enough. Costs must be expected
 * costs given the finding, with the whole house updated by it.
 *
 * @param faultyProbability chance that the look shows the fault, 0 to 1
 * @param fullFlangeUsd expected cost of the full flange when it shows the fault, and when it does not
 * @param insertUsd likewise
 * @param priceUsd of the look
 * @see "Raiffa and Schlaifer 1961, Applied Statistical Decision Theory (expected value of sample information)"
 */
public record LookValue(double faultyProbability, ByFinding fullFlangeUsd, ByFinding insertUsd, double priceUsd) {
    public LookValue {
        Check.fraction("chance that a look shows the fault", faultyProbability);
        Check.notNegative("price of a look", priceUsd);
    }

    /** A cost for each finding, USD. */
    public record ByFinding(double faulty, double sound) {
        public ByFinding {
            Check.finite("cost when faulty", faulty);
            Check.finite("cost when sound", sound);
        }

        double mean(double faultyProbability) {
            return faultyProbability * faulty + (1 - faultyProbability) * sound;
        }
    }

    /**
     * Chance that a look which tells right with a reliability shows the fault, when it stands with a probability.
     */
    public static double showsFault(double standing, double reliability) {
        return standing * reliability + (1 - standing) * (1 - reliability);
    }

    /**
     * The look at one of several alike openings of a house, when each costs so much with the fault and so much without.
     *
     * @param quality belief in the fault at these openings before the look
     * @param reliability chance that the look tells right
     * @param openings how many are decided on together, 1 or more
     * @param fullFlangeUsd cost of one opening when the fault stands there, and when it does not
     * @param insertUsd likewise
     */
    public static LookValue of(
            SharedQuality quality,
            double reliability,
            int openings,
            ByFinding fullFlangeUsd,
            ByFinding insertUsd,
            double priceUsd) {
        Check.within("openings", openings, 1, Integer.MAX_VALUE);
        return new LookValue(
                showsFault(quality.mean(), reliability),
                expected(quality, reliability, openings, fullFlangeUsd),
                expected(quality, reliability, openings, insertUsd),
                priceUsd);
    }

    private static ByFinding expected(SharedQuality quality, double reliability, int openings, ByFinding one) {
        return new ByFinding(
                expected(quality, Likelihood.look(true, reliability), openings, one),
                expected(quality, Likelihood.look(false, reliability), openings, one));
    }

    /** The opening looked at stands by its own sight, the others by what it tells of the house. */
    private static double expected(SharedQuality quality, Likelihood sight, int openings, ByFinding one) {
        double others = quality.after(List.of(sight)).mean();
        return one.mean(sight.update(quality.mean())) + (openings - 1) * one.mean(others);
    }

    /** Gain expected of knowing the finding, USD, 0 or more. */
    public double gainUsd() {
        double today = Math.min(fullFlangeUsd.mean(faultyProbability), insertUsd.mean(faultyProbability));
        double informed = faultyProbability * Math.min(fullFlangeUsd.faulty(), insertUsd.faulty())
                + (1 - faultyProbability) * Math.min(fullFlangeUsd.sound(), insertUsd.sound());
        return Math.max(0, today - informed);
    }

    /** Gain less price, USD; a look pays where it is above 0. */
    public double netUsd() {
        return gainUsd() - priceUsd;
    }
}
