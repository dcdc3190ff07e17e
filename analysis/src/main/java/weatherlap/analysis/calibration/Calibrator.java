package weatherlap.analysis.calibration;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.datasets.jobs.EarlierRate;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobTakeoff;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/** Fits the rates of the labour steps to job records; the model stands in the package's page. */
public final class Calibrator {
    /** With fewer jobs their spread is too uncertain to call any of them an outlier, or to hold any out. */
    private static final int ENOUGH_JOBS = 8;

    private final Assumptions assumptions;
    private final CalibrationOptions options;
    private final JobTable table;
    private final Fitter fitter;
    private final List<Integer> everyJob;

    Calibrator(Assumptions assumptions, CalibrationOptions options, JobTable table) {
        this.assumptions = assumptions;
        this.options = options;
        this.table = table;
        fitter = new Fitter(assumptions.scenario(), options, table);
        everyJob = IntStream.range(0, table.lines().size()).boxed().toList();
    }

    /** Fits all rates to all jobs, none of which names a measured house. */
    public static Calibration calibrate(Assumptions assumptions, List<JobRecord> jobs, CalibrationOptions options) {
        return calibrate(assumptions, jobs, JobHouses.unmeasured(), Map.of(), options);
    }

    /**
     * Fits all rates to all jobs.
     *
     * @param houses from which the work of jobs is taken off where they name one
     * @param earlier rates of an earlier fit by step id, to set these beside; empty: none
     */
    public static Calibration calibrate(
            Assumptions assumptions,
            List<JobRecord> jobs,
            JobHouses houses,
            Map<String, EarlierRate> earlier,
            CalibrationOptions options) {
        JobTakeoff takeoff = new JobTakeoff(assumptions, jobs, houses);
        return of(assumptions, JobTable.of(assumptions, jobs, takeoff), FilledIn.of(jobs, takeoff), earlier, options);
    }

    /** Fits all rates to jobs whose work is taken off already; what records left out is not counted. */
    public static Calibration calibrateWork(Assumptions assumptions, List<JobWork> works, CalibrationOptions options) {
        return of(assumptions, JobTable.ofWork(assumptions, works), FilledIn.NOTHING, Map.of(), options);
    }

    private static Calibration of(
            Assumptions assumptions,
            JobTable typed,
            FilledIn filledIn,
            Map<String, EarlierRate> earlier,
            CalibrationOptions options) {
        List<GrossTiming> gross = gross(assumptions.scenario(), options).of(typed);
        return new Calibrator(assumptions, options, typed.without(gross)).calibration(gross, filledIn, earlier);
    }

    private static GrossTimings gross(Scenario scenario, CalibrationOptions options) {
        double spread = Math.hypot(scenario.value(Scalar.CREW_SPREAD), scenario.value(Scalar.OPENING_SPREAD));
        return new GrossTimings(options.paceSpread(), Math.max(Fitter.LEAST_SPREAD, spread), options.outlierLimit());
    }

    private Calibration calibration(List<GrossTiming> gross, FilledIn filledIn, Map<String, EarlierRate> earlier) {
        List<Integer> totals = table.withTotals();
        Fitter.Robust robust = totals.size() < ENOUGH_JOBS
                ? Fitter.Robust.nothing(table.lines().size())
                : fitter.robust(totals, everyJob);
        List<Integer> kept = totals.stream().filter(job -> !robust.far()[job]).toList();
        Fitter.Fitted fitted = fitter.fit(kept, everyJob, fitter.believed(), Fitter.SETTLED);
        List<StepFit> steps = steps(fitted, kept);
        List<Double> usdPerMinute = TimeNext.usdPerMinute(assumptions, table);
        RealVector means = table.means();
        List<FittedJob> jobs = table.withHours().stream()
                .map(job -> fittedJob(job, means, fitted.fit(), robust))
                .toList();
        return new Calibration(
                FittedTables.of(assumptions, steps, CrewSpread.of(assumptions.scenario(), jobs, fitted.fit())),
                steps,
                jobs,
                fitted.fit().noise(),
                crews(fitted, kept),
                drift(fitted.fit()),
                filledIn,
                usdPerMinute,
                TimeNext.of(assumptions, options, table, fitted.fit(), steps, usdPerMinute),
                RateChange.of(steps, earlier),
                heldOut(kept, robust, fitted.settled()),
                skipped(),
                gross);
    }

    private FittedJob fittedJob(int job, RealVector means, PaceFit fit, Fitter.Robust robust) {
        JobLine line = table.lines().get(job);
        return new FittedJob(
                line.job(),
                line.hours(means),
                fit.hours(line),
                fit.restHours(line),
                robust.deviations()[job],
                aside(line, robust.far()[job]));
    }

