package weatherlap.analysis.season;

import java.util.List;

/**
 * What one more crew day is worth under the best mix. Were each day to be paid for at a price π, every job would be done in the way that
 * earns most beyond the days it takes, and
 *
 * <pre>
 *   bound(π) = π · days + Σ_job max(0, max_o profit_o − π · days_o)
 * </pre>
 *
 * is never less than the best mix earns. The price is the π of the least bound: the price of a day at which the jobs just fill the season.
 *
 * @param usd price of a crew day; 0 where days are left over
 * @param boundUsd the least bound, which no mix can pass
 * @see "Kellerer, Pferschy, Pisinger, Knapsack Problems (2004), chapter 11: the linear relaxation and its dual"
 */
public record DayPrice(double usd, double boundUsd) {
    private static final int HALVINGS = 100;

    /** @param jobs the ways of each */
    static DayPrice of(List<List<JobOption>> jobs, int days) {
        double low = 0;
        double high = jobs.stream()
                .flatMap(List::stream)
                .mapToDouble(way -> way.grossProfitUsd() / way.crewDays())
                .max()
                .orElse(0);
        if (high <= 0 || daysTaken(jobs, 0) <= days) {
            return new DayPrice(0, bound(jobs, days, 0));
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (daysTaken(jobs, middle) > days) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new DayPrice(high, bound(jobs, days, high));
    }

    /** Days that the jobs would take at a price of a day; of ways that earn the same beyond it, the shortest. */
    private static long daysTaken(List<List<JobOption>> jobs, double price) {
        long taken = 0;
        for (List<JobOption> ways : jobs) {
            double most = 0;
            int days = 0;
            for (JobOption way : ways) {
                double beyond = way.grossProfitUsd() - price * way.crewDays();
                if (beyond > most || beyond == most && way.crewDays() < days) {
                    most = beyond;
                    days = way.crewDays();
                }
            }
            taken += days;
        }
        return taken;
    }

    private static double bound(List<List<JobOption>> jobs, int days, double price) {
        double bound = price * days;
        for (List<JobOption> ways : jobs) {
            bound += ways.stream().mapToDouble(way -> way.grossProfitUsd() - price * way.crewDays()).max().stream()
                    .map(most -> Math.max(0, most))
                    .sum();
        }
        return bound;
    }
}
