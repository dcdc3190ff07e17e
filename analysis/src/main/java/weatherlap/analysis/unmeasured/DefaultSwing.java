package weatherlap.analysis.unmeasured;

import java.util.stream.DoubleStream;
import weatherlap.datasets.shortform.ShortPortfolio.Taken;

/**
 * What one default does to the answer, all others as taken.
 *
 * @param taken the default
 * @param leastUsd what the first method saves over the horizon against the second with the default at one end of its range, mean over the
 *     houses, USD a house; negative where it costs more
 * @param takenUsd as taken, likewise
 * @param mostUsd at the other end, likewise
 * @param changing houses of which the cheaper method is not the same at both ends and as taken
 */
public record DefaultSwing(Taken taken, double leastUsd, double takenUsd, double mostUsd, int changing) {
    /** How far apart the three lie, USD a house. */
    public double usd() {
        return DoubleStream.of(leastUsd, takenUsd, mostUsd).max().orElseThrow()
                - DoubleStream.of(leastUsd, takenUsd, mostUsd).min().orElseThrow();
    }
}
