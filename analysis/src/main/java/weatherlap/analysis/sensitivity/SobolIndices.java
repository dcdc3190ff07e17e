package weatherlap.analysis.sensitivity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import weatherlap.sim.Check;
import weatherlap.sim.random.Streams;

/**
 * Sobol' indices of one outcome.
 *
 * <p>With A and B two halves of a shifted Sobol' sequence in twice the dimensions, and A_u being A with the columns of u taken from B:
 *
 * <pre>
 *   V   = mean (y_A − y_B)² / 2
 *   S_u = 1 − mean (y_B − y_Au)² / 2V
 *   T_u = mean (y_A − y_Au)² / 2V                                      Jansen 1999
 * </pre>
 *
 * No mean of the outcome enters, so that none has to be estimated; the share of a group that does nothing is 0, and that of all factors
 * 1, to the last digit. Numerators and denominators are averaged over independent shifts before they are divided; the error is the
 * standard error of that ratio over the shifts, to first order. Of models that differ from shift to shift the shares are those of the
 * mean variance.
 *
 * @param mean of the outcome
 * @param variance of the outcome
 * @param indices in the order of the groups
 * @param together share that no group has by itself: 1 − Σ S_u over groups that have no factor in common, each taken unless an earlier
 *     one overlaps it
 * @see "Jansen 1999, Comput. Phys. Commun. 117, 35-43; Saltelli et al. 2010, Comput. Phys. Commun. 181, 259-270"
 */
public record SobolIndices(double mean, double variance, List<Index> indices, Share together) {
    public SobolIndices {
        indices = List.copyOf(indices);
    }

    /**
     * A fraction of the variance, 0 to 1.
     *
     * @param error one standard error, or as far as the estimate fell outside 0 to 1 where that is more
     */
    public record Share(double value, double error) {
        private static Share of(Ratio ratio) {
            double value = Math.max(0, Math.min(1, ratio.value()));
            return new Share(value, Math.max(ratio.error(), Math.abs(ratio.value() - value)));
        }
    }

    /**
     * Indices of one group.
     *
     * @param firstOrder what it has by itself
     * @param total what it has with all others
     */
    public record Index(String group, Share firstOrder, Share total) {}

    /**
     * How much to run: points × (groups + 2) × replicates evaluations.
     *
     * @param points of the sequence, best a power of 2
     * @param replicates independent shifts, 2 or more
     */
    public record Design(int points, int replicates, Streams streams) {
        public Design {
            Check.within("points", points, 2, 1 << 24);
            Check.within("replicates", replicates, 2, 10_000);
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
     * The same where every shift has a model of its own, such as one of another house: what differs from one to the next is in the
     * error. Shifts are worked out side by side.
     *
     * @param models by position of the shift, from 0
     */
    public static List<SobolIndices> estimateEach(
            IntFunction<CubeModel> models, int factors, List<FactorGroup> groups, Design design) {
        Check.within("factors", factors, 1, ShiftedSobol.MOST_DIMENSIONS / 2);
        List<Replicate> replicates = IntStream.range(0, design.replicates())
                .parallel()
                .mapToObj(r -> Replicate.of(models.apply(r), factors, groups, design, r))
                .toList();
        List<SobolIndices> outcomes = new ArrayList<>();
        for (int o = 0; o < replicates.get(0).mean().length; o++) {
            outcomes.add(combine(groups, replicates, o));
        }
        return outcomes;
    }

    private static SobolIndices combine(List<FactorGroup> groups, List<Replicate> replicates, int o) {
        double[] all = each(replicates, r -> r.all()[o]);
        List<Index> indices = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            indices.add(new Index(
                    groups.get(g).name(),
                    Share.of(Ratio.of(each(replicates, r -> r.shared()[o][group]), all)),
                    Share.of(Ratio.of(each(replicates, r -> r.moved()[o][group]), all))));
        }
        int[] apart = withoutOverlap(groups);
        double[] rest = each(
                replicates,
                r -> r.all()[o]
                        - IntStream.of(apart).mapToDouble(g -> r.shared()[o][g]).sum());
        return new SobolIndices(
                mean(each(replicates, r -> r.mean()[o])), mean(all), indices, Share.of(Ratio.of(rest, all)));
    }

    private static int[] withoutOverlap(List<FactorGroup> groups) {
        Set<Integer> taken = new HashSet<>();
        return IntStream.range(0, groups.size())
                .filter(g -> groups.get(g).factors().stream().noneMatch(taken::contains)
                        && taken.addAll(groups.get(g).factors()))
                .toArray();
    }

    private static double[] each(List<Replicate> replicates, ToDoubleFunction<Replicate> moment) {
        return replicates.stream().mapToDouble(moment).toArray();
    }

    private static double mean(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .average()
                .orElseThrow();
    }
}
