package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.regression.Bend;
import weatherlap.analysis.regression.RatePrior;
import weatherlap.analysis.regression.RateRegression;

/**
 * Steps that the shop timed. Minutes of step s in job j, for one unit of its driver, are β_s g_j (1 + u_j + e_js) with g the pace of its
 * crew and day: u is shared by the steps of a job. About a guess each is a linear equation over what the guess foresees of it; the k
 * equations of a job have the covariance
 *
 * <pre>s_e² (I + s_u²/s_e² 11ᵀ),   of which the inverse is   (I − s_u² / (s_e² + k s_u²) 11ᵀ) / s_e²</pre>
 *
 * <p>s_u² is the variance over jobs of the mean of what they took over what is foreseen, s_e² that within jobs, one for all steps; both
 * with a few jobs' worth of the scenario's spreads. The guess and not the timing stands below the line: errors that are shared and
 * scaled by what was observed would draw the estimate down.
 *
 * @see "Peelle's pertinent puzzle: Chiba, Smith 1991, Argonne National Laboratory ANL/NDM-121; from memory"
 */
final class TimedSteps {
    /** A step is never known better than to this share by one timing. */
    private static final double LEAST_SPREAD = 0.02;

    private final Unknowns unknowns;
    private final List<Job> jobs;
    private final double[] least;
    private final double halfLife;
    private final double believedJob;
    private final double believedStep;
    private final double degrees;
    private final long methods;
    private final Set<Integer> columns = new TreeSet<>();

    /**
     * A job some of whose steps were timed.
     *
     * @param steps their places in the table
     * @param minutes they took for one unit of their drivers
     */
    private record Job(JobLine line, int[] steps, double[] minutes) {
        static Job of(JobLine line) {
            int[] timed = IntStream.range(0, line.steps().length)
                    .filter(line::wasTimed)
                    .toArray();
            return new Job(
                    line,
                    Arrays.stream(timed).map(i -> line.steps()[i]).toArray(),
                    Arrays.stream(timed).mapToDouble(i -> line.timed()[i]).toArray());
        }
    }

    /** @param job what is believed of the spread from job to job */
    TimedSteps(
            JobTable table,
            Unknowns unknowns,
            List<JobLine> lines,
            RateRegression.NoisePrior job,
            double stepSpread,
            double halfLife) {
        this.unknowns = unknowns;
        jobs = lines.stream().filter(line -> line.timings() > 0).map(Job::of).toList();
        least = table.means().mapMultiply(LEAST_SPREAD).toArray();
        this.halfLife = halfLife;
        believedJob = job.noise() * job.noise();
        believedStep = stepSpread * stepSpread;
        degrees = job.degrees();
        methods =
                jobs.stream().map(each -> each.line().job().method()).distinct().count();
        jobs.forEach(each -> Arrays.stream(each.steps()).forEach(columns::add));
    }

    /** Steps that were timed at least once, as columns. */
    Set<Integer> columns() {
        return columns;
    }

    /** What is believed once the timed steps are seen, about a guess. */
    RatePrior informed(RatePrior prior, double[] guess) {
        if (jobs.isEmpty()) {
            return prior;
        }
        List<double[]> ratios = jobs.stream().map(job -> ratios(job, guess)).toList();
        double jobVariance = jobVariance(ratios);
        double stepVariance = stepVariance(ratios);
        double[][] products = new double[unknowns.count()][unknowns.count()];
        double[] right = new double[unknowns.count()];
        for (int j = 0; j < jobs.size(); j++) {
            add(jobs.get(j), ratios.get(j), guess, jobVariance, stepVariance, products, right);
        }
        return prior.with(MatrixUtils.createRealMatrix(products), new ArrayRealVector(right, false));
    }

    /** What each job bends, at a guess that the equations have settled on. */
    void addTo(Bend bend, double[] guess) {
        List<double[]> ratios = jobs.stream().map(job -> ratios(job, guess)).toList();
        double jobVariance = jobVariance(ratios);
        double stepVariance = stepVariance(ratios);
        for (Job job : jobs) {
            JobLine line = job.line();
            int k = job.steps().length;
            double[] perUnit = new double[k];
            for (int i = 0; i < k; i++) {
                perUnit[i] = 1 / rate(job.steps()[i], guess);
            }
            bend.addTimed(
                    unknowns.columns(line, job.steps(), k),
                    unknowns.weights(line, perUnit, k),
                    k,
                    Totals.recency(line, halfLife) / stepVariance,
                    jobVariance / (stepVariance + k * jobVariance));
        }
    }

    private void add(
            Job job,
            double[] ratios,
            double[] guess,
            double jobVariance,
            double stepVariance,
            double[][] products,
            double[] right) {
        JobLine line = job.line();
        int k = job.steps().length;
        double pull = Totals.recency(line, halfLife) / stepVariance;
        double shared = jobVariance / (stepVariance + k * jobVariance);
        double pace = unknowns.pace(line, guess);
        int[] columns = unknowns.columns(line, job.steps(), k);
        double[] perUnit = new double[k];
        for (int i = 0; i < k; i++) {
            perUnit[i] = 1 / rate(job.steps()[i], guess);
        }
        double[] own = unknowns.weights(line, perUnit, k);
        double[] sums = own.clone();
        double observed = Arrays.stream(ratios).sum() + k * pace;
        for (int c = k; c < columns.length; c++) {
            sums[c] *= k;
        }
        for (int r = 0; r < columns.length; r++) {
            double both = r < k ? own[r] * (ratios[r] + pace) : own[r] * observed;
            right[columns[r]] += pull * (both - shared * sums[r] * observed);
            double[] row = products[columns[r]];
            for (int c = 0; c < columns.length; c++) {
                // steps meet the pace once, themselves once, and other steps never
                double met =
                        r < k && c < k ? (r == c ? own[r] * own[c] : 0) : own[r] * own[c] * (r < k || c < k ? 1 : k);
                row[columns[c]] += pull * (met - shared * sums[r] * sums[c]);
            }
        }
    }

    private double rate(int step, double[] guess) {
        return Math.max(guess[step], least[step]);
    }

    private double[] ratios(Job job, double[] guess) {
        double pace = Math.exp(unknowns.pace(job.line(), guess));
        double[] ratios = new double[job.steps().length];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = job.minutes()[i] / (pace * rate(job.steps()[i], guess));
        }
        return ratios;
    }

    private double jobVariance(List<double[]> ratios) {
        double squares = degrees * believedJob;
        for (double[] job : ratios) {
            squares += job.length > 1 ? Math.pow(StatUtils.mean(job) - 1, 2) : 0;
        }
        return squares / jobDegrees();
    }

    /** Of the spread from job to job. The jobs of each method have a mean of their own to vary about, as most of their steps are in no others. */
    double jobDegrees() {
        long known = jobs.stream().filter(job -> job.steps().length > 1).count();
        return Math.max(1, degrees + known - Math.min(known, methods));
    }

    /** Pooled over the steps: what is left when the mean of its job is taken off. */
    private double stepVariance(List<double[]> ratios) {
        double squares = degrees * believedStep;
        double known = degrees - columns.size() + 1;
        for (double[] job : ratios) {
            if (job.length > 1) {
                squares += StatUtils.variance(job) * (job.length - 1);
                known += job.length - 1;
            }
        }
        return Math.max(squares / Math.max(known, 1), LEAST_SPREAD * LEAST_SPREAD);
    }
}
