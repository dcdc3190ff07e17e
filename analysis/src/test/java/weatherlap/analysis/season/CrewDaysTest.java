package weatherlap.analysis.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Validation: the knapsack against every combination there is, and against the bound of its dual. */
class CrewDaysTest {
    private static final int CASES = 400;

    /** The most that jobs from one on can bring in so many days, every combination tried. */
    private static double bruteForce(List<List<JobOption>> jobs, int from, int days) {
        if (from == jobs.size()) {
            return 0;
        }
        double best = bruteForce(jobs, from + 1, days);
        for (JobOption way : jobs.get(from)) {
            if (way.crewDays() <= days) {
                best = Math.max(best, way.grossProfitUsd() + bruteForce(jobs, from + 1, days - way.crewDays()));
            }
        }
        return best;
    }

    @Test
    void bringsAsMuchAsTheBestOfAllCombinations() {
        for (int seed = 0; seed < CASES; seed++) {
            List<List<JobOption>> jobs = MadeJobs.jobs(seed, 7);
            CrewDays days = CrewDays.of(jobs, 25);
            for (int capacity : new int[] {0, 1, 3, 7, 12, 25}) {
                assertThat(days.profitUsd(capacity))
                        .as("seed %d, days %d", seed, capacity)
                        .isEqualTo(bruteForce(jobs, 0, capacity), within(1e-9));
            }
        }
    }

    @Test
    void itsMixFitsAndBringsIt() {
        for (int seed = 0; seed < CASES; seed++) {
            List<List<JobOption>> jobs = MadeJobs.jobs(seed, 30);
            CrewDays days = CrewDays.of(jobs, 60);
            for (int capacity : new int[] {0, 5, 20, 60, 1000}) {
                List<Optional<JobOption>> mix = days.mix(capacity);
                assertThat(mix).hasSameSizeAs(jobs);
                int taken = mix.stream()
                        .flatMap(Optional::stream)
                        .mapToInt(JobOption::crewDays)
                        .sum();
                double profit = mix.stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(JobOption::grossProfitUsd)
                        .sum();
                assertThat(taken).isLessThanOrEqualTo(Math.min(60, capacity));
                assertThat(profit).isEqualTo(days.profitUsd(capacity), within(1e-9));
                for (int j = 0; j < mix.size(); j++) {
                    assertThat(jobs.get(j)).containsAll(mix.get(j).stream().toList());
                }
            }
        }
    }

    /** The bound is met but for what one job is worth, as at most one job is split where days may be (Sinha and Zoltners 1979, from memory). */
    @Test
    void theBoundOfTheDualIsNeverPassedAndNearlyMet() {
        for (int seed = 0; seed < CASES; seed++) {
            List<List<JobOption>> jobs = MadeJobs.jobs(seed, 40);
            double largest = jobs.stream()
                    .flatMap(List::stream)
                    .mapToDouble(JobOption::grossProfitUsd)
                    .max()
                    .orElse(0);
            for (int capacity : new int[] {1, 5, 20, 60}) {
                DayPrice price = DayPrice.of(jobs, capacity);
                double exact = CrewDays.of(jobs, capacity).profitUsd(capacity);
                assertThat(price.usd()).isNotNegative();
                assertThat(price.boundUsd()).isBetween(exact - 1e-6, exact + Math.max(0, largest) + 1e-6);
            }
        }
    }

    /**
     * Worked by hand: two jobs, each 3 days for 900 USD or 1 day for 400; of four days the best is one of each, and a day is worth what the
     * longer way adds, (900 − 400) / 2 = 250 USD.
     */
    @Test
    void theLongWayWhereItPaysForItsDays() {
        List<JobOption> ways = List.of(MadeJobs.way(3, 900), MadeJobs.way(1, 400));
        List<List<JobOption>> jobs = List.of(ways, ways);
        CrewDays days = CrewDays.of(jobs, 10);
        assertThat(days.profitUsd(2)).isEqualTo(800);
        assertThat(days.profitUsd(4)).isEqualTo(1300);
        assertThat(days.profitUsd(10)).isEqualTo(1800);
        assertThat(DayPrice.of(jobs, 4).usd()).isEqualTo(250, within(1e-6));
        assertThat(DayPrice.of(jobs, 6)).isEqualTo(new DayPrice(0, 1800));
        assertThat(days.mix(4).stream().flatMap(Optional::stream).mapToInt(JobOption::crewDays))
                .containsExactlyInAnyOrder(3, 1);
    }

    @Test
    void aJobThatLosesMoneyIsLeftOut() {
        CrewDays days = CrewDays.of(List.of(List.of(MadeJobs.way(1, -5))), 10);
        assertThat(days.mix(10)).containsExactly(Optional.empty());
        assertThat(days.profitUsd(10)).isZero();
    }
}
