package weatherlap.analysis.season;

import java.util.OptionalDouble;

/**
 * One way to choose in one season.
 *
 * @param when what is assumed otherwise than set, in words
 * @param oneMoreCrewUsd what its mean gross profit gains by one more crew, before that crew's overhead
 * @param dayPriceUsd price of a crew day; of the best mix alone
 */
public record SeasonRow(
        String when, Way way, Season season, SeasonOutcome outcome, double oneMoreCrewUsd, OptionalDouble dayPriceUsd) {
    /** Houses done on mean days by a method, or by a plan of several. */
    public double done(String by) {
        return outcome.byMethod().getOrDefault(by, 0.0);
    }

    /** Houses that wait and are not done. */
    public double left() {
        return season.jobs()
                - outcome.byMethod().values().stream().mapToDouble(n -> n).sum();
    }
}
