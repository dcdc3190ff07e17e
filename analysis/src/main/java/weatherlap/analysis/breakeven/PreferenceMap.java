package weatherlap.analysis.breakeven;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weatherlap.sim.assumptions.Method;

/**
 * The preferred method over two assumptions at once.
 *
 * @param acrossName assumption along a row
 * @param across its values, rising
 * @param upName assumption from row to row
 * @param up its values, rising
 * @param differenceUsd full flange less insert, mean over the draws, one row a value of {@code up}
 */
public record PreferenceMap(
        String acrossName, List<Double> across, String upName, List<Double> up, List<List<Double>> differenceUsd) {
    public PreferenceMap {
        across = List.copyOf(across);
        up = List.copyOf(up);
        differenceUsd = differenceUsd.stream().map(List::copyOf).toList();
    }

    /** The difference as a function of both, with the same draws everywhere. */
    @FunctionalInterface
    public interface DifferenceAtBoth {
        /** By draw, USD. */
        double[] draws(double across, double up);
    }

    public static PreferenceMap over(
            String acrossName, List<Double> across, String upName, List<Double> up, DifferenceAtBoth difference) {
        List<List<Double>> rows = new ArrayList<>();
        for (double y : up) {
            rows.add(across.stream()
                    .map(x -> Arrays.stream(difference.draws(x, y)).average().orElseThrow())
                    .toList());
        }
        return new PreferenceMap(acrossName, across, upName, up, rows);
    }

    /** The method preferred at a cell. */
    public Method preferred(int column, int row) {
        return BreakEven.prefers(differenceUsd.get(row).get(column));
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
