package weatherlap.datasets.jobs;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A job, from when and until when a call would have been known, and its calls.
 *
 * @param from the day on which it was finished
 * @param until the last day followed, not before
 * @param calls by day
 */
public record FollowedJob(JobRecord job, LocalDate from, LocalDate until, List<CallRecord> calls) {
    private static final double DAYS_PER_YEAR = 365.25;

    public FollowedJob {
        calls = List.copyOf(calls);
    }

    /** Years followed, 0 or more. */
    public double years() {
        return years(until);
    }

    /** Years from the end of the work to a day. */
    public double years(LocalDate day) {
        return ChronoUnit.DAYS.between(from, day) / DAYS_PER_YEAR;
    }

    /** Opening-years followed. */
    public double openingYears() {
        return job.openings() * years();
    }

    /** The first call for leak damage at each window that has a name, and each at a window that has none. */
    public List<CallRecord> leaks() {
        Set<String> seen = new HashSet<>();
        return calls.stream()
                .filter(CallRecord::isLeakDamage)
                .filter(call -> call.opening().map(seen::add).orElse(true))
                .toList();
    }
}
