package weatherlap.datasets.shop;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.assumptions.Scalar;

/**
 * What a shop has to work with; what is absent is assumed by the scalars of the same meaning in {@code scenario.toml}.
 *
 * @param crews at work at the same time, 1 to 100
 * @param weeks of work in a year, 1 to 53
 * @param daysAWeek working days, above 0 to 7
 * @param jobsWaiting houses, 1 to 2,000
 */
public record OwnSeason(
        Optional<Integer> crews, OptionalDouble weeks, OptionalDouble daysAWeek, Optional<Integer> jobsWaiting) {
    static final OwnSeason UNKNOWN =
            new OwnSeason(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** What is known of it, as scalars of a scenario. */
    public Map<Scalar, Double> scalars() {
        Map<Scalar, Double> known = new EnumMap<>(Scalar.class);
        crews.ifPresent(n -> known.put(Scalar.CREWS, (double) n));
        weeks.ifPresent(n -> known.put(Scalar.SEASON_WEEKS, n));
        daysAWeek.ifPresent(n -> known.put(Scalar.SEASON_DAYS_PER_WEEK, n));
        jobsWaiting.ifPresent(n -> known.put(Scalar.JOBS_WAITING, (double) n));
        return known;
    }
}
