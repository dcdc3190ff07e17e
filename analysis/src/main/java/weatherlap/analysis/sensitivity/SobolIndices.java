package weatherlap.analysis.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.sim.Check;
import weatherlap.sim.random.Streams;

/**
 * Sobol' indices of one outcome.
 *
 * <p>With A and B two halves of a shifted Sobol' sequence in twice the dimensions, and A_u being A with the columns of u taken from B:
 *
 * <pre>
 *   S_u = (mean(y_B y_Au) − m²) / (mean((y_B² + y_Au²)/2) − m²),  m = mean((y_B + y_Au)/2)     Janon et al. 2014, eq. 6
 *   T_u = mean((y_A − y_Au)²)/2 / V,  V the variance over A and B together                     Jansen 1999
 * </pre>
 *
 * Numerators and denominators are averaged over independent shifts before they are divided; the error is the standard error of that
 * ratio over the shifts, to first order.
 *
 * @param mean of the outcome
 * @param variance of the outcome
 * @param indices in the order of the groups
 * @see "Janon, Klein, Lagnoux, Nodet, Prieur 2014, ESAIM: P&S 18, 342-364; Jansen 1999, Comput. Phys. Commun. 117, 35-43; Saltelli
 *     et al. 2010, Comput. Phys. Commun. 181, 259-270"
 */
public record SobolIndices(double mean, double variance, List<Index> indices) {
    public SobolIndices {
        indices = List.copyOf(indices);
    }

    /**
     * Indices of one group, fractions of the variance.
     *
     * @param firstOrderError one standard error
     * @param totalError likewise
     */
    public record Index(String group, double firstOrder, double firstOrderError, double total, double totalError) {}

    /**
     * How much to run: points × (groups + 2) × replicates evaluations.
     *
     * @param points of the sequence, best a power of 2
     * @param replicates independent shifts, 2 or more
     */
    public record Design(int points, int replicates, Streams streams) {
        public Design {
            Check.within("points", points, 2, 1 << 24);
            Check.within("replicates", replicates, 2, 1000);
        }
    }

    /**
     * Estimates the indices of every outcome of a model.
     *
     * @param factors columns of the model's points, at most 500
     */
    public static List<SobolIndices> estimate(CubeModel model, int factors, List<FactorGroup> groups, Design design) {
        return estimateEach(shift -> model, factors, groups, design);
    }

    /**
     * The same where every shift has a model of its own, such as one of other houses: what differs from one to the next is in the error.
     *
     * @param models by position of the shift, from 0
     */
    public static List<SobolIndices> estimateEach(
            IntFunction<CubeModel> models, int factors, List<FactorGroup> groups, Design design) {
        Check.within("factors", factors, 1, ShiftedSobol.MOST_DIMENSIONS / 2);
        List<Replicate> replicates = new ArrayList<>();
        for (int r = 0; r < design.replicates(); r++) {
            replicates.add(Replicate.of(models.apply(r), factors, groups, design, r));
        }
        List<SobolIndices> outcomes = new ArrayList<>();
        for (int o = 0; o < replicates.get(0).mean().length; o++) {
            outcomes.add(combine(groups, replicates, o));
        }
        return outcomes;
    }

    /** An estimate that sampling pushed out of 0 to 1, where every share lies. */
    private static double share(double estimate) {
        return Math.max(0, Math.min(1, estimate));
    }

    private static SobolIndices combine(List<FactorGroup> groups, List<Replicate> replicates, int outcome) {
        List<Index> indices = new ArrayList<>();
        double[] variances =
                replicates.stream().mapToDouble(r -> r.variance()[outcome]).toArray();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            Ratio first = Ratio.of(
                    replicates.stream()
                            .mapToDouble(r -> r.shared()[outcome][group])
                            .toArray(),
                    replicates.stream()
                            .mapToDouble(r -> r.pairVariance()[outcome][group])
                            .toArray());
            Ratio total = Ratio.of(
                    replicates.stream()
                            .mapToDouble(r -> r.halfSquare()[outcome][group])
                            .toArray(),
                    variances);
            indices.add(new Index(
                    groups.get(g).name(), share(first.value()), first.error(), share(total.value()), total.error()));
        }
        double mean = replicates.stream()
                .mapToDouble(r -> r.mean()[outcome])
                .average()
                .orElseThrow();
        return new SobolIndices(mean, StatUtils.mean(variances), indices);
    }
}
