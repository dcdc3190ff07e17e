package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** Fits the rates of the labour steps to job records; the model stands in the package's page. */
public final class Calibrator {
    /** Standard deviation over median absolute deviation, for normal errors. */
    private static final double MAD_TO_SD = 1.4826;
    /** Huber's constant: 95 % efficient where errors are normal. */
    private static final double HUBER = 1.345;

    private static final int ROBUST_ROUNDS = 20;
    private static final double SETTLED = 1e-4;
    /** Residuals smaller than this share of a job never make an outlier. */
    private static final double LEAST_SPREAD = 0.01;
    /** With fewer jobs their spread is too uncertain to call any of them an outlier, or to hold any out. */
    private static final int ENOUGH_JOBS = 8;

    private static final String FITTED = "the shop's own records of ";
    private static final String BEFORE = "; before: ";
    private static final int LONGEST_BEFORE = 850;

    private final Assumptions assumptions;
    private final CalibrationOptions options;
    private final JobTable table;
    private final TimedSteps.Informed informed;
    private final RateRegression.NoisePrior noisePrior;

    private Calibrator(Assumptions assumptions, CalibrationOptions options, JobTable table) {
        this.assumptions = assumptions;
        this.options = options;
        this.table = table;
        double spread = Math.max(LEAST_SPREAD, assumptions.scenario().value(Scalar.CREW_SPREAD));
        this.noisePrior = new RateRegression.NoisePrior(spread, options.noiseDegrees());
        this.informed = TimedSteps.inform(
                RatePrior.ofSteps(means(), variances(), options.paceSpread()),
                table,
                noisePrior,
                assumptions.scenario().value(Scalar.OPENING_SPREAD));
    }

    /** Fits all rates to all jobs. */
    public static Calibration calibrate(Assumptions assumptions, List<JobRecord> jobs, CalibrationOptions options) {
        return new Calibrator(assumptions, options, JobTable.of(assumptions, jobs)).calibration();
    }

    private Calibration calibration() {
        List<Integer> all = table.withTotals();
        double[] deviations = robustDeviations(all);
        List<Integer> kept = IntStream.range(0, all.size())
                .filter(i -> Math.abs(deviations[i]) <= options.outlierLimit())
                .mapToObj(all::get)
                .toList();
        RateRegression fit = fit(kept);
        List<StepFit> steps = IntStream.range(0, table.steps().size())
                .mapToObj(s -> stepFit(fit, s, kept))
                .toList();
        List<FittedJob> fitted = IntStream.range(0, table.works().size())
                .filter(job -> table.works().get(job).job().personHours().isPresent())
                .mapToObj(job -> fittedJob(job, fit, all.contains(job) ? deviations[all.indexOf(job)] : 0))
                .toList();
        return new Calibration(calibrated(steps), steps, fitted, relativeNoise(fit, kept), heldOut(kept), skipped(all));
    }

    private FittedJob fittedJob(int job, RateRegression fit, double deviations) {
        return new FittedJob(
                table.works().get(job).job(),
                table.hours(job, means()),
                table.hours(job, fit.coefficients()),
                deviations,
                Math.abs(deviations) > options.outlierLimit());
    }

    private RateRegression fit(List<Integer> jobs) {
        return regress(table.design(jobs), table.observed(jobs));
    }

    private RateRegression regress(RealMatrix design, RealVector observed) {
        return RateRegression.fit(
                design, observed, Optional.of(informed.prior()), noisePrior, RateRegression.Sign.NOT_NEGATIVE);
    }

    private RealVector means() {
        return new ArrayRealVector(
                table.steps().stream().mapToDouble(s -> s.minutes().mean()).toArray());
    }

    /** A step whose three points are one is given a thousandth of itself to move. */
    private RealVector variances() {
        return new ArrayRealVector(table.steps().stream()
                .mapToDouble(step -> {
                    double least = 1e-3 * Math.max(1e-3, step.minutes().mean());
                    return Math.max(step.minutes().variance(), least * least);
                })
                .toArray());
    }

    /** Residuals of a Huber fit over their median absolute deviation; zeros where there are too few jobs. */
    private double[] robustDeviations(List<Integer> jobs) {
        if (jobs.size() < ENOUGH_JOBS) {
            return new double[jobs.size()];
        }
        RealMatrix design = table.design(jobs);
        RealVector observed = table.observed(jobs);
        double[] deviations = new double[jobs.size()];
        double spread = noisePrior.noise();
        for (int round = 0; round < ROBUST_ROUNDS; round++) {
            double[] residuals = huberResiduals(design, observed, deviations, spread);
            double next = Math.max(LEAST_SPREAD, MAD_TO_SD * medianOfAbsolutes(residuals));
            boolean settled = Math.abs(next - spread) < SETTLED * spread;
            spread = next;
            for (int i = 0; i < deviations.length; i++) {
                deviations[i] = residuals[i] / spread;
            }
            if (settled) {
                break;
            }
        }
        return deviations;
    }

    private double[] huberResiduals(RealMatrix design, RealVector observed, double[] deviations, double spread) {
        double[] roots = Arrays.stream(deviations)
                .map(d -> Math.sqrt(Math.min(1, HUBER / Math.abs(d))))
                .toArray();
        RealMatrix weighted = design.copy();
        for (int i = 0; i < roots.length; i++) {
            weighted.setRowVector(i, design.getRowVector(i).mapMultiply(roots[i]));
        }
        RealVector rates = RateRegression.fit(
                        weighted,
                        observed.ebeMultiply(new ArrayRealVector(roots)),
                        Optional.of(informed.prior()),
                        noisePrior,
                        RateRegression.Sign.NOT_NEGATIVE,
                        spread)
                .coefficients();
        return observed.subtract(design.operate(rates)).toArray();
    }

