package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import weatherlap.sim.Check;

/**
 * The level of the leak model fitted to calls: κ_m for each of several groups of jobs (methods), one κ that they share, and the mean lag
 * from damage to call.
 *
 * <p>κ ~ Gamma(a, a), κ_m ~ Gamma(c, c/κ), both of mean 1 before any record; calls of a group come as a Poisson process of κ_m r_i(t) a
 * year at job i, so that the times of the calls tell of the lag. Lag and κ lie on a grid: the lag on the values given, each as likely as
 * the next, κ on equal steps of its logarithm over six standard deviations of the prior, or further where the calls lead there.
 */
public final class LevelFit {
    private static final int STEPS = 120;

    private final GammaPoisson posterior;
    private final List<double[]> state;
    private final List<Group> groups;
    private final Map<Integer, Level> known = new ConcurrentHashMap<>();

    private LevelFit(GammaPoisson posterior, List<double[]> state, List<Group> groups) {
        this.posterior = posterior;
        this.state = state;
        this.groups = groups;
    }

    /**
     * One job.
     *
     * @param exposure calls that the model expects of all its openings
     * @param followedYears since the work was done, 0 or more
     * @param callYears when each call came, within the years followed
     */
    public record Job(LaggedExposure exposure, double followedYears, List<Double> callYears) {
        public Job {
            Check.notNegative("years followed", followedYears);
            callYears = List.copyOf(callYears);
        }
    }

    /** Jobs that share a level. */
    public record Group(List<Job> jobs) {
        public Group {
            jobs = List.copyOf(jobs);
        }

        public int calls() {
            return jobs.stream().mapToInt(job -> job.callYears().size()).sum();
        }

        /** Calls that the model expects to have been reported. */
        public double expected(double lagYears) {
            return jobs.stream()
                    .mapToDouble(job -> job.exposure().reported(job.followedYears(), lagYears))
                    .sum();
        }

        private double logTimes(double lagYears) {
            return jobs.stream()
                    .flatMapToDouble(job -> job.callYears().stream()
                            .mapToDouble(t -> Math.log(
                                    Math.max(Double.MIN_NORMAL, job.exposure().reportedPerYear(t, lagYears)))))
                    .sum();
        }
    }

    /**
     * How far the level may be off before any record.
     *
     * @param shared variance of κ, that is 1/a, above 0
     * @param between variance of κ_m over κ, that is 1/c, above 0
     * @param lagsYears the mean lags that are possible, each as likely as the next, 0 or more; one: it is known
     */
    public record Prior(double shared, double between, List<Double> lagsYears) {
        public Prior {
            Check.positive("variance of the shared level", shared);
            Check.positive("variance between the methods", between);
            lagsYears = List.copyOf(lagsYears);
        }
    }

    /** Fits all groups at once. */
    public static LevelFit of(List<Group> groups, Prior prior) {
        double a = 1 / prior.shared();
        double c = 1 / prior.between();
        double calls = groups.stream().mapToInt(Group::calls).sum();
        List<GammaPoisson.Point> points = new ArrayList<>();
        List<double[]> state = new ArrayList<>();
        for (double lag : prior.lagsYears()) {
            List<Double> exposures = groups.stream().map(g -> g.expected(lag)).toList();
            double logTimes = groups.stream().mapToDouble(g -> g.logTimes(lag)).sum();
            double seen =
                    (a + calls) / (a + exposures.stream().mapToDouble(e -> e).sum());
            double reach = 6 * Math.sqrt(Math.log1p(prior.shared()));
            double low = Math.min(0, Math.log(seen)) - reach;
            double high = Math.max(0, Math.log(seen)) + reach;
            double step = (high - low) / STEPS;
            for (int k = 0; k <= STEPS; k++) {
                double log = low + k * step;
                double kappa = Math.exp(log);
                double weight = a * log - a * kappa + logTimes + Math.log(step);
                points.add(new GammaPoisson.Point(c, c / kappa, weight, exposures));
                state.add(new double[] {kappa, lag});
            }
        }
        List<Integer> counts = groups.stream().map(Group::calls).toList();
        return new LevelFit(GammaPoisson.of(points, counts), state, List.copyOf(groups));
    }

    /** κ_m of a group: mean and the quantiles 0.05 and 0.95, worked out once. */
    public Level level(int group) {
        return known.computeIfAbsent(group, this::worked);
    }

    private Level worked(int group) {
        return new Level(posterior.mean(group), posterior.quantile(group, 0.05), posterior.quantile(group, 0.95));
    }

    /** Probability that κ_m of a group is at most so much. */
    public double probabilityBelow(int group, double level) {
        return posterior.probabilityBelow(group, level);
    }

    /** Posterior density of κ_m of a group. */
    public double density(int group, double level) {
        return posterior.density(group, level);
    }

    /** The κ that the groups share: mean and the quantiles 0.05 and 0.95, to the step of the grid. */
    public Level shared() {
        return weighted(0);
    }

    /** Mean lag from damage to call, years: mean and the quantiles 0.05 and 0.95 of the values that were possible. */
    public Level lagYears() {
        return weighted(1);
    }

    /** Calls that the model expected of a group, before any fit, averaged over the lags as the records leave them. */
    public double expected(int group) {
        return posteriorMean(lag -> groups.get(group).expected(lag));
    }

    private double posteriorMean(DoubleUnaryOperator ofLag) {
        Map<Double, Double> byLag = new TreeMap<>();
        List<Double> weights = posterior.weights();
        for (int p = 0; p < state.size(); p++) {
            byLag.merge(state.get(p)[1], weights.get(p), Double::sum);
        }
        return byLag.entrySet().stream()
                .mapToDouble(e -> e.getValue() * ofLag.applyAsDouble(e.getKey()))
                .sum();
    }

    private Level weighted(int column) {
        List<Double> weights = posterior.weights();
        List<Integer> order = IntStream.range(0, state.size())
                .boxed()
                .sorted(Comparator.comparingDouble(p -> state.get(p)[column]))
                .toList();
        double mean = 0;
        double below = 0;
        double low = Double.NaN;
        double high = Double.NaN;
        for (int p : order) {
            double value = state.get(p)[column];
            mean += weights.get(p) * value;
            below += weights.get(p);
            low = Double.isNaN(low) && below >= 0.05 ? value : low;
            high = Double.isNaN(high) && below >= 0.95 ? value : high;
        }
        return new Level(mean, low, Double.isNaN(high) ? state.get(order.get(order.size() - 1))[column] : high);
    }

    /** A number fitted, with the interval that holds it nine times in ten. */
    public record Level(double mean, double low, double high) {}
}
