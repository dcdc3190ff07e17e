package weatherlap.analysis.backtest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.CalibrationOptions;
import weatherlap.analysis.calibration.Calibrator;
import weatherlap.analysis.callbacks.CallLevels;
import weatherlap.analysis.callbacks.ExpectedCalls;
import weatherlap.analysis.callbacks.LevelFit;
import weatherlap.analysis.money.FittedMoney;
import weatherlap.analysis.money.MoneyFitter;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.datasets.jobs.JobTakeoff;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.rain.RainClimate;

/**
 * Jobs foreseen in parts, each by tables that were fitted to the other parts. A fit sees of a job that it foresees nothing; of such a job
 * only what was known beforehand is read ({@link JobRecord#beforehand()}). Jobs at one house are in one part.
 */
public final class Backtest {
    /** With fewer jobs there is nothing to hold out. */
    public static final int ENOUGH_JOBS = 12;

    /** Parts, where nothing else is said. */
    public static final int PARTS = 10;

    /** How many jobs what is believed of the spread from job to job counts for. */
    private static final double DEGREES = 4;

    private static final double SPREAD = 0.1;

    private final Assumptions assumptions;
    private final JobHouses houses;
    private final List<JobBasis> jobs;
    private final Optional<CallLevels> levels;

    private Backtest(Assumptions assumptions, JobHouses houses, List<JobBasis> jobs, Optional<CallLevels> levels) {
        this.assumptions = assumptions;
        this.houses = houses;
        this.jobs = jobs;
        this.levels = levels;
    }

    /**
     * Foresees every amount that a job kept.
     *
     * @param jobs {@link #ENOUGH_JOBS} or more
     * @param followed the same jobs with their calls, those that have a day; empty: calls are not judged
     * @param most parts, 2 or more; fewer where there are fewer houses
     * @param progress is told after each part
     */
    public static BacktestResult run(
            Assumptions assumptions,
            List<JobRecord> jobs,
            List<FollowedJob> followed,
            JobHouses houses,
            RainClimate climate,
            int most,
            Runnable progress) {
        List<JobRecord> before = jobs.stream().map(JobRecord::beforehand).toList();
        JobTakeoff takeoff = new JobTakeoff(assumptions, before, houses);
        JobStocks stocks = new JobStocks(assumptions, houses);
        Map<String, FollowedJob> calls = new HashMap<>();
        followed.forEach(job -> calls.put(job.job().id(), job));
        ExpectedCalls leaks = new ExpectedCalls(houses, assumptions, climate, CallLevels.DRAWS);
        Optional<CallLevels> levels = followed.isEmpty()
                ? Optional.empty()
                : Optional.of(new CallLevels(followed, leaks, houses, assumptions, climate));
        List<JobBasis> bases = new ArrayList<>();
        for (int j = 0; j < jobs.size(); j++) {
            Optional<FollowedJob> own =
                    Optional.ofNullable(calls.get(jobs.get(j).id()));
            bases.add(new JobBasis(
                    jobs.get(j),
                    takeoff.of(before.get(j)),
                    stocks.of(before.get(j)),
                    takeoff.of(jobs.get(j)),
                    stocks.of(jobs.get(j)),
                    own,
                    leaks.of(jobs.get(j))));
        }
        return new Backtest(assumptions, houses, bases, levels).run(most, progress);
    }

    private BacktestResult run(int most, Runnable progress) {
        Map<Integer, List<JobBasis>> parts = parts(most);
        Map<JobBasis, List<Trial>> trials = new IdentityHashMap<>();
        Foresight tables = new Foresight(assumptions, Map.of(), levels.map(l -> l.fit(List.of())), Map.of());
        parts.forEach((part, held) -> {
            List<JobBasis> seen = parts.entrySet().stream()
                    .filter(other -> !other.getKey().equals(part))
                    .flatMap(other -> other.getValue().stream())
                    .toList();
            Foresight calibrated = calibrated(seen);
            WindowAverage average = new WindowAverage(seen.stream()
                    .map(job -> new WindowAverage.Done(
                            job.job(), job::came, job.followed().orElse(null)))
                    .toList());
            held.forEach(job -> trials.put(job, trials(job, tables, calibrated, average)));
            progress.run();
        });
        return BacktestResult.of(
                jobs.size(),
                parts.size(),
                (int) jobs.stream().filter(job -> houses.isMeasured(job.job())).count(),
                jobs.stream().flatMap(job -> trials.get(job).stream()).toList());
    }

