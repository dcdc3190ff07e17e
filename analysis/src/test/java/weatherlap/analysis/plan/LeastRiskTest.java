package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts.Way;

/** The least risky ways of openings against all ways there are. All invented. */
class LeastRiskTest {
    private static final int DRAWS = 6;

    /** Ways that are drier in some draws and wetter in others, so that the best at an opening hangs on what is done at the rest. */
    @Test
    void noOtherWaysAreLessRisky() {
        Random random = new Random(26);
        for (int house = 0; house < 300; house++) {
            List<List<Way>> ways = openings(random, 1 + random.nextInt(6), 3);
            assertThat(mean(LeastRisk.of(ways))).isCloseTo(most(ways), within(1e-12));
        }
    }

    /** Whole plans of one kind are best, and every single step from one kind to the other makes things worse. */
    @Test
    void waysThatNeverHelpAreLeftOutBeforeAllAreTried() {
        Way calm = way(0.9, 0.1);
        Way storm = way(0.1, 1);
        Way never = way(0.05, 0.05);
        List<List<Way>> ways = IntStream.range(0, 11)
                .mapToObj(o -> List.of(calm, never, storm))
                .toList();
        assertThat(LeastRisk.of(ways)).containsOnly(storm);
        List<List<Way>> turned = IntStream.range(0, 11)
                .mapToObj(o -> List.of(never, calm, storm))
                .toList();
        assertThat(LeastRisk.of(turned)).containsOnly(storm);
    }

    /** At most 4,096 plans are tried: two ways at each of twelve openings are, a thirteenth is one too many. */
    @Test
    void soManyPlansAreTriedAndNoMore() {
        Way calm = way(0.9, 0.1);
        Way storm = way(0.1, 1);
        assertThat(LeastRisk.of(IntStream.range(0, 12)
                        .mapToObj(o -> List.of(calm, storm))
                        .toList()))
                .containsOnly(storm);
        assertThat(LeastRisk.of(IntStream.range(0, 13)
                        .mapToObj(o -> List.of(calm, storm))
                        .toList()))
                .as("no single change makes it drier")
                .containsOnly(calm);
    }

    @Test
    void beyondThatNoSingleChangeHelps() {
        Random random = new Random(27);
        for (int house = 0; house < 5; house++) {
            List<List<Way>> ways = openings(random, 14, 3);
            List<Way> found = LeastRisk.of(ways);
            double chance = mean(found);
            assertThat(chance)
                    .isGreaterThan(mean(ways.stream().map(open -> open.get(0)).toList()));
            for (int o = 0; o < found.size(); o++) {
                for (Way way : ways.get(o)) {
                    List<Way> other = new ArrayList<>(found);
                    other.set(o, way);
                    assertThat(mean(other)).isLessThanOrEqualTo(chance + 1e-15);
                }
            }
        }
    }

    private static double most(List<List<Way>> ways) {
        List<List<Way>> plans = List.of(List.of());
        for (List<Way> open : ways) {
            List<List<Way>> longer = new ArrayList<>();
            for (List<Way> plan : plans) {
                for (Way way : open) {
                    List<Way> next = new ArrayList<>(plan);
                    next.add(way);
                    longer.add(next);
                }
            }
            plans = longer;
        }
        return plans.stream().mapToDouble(LeastRiskTest::mean).max().orElseThrow();
    }

    private static double mean(List<Way> plan) {
        int draws = plan.get(0).dry().length;
        double sum = 0;
        for (int d = 0; d < draws; d++) {
            double dry = 1;
            for (Way way : plan) {
                dry *= way.dry()[d];
            }
            sum += dry;
        }
        return sum / draws;
    }

    private static List<List<Way>> openings(Random random, int openings, int ways) {
        return IntStream.range(0, openings)
                .mapToObj(o -> IntStream.range(0, ways)
                        .mapToObj(w -> way(random.doubles(DRAWS, 0.2, 1).toArray()))
                        .toList())
                .toList();
    }

    private static Way way(double... dry) {
        return new Way(Method.INSERT, 0, 0, 0, dry, List.of());
    }
}
