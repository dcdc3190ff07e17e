package weatherlap.analysis.backtest;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobRecord;

/**
 * The plain average: what a window took in the other jobs by that method, times the windows; as wide as those jobs were apart. Where none was
 * by that method, of all.
 */
record WindowAverage(List<Done> done) {
    /** A job and what came of it. */
    record Done(JobRecord job, Function<JobAmount, OptionalDouble> came, FollowedJob followed) {}

    boolean knows(JobAmount amount) {
        return done.stream().anyMatch(job -> job.came().apply(amount).isPresent());
    }

    Forecast of(JobRecord job, JobAmount amount) {
        List<Done> same = done.stream()
                .filter(other -> other.job().method() == job.method())
                .toList();
        double[] windows = windows(same, amount);
        if (windows.length == 0) {
            windows = windows(done, amount);
        }
        double[] all = windows;
        Forecast each = all.length <= Forecast.POINTS
                ? Forecast.of(all)
                : Forecast.ofQuantiles(share -> StatUtils.percentile(all, 100 * share));
        return each.map(window ->
                amount == JobAmount.DAYS ? Math.max(1, Math.rint(job.openings() * window)) : job.openings() * window);
    }

    private static double[] windows(List<Done> jobs, JobAmount amount) {
        return jobs.stream()
                .filter(other -> other.came().apply(amount).isPresent())
                .mapToDouble(other ->
                        other.came().apply(amount).getAsDouble() / other.job().openings())
                .toArray();
    }

    /** Calls come at the mean rate a window-year. */
    Forecast calls(FollowedJob job) {
        List<FollowedJob> followed = done.stream()
                .map(Done::followed)
                .filter(other ->
                        other != null && other.job().method() == job.job().method())
                .toList();
        double years = followed.stream().mapToDouble(FollowedJob::openingYears).sum();
        double calls = followed.stream().mapToInt(other -> other.leaks().size()).sum();
        return Forecast.count(years == 0 ? 0 : calls / years * job.openingYears(), 0);
    }
}