    private static FittedJob.Aside aside(JobLine line, boolean far) {
        if (line.isContradictory()) {
            return FittedJob.Aside.TIMINGS;
        }
        if (!far) {
            return FittedJob.Aside.NOT;
        }
        return line.timings() > 0 ? FittedJob.Aside.REST : FittedJob.Aside.WHOLE;
    }

    private List<StepFit> steps(Fitter.Fitted fitted, List<Integer> kept) {
        PaceFit fit = fitted.fit();
        int[] occurrences = table.occurrences(new HashSet<>(kept));
        double timedDegrees = Math.min(fitted.timed().jobDegrees(), fit.degrees());
        return IntStream.range(0, table.steps().size())
                .mapToObj(step -> {
                    boolean timed = fitted.timed().columns().contains(step);
                    double half = quantile(timed ? timedDegrees : fit.degrees()) * fit.standardError(step);
                    double minutes = fit.values()[step];
                    return new StepFit(
                            table.steps().get(step),
                            minutes,
                            fit.standardError(step),
                            Math.max(0, minutes - half),
                            minutes + half,
                            occurrences[step]);
                })
                .toList();
    }

    private double quantile(double degrees) {
        return new TDistribution(null, degrees).inverseCumulativeProbability((1 + options.confidence()) / 2);
    }

    private List<CrewPace> crews(Fitter.Fitted fitted, List<Integer> kept) {
        PaceFit fit = fitted.fit();
        double[] jobs = fitter.jobs(kept, everyJob);
        return IntStream.range(0, table.crews().size())
                .mapToObj(k -> {
                    int unknown = fit.unknowns().crew(k);
                    double half = quantile(fit.degrees()) * fit.standardError(unknown);
                    double pace = fit.values()[unknown];
                    return new CrewPace(
                            table.crews().get(k),
                            (int) jobs[k],
                            Math.exp(pace),
                            Math.exp(pace - half),
                            Math.exp(pace + half));
                })
                .toList();
    }

    private Optional<Drift> drift(PaceFit fit) {
        if (!fit.unknowns().drifts()) {
            return Optional.empty();
        }
        int unknown = fit.unknowns().drift();
        double half = quantile(fit.degrees()) * fit.standardError(unknown);
        double drift = fit.values()[unknown];
        return Optional.of(
                new Drift(table.span(), Math.expm1(drift), Math.expm1(drift - half), Math.expm1(drift + half)));
    }

    private Optional<HeldOutError> heldOut(List<Integer> kept, Fitter.Robust robust, Fitter.Guess settled) {
        List<Integer> jobs = table.withHours().stream()
                .filter(j -> !robust.far()[j])
                .filter(j -> !table.lines().get(j).isContradictory())
                .toList();
        if (options.folds() == 0 || jobs.size() < ENOUGH_JOBS) {
            return Optional.empty();
        }
        int folds = Math.min(options.folds(), jobs.size());
        return Optional.of(heldOut(kept, jobs, folds, settled).error(folds));
    }

    /**
     * Forecasts of jobs by fits to the others: {@code kept} give totals, all but the held-out ones timed steps.
     *
     * @param settled first guess of each fit
     */
    HeldOut heldOut(List<Integer> kept, List<Integer> jobs, int folds, Fitter.Guess settled) {
        RealVector means = table.means();
        return HeldOut.of(
                jobs,
                folds,
                jobs.stream()
                        .mapToDouble(
                                j -> table.lines().get(j).job().personHours().orElseThrow())
                        .toArray(),
                jobs.stream()
                        .mapToDouble(j -> table.lines().get(j).hours(means))
                        .toArray(),
                held -> {
                    Set<Integer> unseen = new HashSet<>(held);
                    PaceFit fit = fitter.fit(
                                    without(kept, unseen),
                                    without(everyJob, unseen),
                                    settled,
                                    Fitter.SETTLED_TO_FORESEE)
                            .fit();
                    return held.stream()
                            .map(j -> forecast(fit, table.lines().get(j)))
                            .toList();
                });
    }

    private static List<Integer> without(List<Integer> jobs, Set<Integer> unseen) {
        return jobs.stream().filter(j -> !unseen.contains(j)).toList();
    }

    private static HeldOut.Forecast forecast(PaceFit fit, JobLine line) {
        double noise = Math.hypot(fit.noise(), line.spread());
        return new HeldOut.Forecast(fit.hours(line), noise, Math.hypot(noise, fit.uncertainty(line)));
    }

    private List<String> skipped() {
        return table.lines().stream()
                .filter(line -> !line.hasTotal() && line.job().stepMinutes().isEmpty())
                .map(line -> line.job().id())
                .toList();
    }

    /** Whether rates of these tables come from job records already: the same records given again would count twice. */
    public static boolean isFitted(Assumptions assumptions) {
        return FittedTables.isFitted(assumptions);
    }
}
