package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Way;

/** The search within a limit on options written down by chance, against all combinations of them. All invented. */
class LimitedSearchTest {
    private static final int DRAWS = 8;
    /** Of those that follow, the hardest takes between six and ten thousand. */
    private static final int LOOKS = 10_000;

    private static final double[] SETUPS = {0, 30, 20, 45, 25, 50, 40, 60};

    /** Options of some walls, and what the driest of each costs together. */
    private record Case(List<List<WallOption>> walls, double leastDry) {
        static Case of(Random random, int walls, int options, double wetness) {
            List<List<WallOption>> all = IntStream.range(0, walls)
                    .mapToObj(w -> IntStream.range(0, options)
                            .mapToObj(o -> option(random, wetness))
                            .toList())
                    .toList();
            double driest = PlanSearch.mean(product(driest(all)));
            return new Case(all, driest * (0.9 + 0.09 * random.nextDouble()));
        }

        LimitedSearch searched(int mostLooks) {
            List<WallOption> reference = driest(walls);
            LimitedSearch search = new LimitedSearch(
                    walls.stream().map(LimitedSearchTest::wall).toList(),
                    SETUPS,
                    leastDry,
                    reference.stream().map(WallOption::dry).toList(),
                    usd(reference),
                    mostLooks);
            for (int set : new int[] {1, 2, 4, 3, 5, 6, 7}) {
                search.over(set, Double.POSITIVE_INFINITY);
            }
            return search;
        }

        /** The least cost of all combinations that keep the limit. */
        double least() {
            double[] ones = new double[DRAWS];
            Arrays.fill(ones, 1);
            return least(0, 0, 0, ones);
        }

        private double least(int wall, int methods, double spent, double[] dry) {
            if (wall == walls.size()) {
                return PlanSearch.mean(dry) >= leastDry ? spent + SETUPS[methods] : Double.POSITIVE_INFINITY;
            }
            double least = Double.POSITIVE_INFINITY;
            for (WallOption option : walls.get(wall)) {
                double[] next = dry.clone();
                PlanCost.times(next, option.dry());
                least = Math.min(least, least(wall + 1, methods | option.methods(), spent + option.usd(), next));
            }
            return least;
        }
    }

    @Test
    void nothingWithinTheLimitIsCheaper() {
        Random random = new Random(28);
        int cheaper = 0;
        for (int i = 0; i < 300; i++) {
            Case some = Case.of(random, 1 + random.nextInt(4), 1 + random.nextInt(6), 0.5);
            LimitedSearch search = some.searched(LimitedSearch.MOST_LOOKS);
            assertThat(search.usd()).isCloseTo(some.least(), within(1e-9));
            assertThat(search.lossBoundUsd()).isZero();
            if (!search.best().isEmpty()) {
                cheaper++;
                assertThat(usd(search.best())).isCloseTo(search.usd(), within(1e-9));
                assertThat(PlanSearch.mean(product(search.best()))).isGreaterThanOrEqualTo(some.leastDry - 1e-9);
            }
        }
        assertThat(cheaper).isGreaterThan(100);
    }

    /** Five ways of each of twelve walls are 244 million plans; the bounds leave some thousand looks. */
    @Test
    void theBoundsKeepTheSearchShort() {
        Random random = new Random(29);
        for (int i = 0; i < 8; i++) {
            LimitedSearch search = Case.of(random, 12, 5, 0.04).searched(LOOKS);
            assertThat(search.best()).hasSize(12);
            assertThat(search.lossBoundUsd()).isZero();
        }
    }

    /** However early the search ends, it says how much it may have lost. */
    @Test
    void aSearchThatIsCutOffSaysWhatItMayHaveLost() {
        Random random = new Random(30);
        int cutOff = 0;
        int lost = 0;
        for (int i = 0; i < 200; i++) {
            Case some = Case.of(random, 5, 4, 0.6);
            LimitedSearch search = some.searched(random.nextInt(12));
            double least = some.least();
            assertThat(search.usd()).isGreaterThanOrEqualTo(least - 1e-9);
            assertThat(search.usd() - search.lossBoundUsd()).isLessThanOrEqualTo(least + 1e-9);
            cutOff += search.lossBoundUsd() > 0 ? 1 : 0;
            lost += search.usd() > least + 1e-9 ? 1 : 0;
        }
        assertThat(lost).isPositive();
        assertThat(cutOff).isBetween(lost, 199);
    }

    private static List<WallOption> driest(List<List<WallOption>> walls) {
        return walls.stream()
                .map(wall -> wall.stream()
                        .max(Comparator.comparingDouble(option -> PlanSearch.mean(option.dry())))
                        .orElseThrow())
                .toList();
    }

    private static double usd(List<WallOption> plan) {
        return plan.stream().mapToDouble(WallOption::usd).sum()
                + SETUPS[plan.stream().mapToInt(WallOption::methods).reduce(0, (a, b) -> a | b)];
    }

    private static double[] product(List<WallOption> plan) {
        List<Way> ways = new ArrayList<>();
        plan.forEach(option -> ways.addAll(option.ways()));
        return LeastRisk.product(ways);
    }

    private static WallOptions wall(List<WallOption> options) {
        return new SomeWays(
                options, options.stream().mapToDouble(WallOption::usd).min().orElseThrow());
    }

    private static WallOption option(Random random, double wetness) {
        Method method = Method.values()[random.nextInt(3)];
        double[] dry = random.doubles(DRAWS).map(u -> 1 - wetness * u).toArray();
        return option(method, 1000 + 400 * random.nextDouble(), dry);
    }

    private static WallOption option(Method method, double usd, double... dry) {
        return new WallOption(
                List.of(new Way(method, usd, 0, 0, dry, List.of())), PlanParts.mask(List.of(method)), usd);
    }
}