    private static double medianOfAbsolutes(double[] values) {
        return StatUtils.percentile(Arrays.stream(values).map(Math::abs).toArray(), 50);
    }

    private StepFit stepFit(RateRegression fit, int step, List<Integer> kept) {
        double minutes = fit.coefficients().getEntry(step);
        double degrees =
                informed.columns().contains(step) ? Math.min(informed.degrees(), fit.degrees()) : fit.degrees();
        double half = fit.halfWidth(step, options.confidence(), degrees);
        LabourStep row = table.steps().get(step);
        return new StepFit(
                row,
                minutes,
                fit.standardError(step),
                Math.max(0, minutes - half),
                minutes + half,
                table.occurrences(row, kept));
    }

    /** Noise as a share of the fitted, not of the tables' minutes. */
    private double relativeNoise(RateRegression fit, List<Integer> jobs) {
        double byTables =
                jobs.stream().mapToDouble(job -> table.hours(job, means())).sum();
        double byFit = jobs.stream()
                .mapToDouble(job -> table.hours(job, fit.coefficients()))
                .sum();
        return byFit > 0 ? fit.noise() * byTables / byFit : fit.noise();
    }

    private Optional<HeldOutError> heldOut(List<Integer> jobs) {
        if (options.folds() == 0 || jobs.size() < ENOUGH_JOBS) {
            return Optional.empty();
        }
        int folds = Math.min(options.folds(), jobs.size());
        double[] sums = new double[4];
        for (int fold = 0; fold < folds; fold++) {
            int held = fold;
            RealVector minutes = fit(IntStream.range(0, jobs.size())
                            .filter(i -> i % folds != held)
                            .mapToObj(jobs::get)
                            .toList())
                    .coefficients();
            IntStream.range(0, jobs.size()).filter(i -> i % folds == held).forEach(i -> {
                int job = jobs.get(i);
                double actual = table.works().get(job).job().personHours().orElseThrow();
                double byTables = table.hours(job, means());
                double byFit = table.hours(job, minutes);
                sums[0] += Math.pow(actual / byTables - 1, 2);
                sums[1] += Math.pow(actual / byFit - 1, 2);
                sums[2] += Math.pow(actual - byTables, 2);
                sums[3] += Math.pow(actual - byFit, 2);
            });
        }
        double[] roots =
                Arrays.stream(sums).map(sum -> Math.sqrt(sum / jobs.size())).toArray();
        return Optional.of(new HeldOutError(folds, jobs.size(), roots[0], roots[1], roots[2], roots[3]));
    }

    private List<String> skipped(List<Integer> used) {
        Set<Integer> totals = Set.copyOf(used);
        return IntStream.range(0, table.works().size())
                .filter(j -> !totals.contains(j)
                        && table.works().get(j).job().stepMinutes().isEmpty())
                .mapToObj(j -> table.works().get(j).job().id())
                .toList();
    }

    private Assumptions calibrated(List<StepFit> fits) {
        return new Assumptions(
                fits.stream().map(Calibrator::calibrated).toList(),
                assumptions.materials(),
                assumptions.unitPrices(),
                assumptions.sightlines(),
                assumptions.faults(),
                assumptions.wages(),
                assumptions.scenario());
    }

    private static LabourStep calibrated(StepFit fit) {
        LabourStep step = fit.step();
        return new LabourStep(
                step.id(),
                step.method(),
                step.tradeName(),
                step.driver(),
                moved(step.minutes(), fit.fittedMinutes(), fit.standardError()),
                step.appliesWhen(),
                step.coldSensitive(),
                step.heightSensitive(),
                step.people(),
                fit.jobs() == 0 ? step.origin() : fittedOrigin(step, fit.jobs()));
    }

    private static Origin fittedOrigin(LabourStep step, int jobs) {
        return new Origin(
                step.origin().table(),
                step.origin().row(),
                Basis.DATASET,
                FITTED + (jobs == 1 ? "1 job" : jobs + " jobs") + ", shrunk towards the table"
                        + before(step.origin().source()));
    }

    /** What a row rested on before it was ever fitted, in so many characters that a table takes the cell. */
    private static String before(String source) {
        if (source.startsWith(FITTED)) {
            int at = source.indexOf(BEFORE);
            return at < 0 ? "" : source.substring(at);
        }
        return source.isEmpty() ? "" : BEFORE + source.substring(0, Math.min(source.length(), LONGEST_BEFORE));
    }

    /** Whether rates of these tables come from job records already: the same records given again would count twice. */
    public static boolean isFitted(Assumptions assumptions) {
        return assumptions.steps().stream()
                .anyMatch(step -> step.origin().source().startsWith(FITTED));
    }

    /**
     * The three points moved and drawn together so that their mean and standard deviation are the fitted ones; drawn further together
     * where the low point would fall below zero.
     */
    static ThreePoint moved(ThreePoint points, double mean, double deviation) {
        double old = Math.sqrt(points.variance());
        if (old == 0) {
            return ThreePoint.exactly(mean);
        }
        double below = points.mean() - points.low();
        double scale = Math.min(deviation / old, mean / below);
        return new ThreePoint(
                Math.max(0, mean - scale * below),
                mean + scale * (points.likely() - points.mean()),
                mean + scale * (points.high() - points.mean()));
    }
}
