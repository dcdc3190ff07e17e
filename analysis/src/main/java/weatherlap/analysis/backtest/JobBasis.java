package weatherlap.analysis.backtest;

import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.analysis.callbacks.ExpectedCalls;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStock;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.assumptions.Driver;

/**
 * A job and what is foreseen from, which holds nothing of what came of it.
 *
 * @param job with its outcome
 * @param work as it was known beforehand
 * @param stock likewise
 * @param seenWork with what came of it, for fits that foresee others
 * @param seenStock likewise
 * @param followed empty: nobody kept how long
 * @param leak damage that the tables expect
 */
record JobBasis(
        JobRecord job,
        JobWork work,
        JobStock stock,
        JobWork seenWork,
        JobStock seenStock,
        Optional<FollowedJob> followed,
        ExpectedCalls.Damage damage) {
    /** What came; empty: not kept. */
    OptionalDouble came(JobAmount amount) {
        return switch (amount) {
            case HOURS -> job.personHours();
            case DAYS -> job.counted().of(Driver.DAY);
            case MATERIAL -> job.money().materialUsd();
            case PRICE -> job.money().priceUsd();
            case CALLS -> followed.map(f -> OptionalDouble.of(f.leaks().size())).orElse(OptionalDouble.empty());
        };
    }
}
