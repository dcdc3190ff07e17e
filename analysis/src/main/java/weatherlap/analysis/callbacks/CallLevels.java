package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.List;
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

    private final ExpectedCalls model;
    private final LevelFit.Prior prior;

    /**
     * @param jobs all that will be asked about, at least one
     * @param model of the same houses, assumptions and climate
     */
    public CallLevels(
            List<FollowedJob> jobs,
            ExpectedCalls model,
            JobHouses houses,
            Assumptions assumptions,
            RainClimate climate) {
        this.model = model;
        prior = LevelPrior.of(JobMix.of(jobs, houses, assumptions, climate), assumptions, OptionalDouble.empty());
    }

    /** The level by method, in the order of {@link Method}, as these jobs have it; without any: as it is believed before. */
    public LevelFit fit(List<FollowedJob> seen) {
        return LevelFit.of(
                Arrays.stream(Method.values())
                        .map(method -> new LevelFit.Group(seen.stream()
                                .filter(job -> job.job().method() == method)
                                .map(job -> new LevelFit.Job(
                                        model.of(job.job()).all(),
                                        job.years(),
                                        job.leaks().stream()
                                                .map(call -> job.years(call.called()))
                                                .toList()))
                                .toList()))
                        .toList(),
                prior);
    }
}
