package weatherlap.datasets.shop;

import java.util.Optional;
import java.util.OptionalDouble;

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
}
