package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;

/**
 * The levels of the methods fitted to one part of the jobs after another: what the model expects of each job, and how far its level may be
 * off, is worked out once.
 */
public final class CallLevels {
    /** Draws a house with which the model is asked. */
    public static final int DRAWS = 64;

    private final Map<String, ExpectedCalls.Damage> damage = new HashMap<>();
    private final LevelFit.Prior prior;

    /** @param jobs all that will be asked about, at least one */
    public CallLevels(List<FollowedJob> jobs, JobHouses houses, Assumptions assumptions, RainClimate climate) {
        ExpectedCalls model = new ExpectedCalls(houses, assumptions, climate, DRAWS);
        jobs.forEach(job -> damage.put(job.job().id(), model.of(job.job())));
        prior = LevelPrior.of(JobMix.of(jobs, houses, assumptions, climate), assumptions, OptionalDouble.empty());
    }

    /** Leak damage that the model expects at the windows of a job, before any fit. */
    public ExpectedCalls.Damage damage(FollowedJob job) {
        return damage.get(job.job().id());
    }

    /** The level by method, in the order of {@link Method}, as these jobs have it; without any: as it is believed before. */
    public LevelFit fit(List<FollowedJob> seen) {
        return LevelFit.of(
                Arrays.stream(Method.values())
                        .map(method -> new LevelFit.Group(seen.stream()
                                .filter(job -> job.job().method() == method)
                                .map(job -> new LevelFit.Job(
                                        damage(job).all(),
                                        job.years(),
                                        job.leaks().stream()
                                                .map(call -> job.years(call.called()))
                                                .toList()))
                                .toList()))
                        .toList(),
                prior);
    }
}
