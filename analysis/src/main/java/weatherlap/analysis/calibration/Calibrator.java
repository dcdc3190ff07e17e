package weatherlap.analysis.calibration;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/** Fits the rates of the labour steps to job records; the model stands in the package's page. */
public final class Calibrator {
    /** Jobs whose spread is smaller than this are not believed to be. */
    private static final double LEAST_SPREAD = 0.01;
    /** With fewer jobs their spread is too uncertain to call any of them an outlier, or to hold any out. */
    private static final int ENOUGH_JOBS = 8;

    private final Assumptions assumptions;
    private final CalibrationOptions options;
    private final JobTable table;
    private final TimedSteps.Informed informed;
    private final RateRegression.NoisePrior noisePrior;

    Calibrator(Assumptions assumptions, CalibrationOptions options, JobTable table) {
        this.assumptions = assumptions;
        this.options = options;
        this.table = table;
        double spread = Math.max(LEAST_SPREAD, assumptions.scenario().value(Scalar.CREW_SPREAD));
        this.noisePrior = new RateRegression.NoisePrior(spread, options.noiseDegrees());
        this.informed = inform(table);
    }

    private TimedSteps.Informed inform(JobTable seen) {
        return TimedSteps.inform(
                RatePrior.ofSteps(means(), variances(), options.paceSpread()),
                seen,
                noisePrior,
                assumptions.scenario().value(Scalar.OPENING_SPREAD));
    }

    /** Fits all rates to all jobs. */
    public static Calibration calibrate(Assumptions assumptions, List<JobRecord> jobs, CalibrationOptions options) {
        JobTable typed = JobTable.of(assumptions, jobs);
        List<GrossTiming> gross = gross(assumptions.scenario(), options).of(typed);
        return new Calibrator(assumptions, options, typed.without(gross)).calibration(gross);
    }

    private static GrossTimings gross(Scenario scenario, CalibrationOptions options) {
        double spread = Math.hypot(scenario.value(Scalar.CREW_SPREAD), scenario.value(Scalar.OPENING_SPREAD));
        return new GrossTimings(options.paceSpread(), Math.max(LEAST_SPREAD, spread), options.outlierLimit());
    }

    private Calibration calibration(List<GrossTiming> gross) {
        List<Integer> all = table.withTotals();
        double[] deviations = robustDeviations(all);
        List<Integer> kept = IntStream.range(0, all.size())
                .filter(i -> Math.abs(deviations[i]) <= options.outlierLimit())
                .mapToObj(all::get)
                .toList();
        RateRegression fit = fit(kept, informed);
        List<StepFit> steps = IntStream.range(0, table.steps().size())
                .mapToObj(s -> stepFit(fit, s, kept))
                .toList();
        List<FittedJob> fitted = IntStream.range(0, table.works().size())
                .filter(job -> table.works().get(job).job().personHours().isPresent())
                .mapToObj(job -> fittedJob(job, fit, all.contains(job) ? deviations[all.indexOf(job)] : 0))
                .toList();
        return new Calibration(
                FittedTables.of(assumptions, steps),
                steps,
                fitted,
                relativeNoise(fit, kept),
                heldOut(kept, fitted),
                skipped(all),
                gross,
                contradictions());
    }

    private List<JobRecord> contradictions() {
        return table.withHours().stream()
                .filter(table::contradictory)
                .map(job -> table.works().get(job).job())
                .toList();
    }

    private FittedJob fittedJob(int job, RateRegression fit, double deviations) {
        return new FittedJob(
                table.works().get(job).job(),
                table.hours(job, means()),
                table.hours(job, fit.coefficients()),
                deviations,
                Math.abs(deviations) > options.outlierLimit() || table.contradictory(job));
    }

    private RateRegression fit(List<Integer> jobs, TimedSteps.Informed known) {
        return RateRegression.fit(
                table.design(jobs),
                table.observed(jobs),
                Optional.of(known.prior()),
                noisePrior,
                RateRegression.Sign.NOT_NEGATIVE);
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

    /** Log residuals of a Huber fit over their median absolute deviation; zeros where there are too few jobs. */
    private double[] robustDeviations(List<Integer> jobs) {
        return jobs.size() < ENOUGH_JOBS
                ? new double[jobs.size()]
                : HuberFit.of(
                                table.design(jobs),
                                table.observed(jobs),
                                Optional.of(informed.prior()),
                                noisePrior,
                                RateRegression.Sign.NOT_NEGATIVE,
                                HuberFit.Residual.LOG)
                        .deviations();
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

    private Optional<HeldOutError> heldOut(List<Integer> kept, List<FittedJob> fitted) {
        Set<String> aside = fitted.stream()
                .filter(FittedJob::outlier)
                .map(job -> job.job().id())
                .collect(Collectors.toSet());
        List<Integer> jobs = table.withHours().stream()
                .filter(j -> !aside.contains(table.works().get(j).job().id()))
                .toList();
        if (options.folds() == 0 || jobs.size() < ENOUGH_JOBS) {
            return Optional.empty();
        }
        int folds = Math.min(options.folds(), jobs.size());
        return Optional.of(heldOut(kept, jobs, folds).error(folds));
    }

    /** Forecasts of jobs by fits to the others: {@code kept} give totals, all but the held-out ones timed steps. */
    HeldOut heldOut(List<Integer> kept, List<Integer> jobs, int folds) {
        return HeldOut.of(
                jobs,
                folds,
                jobs.stream()
                        .mapToDouble(
                                j -> table.works().get(j).job().personHours().orElseThrow())
                        .toArray(),
                jobs.stream().mapToDouble(j -> table.hours(j, means())).toArray(),
                held -> {
                    Set<Integer> unseen = Set.copyOf(held);
                    List<Integer> seen =
                            kept.stream().filter(j -> !unseen.contains(j)).toList();
                    RateRegression fit = fit(seen, inform(table.without(unseen)));
                    double noise = relativeNoise(fit, jobs);
                    return held.stream()
                            .map(j -> new HeldOut.Forecast(table.hours(j, fit.coefficients()), noise))
                            .toList();
                });
    }

    private List<String> skipped(List<Integer> used) {
        Set<Integer> totals = Set.copyOf(used);
        return IntStream.range(0, table.works().size())
                .filter(j -> !totals.contains(j)
                        && table.works().get(j).job().stepMinutes().isEmpty())
                .mapToObj(j -> table.works().get(j).job().id())
                .toList();
    }

    /** Whether rates of these tables come from job records already: the same records given again would count twice. */
    public static boolean isFitted(Assumptions assumptions) {
        return FittedTables.isFitted(assumptions);
    }
}
