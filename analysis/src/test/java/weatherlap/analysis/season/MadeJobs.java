package weatherlap.analysis.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import weatherlap.analysis.plan.Plan;

/** Ways to do invented jobs, of two draws: one in which the work takes half as long again, one in which it takes half as long. */
final class MadeJobs {
    private static final Plan NONE = new Plan(List.of(), 0, 0, 0, 0);

    private MadeJobs() {}

    static JobOption way(int days, double profitUsd) {
        return new JobOption(
                NONE, days, profitUsd, 0, 0, new double[] {profitUsd - 100, profitUsd + 100}, new double[] {1.5, 0.5});
    }

    /** Some jobs of up to three ways of 1 to 5 days; one in ten loses money. */
    static List<List<JobOption>> jobs(int seed, int most) {
        Random random = new Random(seed);
        List<List<JobOption>> jobs = new ArrayList<>();
        int count = 1 + random.nextInt(most);
        for (int j = 0; j < count; j++) {
            List<JobOption> ways = new ArrayList<>();
            int choices = 1 + random.nextInt(3);
            for (int o = 0; o < choices; o++) {
                ways.add(way(1 + random.nextInt(5), Math.rint(1000 * (random.nextDouble() - 0.1))));
            }
            jobs.add(ways);
        }
        return jobs;
    }
}
