package weatherlap.datasets.jobs;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One service call after a job.
 *
 * @param jobId the job it was about
 * @param opening which window, as the shop names it; empty: not kept
 * @param called day of the call
 * @param cause what was found; empty: not kept
 * @param damage whether water had done damage; empty: not kept
 * @param costUsd what mending cost, USD; empty: not kept
 * @param paidBy empty: not kept
 */
public record CallRecord(
        String jobId,
        Optional<String> opening,
        LocalDate called,
        Optional<Cause> cause,
        Optional<Boolean> damage,
        OptionalDouble costUsd,
        Optional<PaidBy> paidBy) {
    /** What a call was about. */
    public enum Cause {
        LEAK,
        AIR,
        HARDWARE,
        GLASS,
        OTHER
    }

    /** Who paid for it. */
    public enum PaidBy {
        SHOP,
        FAMILY,
        MAKER,
        INSURER
    }

    /** Whether it tells of leak damage: a leak of which nobody says that it had done none. */
    public boolean isLeakDamage() {
        return cause.filter(found -> found == Cause.LEAK).isPresent() && damage.orElse(true);
    }
}
