package weatherlap.analysis.sensitivity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Check;

/**
 * What an outcome becomes when one group of factors goes low, and high, while every other factor stays at its median. Interactions do
 * not show.
 *
 * @param low outcome with the group low
 * @param high outcome with the group high
 */
public record Swing(String group, double low, double high) {
    /** How far the outcome moves, whichever way. */
    public double width() {
        return Math.abs(high - low);
    }

    /**
     * The swings of every outcome, in the order of the groups.
     *
     * @param tail share of the distribution below the low point and above the high one, such as 0.1; the factors of a group move
     *     together
     */
    public static List<List<Swing>> of(CubeModel model, int factors, List<FactorGroup> groups, double tail) {
        Check.within("tail", tail, 0, 0.5);
        double[][] points = new double[2 * groups.size()][factors];
        for (int g = 0; g < groups.size(); g++) {
            Arrays.fill(points[2 * g], 0.5);
            Arrays.fill(points[2 * g + 1], 0.5);
            for (int factor : groups.get(g).factors()) {
                points[2 * g][factor] = tail;
                points[2 * g + 1][factor] = 1 - tail;
            }
        }
        List<List<Swing>> outcomes = new ArrayList<>();
        for (double[] outcome : model.outcomes(points)) {
            List<Swing> swings = new ArrayList<>();
            for (int g = 0; g < groups.size(); g++) {
                swings.add(new Swing(groups.get(g).name(), outcome[2 * g], outcome[2 * g + 1]));
            }
            outcomes.add(swings);
        }
        return outcomes;
    }
}
