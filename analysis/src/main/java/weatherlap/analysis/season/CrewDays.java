package weatherlap.analysis.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The most gross profit that crew days allow, exactly: a knapsack in which each job is left out or done in one of its ways. With V_j(c) the
 * most that the first j jobs bring in c days,
 *
 * <pre>
 *   V_j(c) = max(V_{j−1}(c), max_o V_{j−1}(c − days_jo) + profit_jo)
 * </pre>
 *
 * which takes time and memory of jobs times days (and of time, times the ways of a job). All days up to the largest are known at once.
 *
 * @see "Kellerer, Pferschy, Pisinger, Knapsack Problems (2004), chapter 11: the multiple-choice knapsack problem; dynamic programming"
 */
@SuppressWarnings("ArrayRecordComponent") // rows of the table
final class CrewDays {
    private final List<List<JobOption>> jobs;
    private final double[] best;
    private final byte[][] taken;

    private CrewDays(List<List<JobOption>> jobs, double[] best, byte[][] taken) {
        this.jobs = jobs;
        this.best = best;
        this.taken = taken;
    }

    /**
     * @param jobs the ways of each, at most 100
     * @param most crew days, 0 or more
     */
    static CrewDays of(List<List<JobOption>> jobs, int most) {
        int needed = Math.toIntExact(Math.min(
                most,
                jobs.stream()
                        .mapToLong(ways -> ways.stream()
                                .mapToInt(JobOption::crewDays)
                                .max()
                                .orElse(0))
                        .sum()));
        double[] best = new double[needed + 1];
        byte[][] taken = new byte[jobs.size()][needed + 1];
        for (int j = 0; j < taken.length; j++) {
            JobOption[] ways = jobs.get(j).toArray(JobOption[]::new);
            for (int c = needed; c >= 0; c--) {
                double found = best[c];
                for (int o = 0; o < ways.length; o++) {
                    int days = ways[o].crewDays();
                    double with = days <= c ? best[c - days] + ways[o].grossProfitUsd() : Double.NEGATIVE_INFINITY;
                    if (with > found) {
                        found = with;
                        taken[j][c] = (byte) (o + 1);
                    }
                }
                best[c] = found;
            }
        }
        return new CrewDays(jobs, best, taken);
    }

    /** The most that so many days bring, USD. */
    double profitUsd(int days) {
        return best[Math.min(days, best.length - 1)];
    }

    /** A way for each job that brings it; empty: left out. */
    List<Optional<JobOption>> mix(int days) {
        List<Optional<JobOption>> mix = new ArrayList<>();
        int left = Math.min(days, best.length - 1);
        for (int j = jobs.size() - 1; j >= 0; j--) {
            int way = taken[j][left];
            Optional<JobOption> chosen =
                    way == 0 ? Optional.empty() : Optional.of(jobs.get(j).get(way - 1));
            left -= chosen.map(JobOption::crewDays).orElse(0);
            mix.add(0, chosen);
        }
        return mix;
    }
}
