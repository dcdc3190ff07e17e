package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import weatherlap.sim.random.Normal;

/**
 * Levels of the fault groups. Nobody notes which lap a call came from; method, house and year of a call tell by how much more likely it
 * came from one group than from another:
 *
 * <pre>
 *   calls of job i come at a rate of Σ_g κ_g r_ig(t) a year,   κ_g ~ Gamma(c, c/κ),   κ ~ Gamma(a, a)
 *   given κ_g, a call at t came from group g with probability in proportion to κ_g r_ig(t)
 *   given that, κ_g ~ Gamma(c + n_g, c/κ + E_g)
 * </pre>
 *
 * drawn in turn (Gibbs sampling, from a fixed stream), κ on equal steps of its logarithm. The lag is known. Groups of which the records
 * cannot tell stay together: they move with κ.
 *
 * @see "Gelfand, Smith 1990, Journal of the American Statistical Association 85(410) (sampling the pumps of Gaver and O'Muircheartaigh)"
 */
public final class GroupFit {
    private static final int FIRST = 300;
    private static final int KEPT = 3000;
    private static final int STEPS = 80;
    private static final int GROUPS = FaultGroup.values().length;

    private final double[][] drawn = new double[GROUPS][KEPT];
    private final double[] expected;
    private final double priorDeviation;

    /**
     * One job.
     *
     * @param exposure calls that the model expects of all its openings, by group
     * @param followedYears since the work was done, 0 or more
     * @param callYears when each call came, within the years followed
     */
    public record Job(Map<FaultGroup, LaggedExposure> exposure, double followedYears, List<Double> callYears) {
        public Job {
            exposure = new EnumMap<>(exposure);
            callYears = List.copyOf(callYears);
        }

        private double[] rates(double years, double lagYears) {
            return byGroup(one -> one.reportedPerYear(years, lagYears));
        }

        private double[] expected(double lagYears) {
            return byGroup(one -> one.reported(followedYears, lagYears));
        }

        private double[] byGroup(ToDoubleFunction<LaggedExposure> of) {
            double[] groups = new double[GROUPS];
            exposure.forEach((group, one) -> groups[group.ordinal()] = of.applyAsDouble(one));
            return groups;
        }
    }

    private GroupFit(double[] expected, double priorDeviation) {
        this.expected = expected;
        this.priorDeviation = priorDeviation;
    }

    /**
     * @param prior of the level, its lags apart
     * @param lagYears mean time from damage to call, 0 or more
     * @param random the same stream gives the same fit
     */
    public static GroupFit of(List<Job> jobs, LevelFit.Prior prior, double lagYears, UniformRandomProvider random) {
        double[] expected = new double[GROUPS];
        for (Job job : jobs) {
            double[] own = job.expected(lagYears);
            Arrays.setAll(expected, g -> expected[g] + own[g]);
        }
        double[][] calls = jobs.stream()
                .flatMap(job -> job.callYears().stream().map(t -> job.rates(t, lagYears)))
                .toArray(double[][]::new);
        GroupFit fit = new GroupFit(expected, Math.sqrt(Math.log1p(prior.shared()) + Math.log1p(prior.between())));
        fit.draw(calls, 1 / prior.shared(), 1 / prior.between(), random);
        return fit;
    }

    private void draw(double[][] calls, double a, double c, UniformRandomProvider random) {
        double[] levels = new double[GROUPS];
        Arrays.fill(levels, 1);
        double total = Arrays.stream(expected).sum();
        SharedLevel shared = new SharedLevel(a, c, (a + calls.length) / (a + total));
        for (int i = -FIRST; i < KEPT; i++) {
            int[] counts = allot(calls, levels, random);
            double kappa = shared.given(levels, random);
            for (int g = 0; g < GROUPS; g++) {
                levels[g] = gamma(random, c + counts[g], c / kappa + expected[g]);
                if (i >= 0) {
                    drawn[g][i] = levels[g];
                }
            }
        }
    }

    private int[] allot(double[][] calls, double[] levels, UniformRandomProvider random) {
        int[] counts = new int[GROUPS];
        for (double[] rates : calls) {
            double sum = 0;
            for (int g = 0; g < GROUPS; g++) {
                sum += levels[g] * rates[g];
            }
            double at = random.nextDouble() * sum;
            int g = 0;
            while (g < GROUPS - 1 && at >= levels[g] * rates[g]) {
                at -= levels[g] * rates[g];
                g++;
            }
            counts[g]++;
        }
        return counts;
    }

    private static double gamma(UniformRandomProvider random, double shape, double rate) {
        double drawn = AhrensDieterMarsagliaTsangGammaSampler.of(random, shape, 1 / rate)
                .sample();
        return Math.max(Double.MIN_NORMAL, drawn);
    }

    /** κ given the levels: a table of its logarithm, drawn from by its sums. */
    private static final class SharedLevel {
        private final double c;
        private final double[] kappa = new double[STEPS + 1];
        private final double[] fixed = new double[STEPS + 1];
        private final double[] sums = new double[STEPS + 1];

        SharedLevel(double a, double c, double seen) {
            this.c = c;
            double reach = 6 * Math.sqrt(Math.log1p(1 / a));
            double low = Math.min(0, Math.log(seen)) - reach;
            double step = (Math.max(0, Math.log(seen)) + reach - low) / STEPS;
            for (int k = 0; k <= STEPS; k++) {
                kappa[k] = Math.exp(low + k * step);
                fixed[k] = (a - GROUPS * c) * (low + k * step) - a * kappa[k];
            }
        }

        double given(double[] levels, UniformRandomProvider random) {
            double sum = Arrays.stream(levels).sum();
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k <= STEPS; k++) {
                sums[k] = fixed[k] - c * sum / kappa[k];
                most = Math.max(most, sums[k]);
            }
            double total = 0;
            for (int k = 0; k <= STEPS; k++) {
                total += Math.exp(sums[k] - most);
                sums[k] = total;
            }
            int found = Arrays.binarySearch(sums, random.nextDouble() * total);
            return kappa[Math.min(STEPS, found < 0 ? -found - 1 : found)];
        }
    }

    /** κ_g: mean and the quantiles 0.05 and 0.95. */
    public LevelFit.Level level(FaultGroup group) {
        double[] sorted = drawn[group.ordinal()].clone();
        Arrays.sort(sorted);
        double mean = Arrays.stream(sorted).average().orElseThrow();
        return new LevelFit.Level(mean, sorted[(int) (0.05 * KEPT)], sorted[(int) (0.95 * KEPT)]);
    }

    /** Probability that κ_g is at most so much. */
    public double probabilityBelow(FaultGroup group, double level) {
        return (double) Arrays.stream(drawn[group.ordinal()])
                        .filter(d -> d <= level)
                        .count()
                / KEPT;
    }

    /** Calls that the model expected of a group, before any fit. */
    public double expected(FaultGroup group) {
        return expected[group.ordinal()];
    }

    /** Whether the records tell of a group: its interval is less than half as wide, as a ratio, as before them (judgement). */
    public boolean tells(FaultGroup group) {
        LevelFit.Level level = level(group);
        return Math.log(level.high() / level.low()) < 0.5 * 2 * Normal.NINETY_PERCENT * priorDeviation;
    }
}
