package weatherlap.analysis.season;

import java.util.Arrays;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.Check;

/**
 * One way to do one house.
 *
 * @param crewDays whole days of a crew, 1 or more, on mean minutes
 * @param grossProfitUsd mean: price less direct cost and service; overhead is paid out of it
 * @param callbacks repairs that the shop's warranty is expected to pay for, each at its present worth over the mean cost of one
 * @param familyUsd mean cost to the family over the horizon
 * @param grossDrawsUsd gross profit by draw, about its mean; not to be changed
 * @param paceDraws by draw: the person-minutes of the job over their mean; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // draws
public record JobOption(
        Plan plan,
        int crewDays,
        double grossProfitUsd,
        double callbacks,
        double familyUsd,
        double[] grossDrawsUsd,
        double[] paceDraws) {
    public JobOption {
        Check.within("crew days", crewDays, 1, Integer.MAX_VALUE);
    }

    /** By which method, as tables have it. */
    String by() {
        return plan.single().map(method -> method.word()).orElse("mixed");
    }

    /** Adds the days that the job takes to those of each draw. */
    void addDays(double[] days) {
        for (int d = 0; d < days.length; d++) {
            days[d] += crewDays * paceDraws[d];
        }
    }

    /** The same draws about another mean. */
    static double[] about(double mean, double[] draws) {
        double own = Arrays.stream(draws).average().orElse(0);
        return Arrays.stream(draws).map(draw -> draw - own + mean).toArray();
    }
}
