package weatherlap.analysis.drivers;

import java.util.List;
import java.util.stream.IntStream;
import weatherlap.analysis.sensitivity.CubeModel;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.random.PertQuantile;

/**
 * The portfolio as a function of the unit cube: one column a factor, its uniform turned into a value by its beta-PERT quantile.
 *
 * @param base assumptions whose ranges are walked
 * @param factors all of them
 */
record RangedModel(Assumptions base, List<Factor> factors, Differences.Model model) implements CubeModel {

    RangedModel part(int position, int parts) {
        return new RangedModel(base, factors, model.part(position, parts));
    }

    /** Mean cost difference and mean risk difference over the houses. */
    @Override
    public double[][] outcomes(double[][] points) {
        double[][] outcomes = new double[Outcome.values().length][points.length];
        Differences[] found = differences(points);
        for (int i = 0; i < points.length; i++) {
            double[] means = found[i].means();
            for (int o = 0; o < means.length; o++) {
                outcomes[o][i] = means[o];
            }
        }
        return outcomes;
    }

    /** House by house at every point; points are worked out side by side. */
    Differences[] differences(double[][] points) {
        return IntStream.range(0, points.length)
                .parallel()
                .mapToObj(i -> model.at(known(points[i])))
                .toArray(Differences[]::new);
    }

    /** The assumptions with every factor known. */
    private Assumptions known(double[] point) {
        Assumptions known = base;
        for (int f = 0; f < point.length; f++) {
            known = factors.get(f).set(known, value(f, point[f]));
        }
        return known;
    }

    double value(int factor, double uniform) {
        return PertQuantile.draws(factors.get(factor).range(), new double[] {uniform})[0];
    }
}
