package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.analysis.regression.Bend;
import weatherlap.analysis.regression.HuberFit;
import weatherlap.analysis.regression.RatePrior;
import weatherlap.analysis.regression.RateRegression;
import weatherlap.analysis.regression.Triangle;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * Fits rates, paces and drift to jobs, by linear equations about the last guess until it settles (Gauss and Newton's way). The spread of
 * the crews is what their paces show, with a few crews' worth of the options' (empirical Bayes by expectation and maximization).
 *
 * @see "Robinson 1991, Statistical Science 6(1) (best linear unbiased prediction: paces shrunk towards one another)"
 */
final class Fitter {
    /** Jobs whose spread is smaller than this are not believed to be. */
    static final double LEAST_SPREAD = 0.01;

    private static final int MOST_ROUNDS = 12;
    private static final int TIMED_ROUNDS = 5;
    /** A rate moves by less than a share of what the tables expect of it. */
    static final double SETTLED = 1e-5;
    /**
     * The same for forecasts of jobs, which vary by a tenth and more. A round left a thirtieth of its move with 12,000 jobs and a seventh
     * with 60, so that the next would move no rate by half a percent.
     */
    static final double SETTLED_TO_FORESEE = 0.03;

    private final CalibrationOptions options;
    private final JobTable table;
    private final Unknowns unknowns;
    private final RateRegression.NoisePrior noisePrior;
    private final double stepSpread;
    private final double halfLife;

    Fitter(Scenario scenario, CalibrationOptions options, JobTable table) {
        this.options = options;
        this.table = table;
        double spread = Math.max(LEAST_SPREAD, scenario.value(Scalar.CREW_SPREAD));
        noisePrior = new RateRegression.NoisePrior(spread, options.noiseDegrees());
        stepSpread = scenario.value(Scalar.OPENING_SPREAD);
        halfLife = scenario.value(Scalar.RECORDS_HALF_LIFE_YEARS);
        unknowns = Unknowns.of(table, halfLife);
    }

    /**
     * A fit and the timed steps that it saw.
     *
     * @param settled where its rounds came to rest, from which those of a fit to nearly the same jobs may start
     */
    record Fitted(PaceFit fit, TimedSteps timed, Guess settled) {}

    /** What a round of the fit goes by. */
    record Guess(double[] unknowns, double noise, double crewSpread) {}

    /** Paces are about the mean of the crews, which the rates are those of: how far it is from other shops' widens the shop's pace. */
    private RatePrior believed(double crewSpread) {
        int crews = unknowns.crews();
        double spread =
                crews == 0 ? options.paceSpread() : Math.hypot(options.paceSpread(), crewSpread / Math.sqrt(crews));
        RatePrior steps = RatePrior.ofSteps(table.means(), table.variances(), spread);
        return unknowns.drifts()
                ? steps.beside(crews, crewSpread, options.driftSpread())
                        .reckoned(table.means().mapMultiply(-unknowns.day()))
                : steps.beside(crews, crewSpread);
    }

    private TimedSteps timed(List<Integer> jobs) {
        return new TimedSteps(
                table, unknowns, jobs.stream().map(table.lines()::get).toList(), noisePrior, stepSpread, halfLife);
    }

    /** From what is believed before any job. */
    Guess believed() {
        return new Guess(believed(options.crewSpread()).mean().toArray(), noisePrior.noise(), options.crewSpread());
    }

    /**
     * @param totals jobs whose totals are fitted
     * @param timed jobs whose timed steps are
     * @param from first guess; where the rounds come to rest does not hang on it
     * @param settled change of the last round, as a share
     */
    Fitted fit(List<Integer> totals, List<Integer> timed, Guess from, double settled) {
        TimedSteps seen = timed(timed);
        Totals equations = new Totals(table, unknowns, totals, halfLife);
        Guess guess = from;
        RateRegression fit = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            RatePrior prior = seen.informed(believed(guess.crewSpread()), guess.unknowns());
            Triangle triangle = equations.triangle(guess.unknowns(), guess.noise());
            fit = RateRegression.fit(triangle, Optional.of(prior), noisePrior, unknowns.steps());
            double[] next = fit.coefficients().toArray();
            double moved = moved(guess.unknowns(), next);
            guess = new Guess(next, fit.noise(), crewSpread(fit));
            if (moved < settled) {
                break;
            }
        }
        double[] means = means(fit, equations, seen);
        return new Fitted(PaceFit.of(fit, means, unknowns, jobs(totals, timed)), seen, guess);
    }

    /** Means of the unknowns about the root that the rounds have settled on. No rate falls below zero by it. */
    private double[] means(RateRegression fit, Totals totals, TimedSteps timed) {
        double[] means = fit.coefficients().toArray();
        Bend bend = new Bend(fit.covariance());
        totals.addTo(bend, means, fit.noise());
        timed.addTo(bend, means);
        double[] shift = bend.shift();
        for (int i = 0; i < means.length; i++) {
            means[i] = i < unknowns.steps() ? Math.max(0, means[i] + shift[i]) : means[i] + shift[i];
        }
        return means;
    }

    /** Largest change of a rate as a share of what the tables expect of it, of a pace or the drift as it is. */
    private double moved(double[] guess, double[] next) {
        RealVector means = table.means();
        return IntStream.range(0, guess.length)
                .mapToDouble(i ->
                        Math.abs(next[i] - guess[i]) / (i < unknowns.steps() ? Math.max(1e-9, means.getEntry(i)) : 1))
                .max()
                .orElse(0);
    }

    private double crewSpread(RateRegression fit) {
        double squares = options.crewDegrees() * Math.pow(options.crewSpread(), 2);
        for (int k = 0; k < unknowns.crews(); k++) {
            squares += Math.pow(fit.coefficients().getEntry(unknowns.crew(k)), 2)
                    + Math.pow(fit.standardError(unknowns.crew(k)), 2);
        }
        return Math.sqrt(squares / (options.crewDegrees() + Math.max(0, unknowns.crews() - 1)));
    }

    /** Jobs of each crew that tell of its pace. */
    double[] jobs(List<Integer> totals, List<Integer> timed) {
        double[] jobs = new double[unknowns.crews()];
        Set<Integer> told = new HashSet<>(totals);
        timed.stream().filter(j -> table.lines().get(j).timings() > 0).forEach(told::add);
        told.forEach(j -> {
            int crew = table.lines().get(j).crew();
            if (crew >= 0) {
                jobs[crew]++;
            }
        });
        // a crew of none counts as a share of a job, so that shares add up
        return Arrays.stream(jobs).map(n -> Math.max(n, 1e-6)).toArray();
    }

    /**
     * What a robust fit says of the jobs of a table, in its order.
     *
     * @param deviations log residuals of totals over their median absolute deviation; 0 of jobs whose totals were not fitted
     * @param far whether a job is beyond the limit of the options, and its hours do not agree in all
     */
    record Robust(double[] deviations, boolean[] far) {
        static Robust nothing(int jobs) {
            return new Robust(new double[jobs], new boolean[jobs]);
        }
    }

    /** A Huber fit to totals. */
    Robust robust(List<Integer> totals, List<Integer> timed) {
        TimedSteps seen = timed(timed);
        RatePrior believed = believed(options.crewSpread());
        RatePrior prior = believed;
        for (int round = 0; round < TIMED_ROUNDS; round++) {
            prior = seen.informed(believed, prior.mean().toArray());
        }
        HuberFit fit = HuberFit.of(
                new Totals(table, unknowns, totals, halfLife),
                prior.mean().toArray(),
                Optional.of(prior),
                noisePrior,
                unknowns.steps(),
                HuberFit.Residual.LOG);
        Robust robust = Robust.nothing(table.lines().size());
        for (int i = 0; i < totals.size(); i++) {
            int job = totals.get(i);
            JobLine line = table.lines().get(job);
            double own = line.spread() / fit.spread();
            robust.deviations[job] = fit.deviations()[i] / Math.sqrt(1 + own * own);
            robust.far[job] = Math.abs(robust.deviations[job]) > options.outlierLimit()
                    && !line.agreesInAll(fit.deviations()[i] * fit.spread());
        }
        return robust;
    }
}
