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
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;

/** Fits the level of the leaks to the jobs of a shop and their calls. */
public final class CallbackFitter {
    /** Repairs that the range of the tables counts as beside those of the records (judgement). */
    private static final double REPAIRS_OF_THE_TABLES = 10;

    private static final int DRAWS = 128;

    private final List<FollowedJob> jobs;
    private final Assumptions assumptions;
    private final Map<FollowedJob, LaggedExposure> exposures = new IdentityHashMap<>();

    private CallbackFitter(List<FollowedJob> jobs, Assumptions assumptions) {
        this.jobs = jobs;
        this.assumptions = assumptions;
    }

    /**
     * @param jobs at least one
     * @param lagYears mean time from damage to call; empty: fitted
     */
    public static CallbackFit fit(
            List<FollowedJob> jobs, Assumptions assumptions, RainClimate climate, OptionalDouble lagYears) {
        return new CallbackFitter(jobs, assumptions).fit(climate, lagYears);
    }

    private CallbackFit fit(RainClimate climate, OptionalDouble lagYears) {
        ExpectedCalls model = new ExpectedCalls(assumptions, climate, DRAWS);
        jobs.forEach(job -> exposures.put(job, model.of(job.job())));
        JobMix mix = JobMix.of(jobs);
        LevelFit.Prior prior = LevelPrior.of(mix, assumptions, climate, lagYears);
        List<LevelFit.Group> groups =
                Arrays.stream(Method.values()).map(this::group).toList();
        LevelFit fit = LevelFit.of(groups, prior);
        Map<Method, CallbackFit.MethodLevel> methods = new EnumMap<>(Method.class);
        Map<Method, Double> levels = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            int group = method.ordinal();
            levels.put(method, fit.level(group).mean());
            if (!groups.get(group).jobs().isEmpty()) {
                methods.put(method, level(method, fit, model));
            }
        }
        CallbackFit.Repair repair = repair();
        SeenTable seen = new SeenTable(jobs, exposures, levels, fit.lagYears().mean());
        return new CallbackFit(
                jobs,
                methods,
                fit,
                fit.shared(),
                fit.lagYears(),
                prior,
                FaultShares.of(mix, assumptions, climate, levels, records(methods)),
                repair,
                seen.rows());
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
                .map(job -> new LevelFit.Job(
                        exposures.get(job),
                        job.years(),
                        job.leaks().stream()
                                .map(call -> job.years(call.called()))
                                .toList()))
                .toList());
    }

    private List<FollowedJob> of(Method method) {
        return jobs.stream().filter(job -> job.job().method() == method).toList();
    }

    private CallbackFit.MethodLevel level(Method method, LevelFit fit, ExpectedCalls model) {
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
                window(own, openings, model),
                KaplanMeier.of(own.stream().map(CallbackFitter::waited).toList()),
                own.stream().map(exposures::get).toList());
    }

    /** Damage expected at a window, mean over all windows of the jobs. */
    private static LaggedExposure window(List<FollowedJob> jobs, int openings, ExpectedCalls model) {
        List<Double> knots = model.of(jobs.get(0).job()).knots();
        double[] sum = new double[knots.size()];
        for (FollowedJob job : jobs) {
            List<Double> expected = model.of(job.job()).expected();
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