    /** Houses are dealt to the parts in turn. */
    private Map<Integer, List<JobBasis>> parts(int most) {
        Map<String, Integer> houseIds = new HashMap<>();
        jobs.forEach(job -> houseIds.putIfAbsent(house(job.job()), houseIds.size()));
        int folds = Math.min(most, houseIds.size());
        Map<Integer, List<JobBasis>> parts = new LinkedHashMap<>();
        jobs.forEach(job -> parts.computeIfAbsent(houseIds.get(house(job.job())) % folds, p -> new ArrayList<>())
                .add(job));
        return parts;
    }

    private static String house(JobRecord job) {
        return job.houseId().map(id -> "house " + id).orElse("job " + job.id());
    }

    private List<Trial> trials(JobBasis job, Foresight tables, Foresight calibrated, WindowAverage average) {
        List<Trial> trials = new ArrayList<>();
        for (JobAmount amount : JobAmount.values()) {
            OptionalDouble came = job.came(amount);
            boolean others = amount == JobAmount.CALLS || average.knows(amount);
            if (came.isPresent() && others && (amount != JobAmount.CALLS || levels.isPresent())) {
                Map<Seer, Forecast> foreseen = new EnumMap<>(Seer.class);
                foreseen.put(Seer.TABLES, tables.of(job, amount));
                foreseen.put(Seer.CALIBRATED, calibrated.of(job, amount));
                foreseen.put(
                        Seer.AVERAGE,
                        amount == JobAmount.CALLS
                                ? average.calls(job.followed().orElseThrow())
                                : average.of(job.job(), amount));
                trials.add(new Trial(job.job(), amount, came.getAsDouble(), foreseen));
            }
        }
        return trials;
    }

    private Foresight calibrated(List<JobBasis> seen) {
        Calibration rates = Calibrator.calibrateWork(
                assumptions,
                seen.stream().map(JobBasis::seenWork).toList(),
                CalibrationOptions.ORDINARY.withoutHeldOut());
        List<FollowedJob> followed =
                seen.stream().flatMap(job -> job.followed().stream()).toList();
        Optional<LevelFit> leakLevels = levels.map(l -> l.fit(followed));
        Assumptions fitted = FittedMoney.of(
                rates.calibrated(),
                MoneyFitter.fit(
                        assumptions,
                        seen.stream()
                                .map(JobBasis::seenStock)
                                .filter(stock -> MoneyFitter.keepsMoney(stock.job()))
                                .toList(),
                        repairs(seen, leakLevels)));
        Map<String, Double> crews = new HashMap<>();
        rates.crews().forEach(crew -> crews.put(crew.crew(), crew.factor()));
        Foresight means = new Foresight(fitted, crews, leakLevels, Map.of());
        return new Foresight(
                fitted,
                crews,
                means.levels(),
                Map.of(
                        JobAmount.MATERIAL, spread(seen, JobAmount.MATERIAL, job -> means.materialUsd(job.stock())),
                        JobAmount.PRICE, spread(seen, JobAmount.PRICE, means::priceUsd)));
    }

    /** What the price of each job had to hold for the warranty, by the level of the leaks. */
    private ToDoubleFunction<JobRecord> repairs(List<JobBasis> seen, Optional<LevelFit> leakLevels) {
        Foresight before = new Foresight(assumptions, Map.of(), leakLevels, Map.of());
        Map<String, Double> usd = new HashMap<>();
        seen.forEach(job -> usd.put(job.job().id(), before.warrantyUsd(job)));
        return job -> usd.get(job.id());
    }

    /** From job to job about what is foreseen: standard deviation of the log, with a few jobs' worth of a tenth. */
    private static double spread(List<JobBasis> seen, JobAmount amount, ToDoubleFunction<JobBasis> foreseen) {
        double[] logs = seen.stream()
                .filter(job -> job.came(amount).isPresent())
                .mapToDouble(job -> Math.log(job.came(amount).getAsDouble() / foreseen.applyAsDouble(job)))
                .toArray();
        double middle = logs.length == 0 ? 0 : StatUtils.percentile(logs, 50);
        double squares =
                Arrays.stream(logs).map(x -> (x - middle) * (x - middle)).sum();
        return Math.sqrt((DEGREES * SPREAD * SPREAD + squares) / (DEGREES + logs.length));
    }
}
