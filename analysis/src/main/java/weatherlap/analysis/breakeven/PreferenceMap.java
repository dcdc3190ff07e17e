package weatherlap.analysis.breakeven;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * The preferred method over two assumptions at once.
 *
 * @param contrast the two methods
 * @param acrossName assumption along a row
 * @param across its values, rising
 * @param upName assumption from row to row
 * @param up its values, rising
 * @param differenceUsd first less second, mean over the draws, one row a value of {@code up}
 * @param firstCheaper share of the draws in which the first costs less, likewise
 */
public record PreferenceMap(
        Contrast contrast,
        String acrossName,
        List<Double> across,
        String upName,
        List<Double> up,
        List<List<Double>> differenceUsd,
        List<List<Double>> firstCheaper) {
    public PreferenceMap {
        across = List.copyOf(across);
        up = List.copyOf(up);
        differenceUsd = differenceUsd.stream().map(List::copyOf).toList();
        firstCheaper = firstCheaper.stream().map(List::copyOf).toList();
    }

    /** The difference as a function of both, with the same draws everywhere. */
    @FunctionalInterface
    public interface DifferenceAtBoth {
        /** By draw, USD. */
        double[] draws(double across, double up);
    }

    public static PreferenceMap over(
            Contrast contrast,
            String acrossName,
            List<Double> across,
            String upName,
            List<Double> up,
            DifferenceAtBoth difference) {
        List<List<Double>> means = new ArrayList<>();
        List<List<Double>> shares = new ArrayList<>();
        for (double y : up) {
            List<double[]> row =
                    across.stream().map(x -> difference.draws(x, y)).toList();
            means.add(row.stream()
                    .map(draws -> Arrays.stream(draws).average().orElseThrow())
                    .toList());
            shares.add(row.stream()
                    .map(draws -> Arrays.stream(draws).filter(d -> d < 0).count() / (double) draws.length)
                    .toList());
        }
        return new PreferenceMap(contrast, acrossName, across, upName, up, means, shares);
    }

    /** The method preferred at a cell. */
    public Method preferred(int column, int row) {
        return contrast.cheaper(differenceUsd.get(row).get(column));
    }

    /** Where the preference changes along a row, on straight lines between its values; none: it does not. */
    public List<Double> crossings(int row) {
        List<Double> means = differenceUsd.get(row);
        List<Double> crossings = new ArrayList<>();
        for (int i = 1; i < across.size(); i++) {
            if (preferred(i, row) != preferred(i - 1, row)) {
                double share = means.get(i - 1) / (means.get(i - 1) - means.get(i));
                crossings.add(across.get(i - 1) + share * (across.get(i) - across.get(i - 1)));
            }
        }
        return crossings;
    }
}
