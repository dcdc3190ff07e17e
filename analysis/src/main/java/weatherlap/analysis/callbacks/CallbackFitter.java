package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.datasets.jobs.CallRecord;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Streams;

/** Fits the level of the leaks to the jobs of a shop and their calls. */
public final class CallbackFitter {
    /** Repairs that the range of the tables counts as beside those of the records (judgement). */
    private static final double REPAIRS_OF_THE_TABLES = 10;

    private static final int DRAWS = 128;

    private final List<FollowedJob> jobs;
    private final JobHouses houses;
    private final Assumptions assumptions;
    private final Map<FollowedJob, ExpectedCalls.Damage> damage = new IdentityHashMap<>();

    private CallbackFitter(List<FollowedJob> jobs, JobHouses houses, Assumptions assumptions) {
        this.jobs = jobs;
        this.houses = houses;
        this.assumptions = assumptions;
    }

    /**
     * @param jobs at least one
     * @param houses behind them
     * @param lagYears mean time from damage to call; empty: fitted
     */
    public static CallbackFit fit(
            List<FollowedJob> jobs,
            JobHouses houses,
            Assumptions assumptions,
            RainClimate climate,
            OptionalDouble lagYears) {
        return new CallbackFitter(jobs, houses, assumptions).fit(climate, lagYears);
    }

    private CallbackFit fit(RainClimate climate, OptionalDouble lagYears) {
        ExpectedCalls model = new ExpectedCalls(houses, assumptions, climate, DRAWS);
        jobs.forEach(job -> damage.put(job, model.of(job.job())));
        JobMix mix = JobMix.of(jobs, houses, assumptions, climate);
        LevelFit.Prior prior = LevelPrior.of(mix, assumptions, lagYears);
        List<LevelFit.Group> methodJobs =
                Arrays.stream(Method.values()).map(this::group).toList();
        LevelFit fit = LevelFit.of(methodJobs, prior);
        Map<Method, CallbackFit.MethodLevel> methods = new EnumMap<>(Method.class);
        Map<Method, Double> levels = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            int group = method.ordinal();
            levels.put(method, fit.level(group).mean());
            if (!methodJobs.get(group).jobs().isEmpty()) {
                methods.put(method, level(method, fit));
            }
        }
        double lag = fit.lagYears().mean();
        Map<FaultGroup, CallbackFit.GroupLevel> groups = groups(prior, lag);
        Map<FaultGroup, Double> groupLevels = new EnumMap<>(FaultGroup.class);
        groups.forEach((group, level) -> groupLevels.put(group, level.level().mean()));
        return new CallbackFit(
                jobs,
                (int) jobs.stream().filter(job -> houses.isMeasured(job.job())).count(),
                methods,
                fit,
                groups,
                fit.shared(),
                fit.lagYears(),
                prior,
                FaultShares.of(mix, assumptions, levels, groupLevels, records(methods)),
                repair(),
                ServiceReserve.of(jobs, assumptions.scenario()),
                new SeenTable(jobs, houses, damage, levels, lag).rows());
    }

    private Map<FaultGroup, CallbackFit.GroupLevel> groups(LevelFit.Prior prior, double lagYears) {
        List<GroupFit.Job> followed = jobs.stream()
                .map(job -> new GroupFit.Job(damage.get(job).byGroup(), job.years(), callYears(job)))
                .toList();
        long seed = (long) assumptions.scenario().value(Scalar.SEED);
        GroupFit fit = GroupFit.of(followed, prior, lagYears, new Streams(seed).world("fault groups"));
        Map<FaultGroup, CallbackFit.GroupLevel> levels = new EnumMap<>(FaultGroup.class);
        for (FaultGroup group : FaultGroup.values()) {
            levels.put(group, new CallbackFit.GroupLevel(fit.expected(group), fit.level(group), fit.tells(group)));
        }
        return levels;
    }

    private static String records(Map<Method, CallbackFit.MethodLevel> methods) {
        int calls = methods.values().stream()
                .mapToInt(CallbackFit.MethodLevel::calls)
                .sum();
        double years = methods.values().stream()
                .mapToDouble(CallbackFit.MethodLevel::openingYears)
                .sum();
        int jobs = methods.values().stream()
                .mapToInt(CallbackFit.MethodLevel::jobs)
                .sum();
        return "own records: " + calls + " leak calls in " + Math.round(years) + " window-years of " + jobs
                + " jobs, shrunk towards the table";
    }

    private LevelFit.Group group(Method method) {
        return new LevelFit.Group(of(method).stream()
                .map(job -> new LevelFit.Job(damage.get(job).all(), job.years(), callYears(job)))
                .toList());
    }

    private static List<Double> callYears(FollowedJob job) {
        return job.leaks().stream().map(call -> job.years(call.called())).toList();
    }

    private List<FollowedJob> of(Method method) {
        return jobs.stream().filter(job -> job.job().method() == method).toList();
    }

    private CallbackFit.MethodLevel level(Method method, LevelFit fit) {
        List<FollowedJob> own = of(method);
        int openings = own.stream().mapToInt(job -> job.job().openings()).sum();
        return new CallbackFit.MethodLevel(
                method,
                own.size(),
                openings,
                own.stream().mapToDouble(FollowedJob::openingYears).sum(),
                own.stream().mapToInt(job -> job.leaks().size()).sum(),
                fit.expected(method.ordinal()),
                fit.level(method.ordinal()),
                window(own, openings),
                KaplanMeier.of(own.stream().map(CallbackFitter::waited).toList()),
                own.stream().map(job -> damage.get(job).all()).toList());
    }

    /** Damage expected at a window, mean over all windows of the jobs. */
    private LaggedExposure window(List<FollowedJob> own, int openings) {
        List<Double> knots = damage.get(own.get(0)).all().knots();
        double[] sum = new double[knots.size()];
        for (FollowedJob job : own) {
            List<Double> expected = damage.get(job).all().expected();
            for (int k = 0; k < sum.length; k++) {
                sum[k] += expected.get(k) / openings;
            }
        }
        return new LaggedExposure(knots, Arrays.stream(sum).boxed().toList());
    }

    private static KaplanMeier.Followed waited(FollowedJob job) {
        Optional<CallRecord> first = job.leaks().stream().findFirst();
        return first.map(call -> new KaplanMeier.Followed(job.years(call.called()), true))
                .orElseGet(() -> new KaplanMeier.Followed(job.years(), false));
    }

    private CallbackFit.Repair repair() {
        double[] costs = jobs.stream()
                .flatMap(job -> job.leaks().stream())
                .flatMapToDouble(call -> call.costUsd().stream())
                .filter(cost -> cost > 0)
                .toArray();
        ThreePoint before = assumptions.scenario().repairUsd();
        double mean = Arrays.stream(costs).average().orElse(0);
        double factor =
                (REPAIRS_OF_THE_TABLES + costs.length * mean / before.mean()) / (REPAIRS_OF_THE_TABLES + costs.length);
        ThreePoint after = new ThreePoint(factor * before.low(), factor * before.likely(), factor * before.high());
        return new CallbackFit.Repair(costs.length, mean, before, after);
    }
}
