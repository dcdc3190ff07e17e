package weatherlap.analysis.season;

import java.util.OptionalDouble;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * What a shop has to work with.
 *
 * <pre>
 *   crew days = ⌊crews · weeks · days a week · (1 − share that rain takes)⌋
 * </pre>
 *
 * <p>The share is that of the year, whichever weeks are worked. The days of all crews are one pool: that each of them ends with whole
 * houses is left out.
 *
 * @param rainShare of working days that rain takes, 0 to 1; empty: not known, and none is taken off
 * @param jobs houses that wait
 */
public record Season(int crews, double weeks, double daysPerWeek, OptionalDouble rainShare, int jobs) {
    public Season {
        Check.within("crews", crews, 1, 1000);
        Check.notNegative("weeks", weeks);
        Check.notNegative("days a week", daysPerWeek);
        rainShare.ifPresent(share -> Check.fraction("share of days that rain takes", share));
        Check.within("jobs", jobs, 1, 1_000_000);
    }

    /** @param rainShare empty where the weather is not that of the houses */
    public static Season of(Scenario scenario, OptionalDouble rainShare) {
        return new Season(
                scenario.whole(Scalar.CREWS),
                scenario.value(Scalar.SEASON_WEEKS),
                scenario.value(Scalar.SEASON_DAYS_PER_WEEK),
                rainShare,
                scenario.whole(Scalar.JOBS_WAITING));
    }

    /** Dry working days of all crews together. */
    public int crewDays() {
        double dry = crews * weeks * daysPerWeek * (1 - rainShare.orElse(0));
        return (int) Math.floor(dry + 1e-9);
    }

    Season withOneMoreCrew() {
        return new Season(crews + 1, weeks, daysPerWeek, rainShare, jobs);
    }
}
