package weatherlap.analysis.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobWork;

/**
 * Steps that the shop timed. Minutes of step s in job j, for one unit of its driver, are β_s (1 + u_j + e_js): u is shared by the steps
 * of a job, so the means of two steps that were timed in the same jobs err together:
 *
 * <pre>
 * cov(z̄_s, z̄_t) = β_s β_t (s_u² |J_s ∩ J_t| / (k_s k_t) + [s = t] s_e² / k_s)
 * </pre>
 *
 * <p>s_u² is the variance over jobs of the mean of z_js / z̄_s, s_e² that within jobs, one for all steps; both with a few jobs' worth of
 * the scenario's spreads. β stands at its estimate and not at z̄ in the covariance: errors that are shared and scaled by what was observed
 * would draw the estimate down.
 *
 * @see "Peelle's pertinent puzzle: Chiba, Smith 1991, Argonne National Laboratory ANL/NDM-121; from memory"
 */
final class TimedSteps {
    /** A step is never known better than to this share by one timing. */
    private static final double LEAST_SPREAD = 0.02;

    private static final int ROUNDS = 5;

    /** Steps that were timed at least once, as columns. */
    private final List<Integer> columns = new ArrayList<>();

    private final List<double[]> minutes = new ArrayList<>();
    private final double[] means;
    private final double believedJob;
    private final double believedStep;
    private final double degrees;
    private final long methods;

    private TimedSteps(JobTable table, RateRegression.NoisePrior job, double stepSpread) {
        for (int s = 0; s < table.steps().size(); s++) {
            double[] timed = table.timed(table.steps().get(s));
            if (Arrays.stream(timed).anyMatch(z -> z > 0)) {
                columns.add(s);
                minutes.add(timed);
            }
        }
        means = minutes.stream().mapToDouble(TimedSteps::mean).toArray();
        believedJob = job.noise() * job.noise();
        believedStep = stepSpread * stepSpread;
        degrees = job.degrees();
        methods = table.works().stream()
                .map(JobWork::job)
                .filter(record -> !record.stepMinutes().isEmpty())
                .map(JobRecord::method)
                .distinct()
                .count();
    }

    /**
     * What is believed once the timed steps are seen.
     *
     * @param columns steps that were timed
     * @param degrees of freedom of the spread from job to job, as far as it is known from them
     */
    record Informed(RatePrior prior, List<Integer> columns, double degrees) {}

    static Informed inform(RatePrior prior, JobTable table, RateRegression.NoisePrior job, double stepSpread) {
        TimedSteps timed = new TimedSteps(table, job, stepSpread);
        return timed.columns.isEmpty()
                ? new Informed(prior, List.of(), 0)
                : new Informed(timed.informed(prior), List.copyOf(timed.columns), timed.jobDegrees());
    }

    private RatePrior informed(RatePrior prior) {
        RatePrior informed = prior;
        for (int round = 0; round < ROUNDS; round++) {
            RealVector rates = informed.mean();
            double[] scale = columns.stream()
                    .mapToDouble(c -> Math.max(
                            rates.getEntry(c), LEAST_SPREAD * prior.mean().getEntry(c)))
                    .toArray();
            informed = informed(prior, scale);
        }
        return informed;
    }

    private RatePrior informed(RatePrior prior, double[] scale) {
        RealMatrix whitener = MatrixUtils.inverse(new CholeskyDecomposition(covariance(scale)).getL());
        RealMatrix picked =
                MatrixUtils.createRealMatrix(columns.size(), prior.mean().getDimension());
        for (int row = 0; row < columns.size(); row++) {
            picked.setEntry(row, columns.get(row), 1);
        }
        RealVector seen = new ArrayRealVector(means);
        return prior.with(whitener.multiply(picked), whitener.operate(seen));
    }

    private RealMatrix covariance(double[] scale) {
        double job = jobVariance();
        double step = stepVariance();
        int size = columns.size();
        RealMatrix covariance = MatrixUtils.createRealMatrix(size, size);
        for (int s = 0; s < size; s++) {
            for (int t = 0; t < size; t++) {
                double shared = job * together(s, t) / (count(s) * count(t));
                double own = s == t ? step / count(s) : 0;
                covariance.setEntry(s, t, scale[s] * scale[t] * (shared + own));
            }
        }
        return covariance;
    }

    private double jobVariance() {
        double squares = degrees * believedJob;
        for (int j = 0; j < minutes.get(0).length; j++) {
            double[] ratios = ratios(j);
            squares += ratios.length > 1 ? Math.pow(StatUtils.mean(ratios) - 1, 2) : 0;
        }
        return squares / jobDegrees();
    }

    /** The jobs of each method have a mean of their own to vary about: most of their steps are timed in no others. */
    private double jobDegrees() {
        long known = IntStream.range(0, minutes.get(0).length)
                .filter(j -> ratios(j).length > 1)
                .count();
        return Math.max(1, degrees + known - Math.min(known, methods));
    }

    /** Pooled over the steps: what is left of z_js / z̄_s when the mean of its job is taken off. */
    private double stepVariance() {
        double squares = degrees * believedStep;
        double known = degrees - columns.size() + 1;
        for (int j = 0; j < minutes.get(0).length; j++) {
            double[] ratios = ratios(j);
            if (ratios.length > 1) {
                squares += StatUtils.variance(ratios) * (ratios.length - 1);
                known += ratios.length - 1;
            }
        }
        return Math.max(squares / Math.max(known, 1), LEAST_SPREAD * LEAST_SPREAD);
    }

    private double[] ratios(int job) {
        double[] ratios = new double[columns.size()];
        int count = 0;
        for (int s = 0; s < columns.size(); s++) {
            if (!Double.isNaN(minutes.get(s)[job])) {
                ratios[count++] = minutes.get(s)[job] / means[s];
            }
        }
        return Arrays.copyOf(ratios, count);
    }

    private double count(int step) {
        return Arrays.stream(minutes.get(step)).filter(z -> !Double.isNaN(z)).count();
    }

    private double together(int step, int other) {
        int both = 0;
        for (int j = 0; j < minutes.get(step).length; j++) {
            both += Double.isNaN(minutes.get(step)[j] + minutes.get(other)[j]) ? 0 : 1;
        }
        return both;
    }

    private static double mean(double[] timed) {
        return Arrays.stream(timed).filter(z -> !Double.isNaN(z)).average().orElseThrow();
    }
}
