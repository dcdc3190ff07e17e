package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.analysis.plan.MadeHouses.Terms;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/** The search for a plan against every plan there is, on random houses whose openings share causes and siding. All invented. */
class PlanSearchTest {
    private static final int HOUSES = 60;
    private static final int DRAWS = 24;
    private static final House HOUSE = MadeHouses.house(
                    "h", new Terms(10, 300), new Terms(30, 500), MadeHouses.Wall.sound(0, 1, 1))
            .result()
            .house();

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.4, 1})
    void noPlanWithinTheLimitIsCheaper(double riskLimit) {
        Random random = new Random(16);
        int mixed = 0;
        int over = 0;
        for (int h = 0; h < HOUSES; h++) {
            PlanParts parts = house(random, 1 + random.nextInt(10));
            List<OpenMethods> open =
                    parts.openings().stream().map(OpenMethods::of).toList();
            Plan found = new PlanSearch(parts, open).best(riskLimit);
            List<Plan> all = all(parts, open);
            List<Plan> within = all.stream()
                    .filter(plan -> plan.leakProbability() <= riskLimit)
                    .toList();
            if (within.isEmpty()) {
                over++;
                double least =
                        all.stream().mapToDouble(Plan::leakProbability).min().orElseThrow();
                assertThat(found.leakProbability()).isCloseTo(least, within(1e-9));
            } else {
                double least =
                        within.stream().mapToDouble(Plan::horizonCostUsd).min().orElseThrow();
                assertThat(found.leakProbability()).isLessThanOrEqualTo(riskLimit + 1e-9);
                assertThat(found.horizonCostUsd()).isCloseTo(least, within(1e-6));
            }
            assertThat(found.lossBoundUsd()).isZero();
            mixed += found.single().isEmpty() ? 1 : 0;
        }
        assertThat(mixed).isGreaterThan(HOUSES / 20);
        assertThat(over > 0).isEqualTo(riskLimit < 0.3);
    }

    /** Beyond twelve openings a wall not all is tried, and the bound on the loss says how much it may have cost. */
    @Test
    void theLossOnALargeWallIsWithinItsBound() {
        Random random = new Random(17);
        for (int h = 0; h < 3; h++) {
            PlanParts parts = wall(random, 13);
            List<OpenMethods> open =
                    parts.openings().stream().map(OpenMethods::of).toList();
            List<Plan> all = all(parts, open);
            double limit =
                    0.05 + all.stream().mapToDouble(Plan::leakProbability).min().orElseThrow();
            Plan found = new PlanSearch(parts, open).best(limit);
            assertThat(found.leakProbability()).isLessThanOrEqualTo(limit);
            double least = all.stream()
                    .filter(plan -> plan.leakProbability() <= limit)
                    .mapToDouble(Plan::horizonCostUsd)
                    .min()
                    .orElseThrow();
            assertThat(found.lossBoundUsd()).isPositive();
            assertThat(found.horizonCostUsd()).isBetween(least - 1e-6, least + found.lossBoundUsd() + 1e-6);
            assertThat(found.horizonCostUsd() - least).as("in fact").isLessThan(0.01 * least);
        }
    }

    /** However long a wall, so many ways of doing it are kept that a house of thousands of windows is planned in little memory. */
    @Test
    void fewWaysAreKeptOfAVeryLargeWall() {
        PlanParts parts = wall(new Random(18), 150);
        List<OpenMethods> open = parts.openings().stream().map(OpenMethods::of).toList();
        WallOptions options = WallOptions.of(parts.walls().get(0), open);
        assertThat(options.below(Double.POSITIVE_INFINITY, ~0)).hasSizeBetween(150, 64 * 64);
        assertThat(options.below(Double.POSITIVE_INFINITY, ~0))
                .allSatisfy(option -> assertThat(option.ways()).hasSize(150));
        assertThat(new PlanSearch(parts, open).best(1).lossBoundUsd()).isPositive();
    }

    private static List<Plan> all(PlanParts parts, List<OpenMethods> open) {
        List<List<Method>> plans = List.of(List.of());
        for (OpenMethods here : open) {
            plans = plans.stream()
                    .flatMap(plan -> here.open().stream().map(method -> Stream.concat(plan.stream(), Stream.of(method))
                            .toList()))
                    .toList();
        }
        return plans.stream().map(plan -> PlanCost.plan(parts, plan, 0)).toList();
    }

    private static PlanParts wall(Random random, int openings) {
        return house(random, List.of(openings));
    }

    private static PlanParts house(Random random, int openings) {
        List<Integer> walls = new ArrayList<>();
        for (int left = openings; left > 0; left -= walls.get(walls.size() - 1)) {
            walls.add(1 + random.nextInt(left));
        }
        return house(random, walls);
    }

    private static PlanParts house(Random random, List<Integer> walls) {
        double[] weather = uniform(random);
        double[] oldLaps = uniform(random);
        double[] newLaps = uniform(random);
        double risk = 0.6 * random.nextDouble();
        return new PlanParts(
                HOUSE,
                walls.stream()
                        .map(openings -> wall(random, openings, risk, weather, oldLaps, newLaps))
                        .toList(),
                bySet(random, 300),
                uniform(random));
    }

    private static Wall wall(
            Random random, int openings, double risk, double[] weather, double[] oldLaps, double[] newLaps) {
        List<Part> parts = new ArrayList<>();
        for (int o = 0; o < openings; o++) {
            BitSet panels = new BitSet();
            panels.set(3 * o, 3 * o + 2 + random.nextInt(5));
            double exposed = risk * random.nextDouble();
            double share = 0.7 * random.nextDouble();
            boolean fits = random.nextInt(12) > 0;
            parts.add(new Part(
                    HOUSE.elevations().get(0).openings().get(0),
                    panels,
                    List.of(
                            way(Method.FULL_FLANGE, 900 + 300 * random.nextDouble(), exposed * share, weather, newLaps),
                            way(Method.INSERT, 900 + 300 * random.nextDouble(), exposed, weather, oldLaps, fits))));
        }
        return new Wall(HOUSE.elevations().get(0), bySet(random, 60), bySet(random, 15), parts);
    }

    private static Way way(Method method, double usd, double risk, double[] weather, double[] laps, boolean... fits) {
        double[] dry = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            dry[d] = 1 - risk * weather[d] * laps[d];
        }
        double chance = 1 - Arrays.stream(dry).average().orElseThrow();
        boolean all = fits.length == 0 || fits[0];
        return new Way(method, usd, 3000 * chance, 0, dry, all ? List.of() : List.of("no_unit_fits"));
    }

    private static double[] uniform(Random random) {
        return random.doubles(DRAWS).toArray();
    }

    /** More methods cost no less. */
    private static double[] bySet(Random random, double most) {
        double full = most * random.nextDouble();
        double insert = most * random.nextDouble();
        double both = Math.max(full, insert) + 0.5 * Math.min(full, insert);
        int flange = PlanParts.mask(Set.of(Method.FULL_FLANGE));
        int small = PlanParts.mask(Set.of(Method.INSERT));
        double[] usd = new double[1 << Method.values().length];
        for (int set = 0; set < usd.length; set++) {
            boolean flanged = (set & flange) > 0;
            boolean inserted = (set & small) > 0;
            usd[set] = flanged && inserted ? both : flanged ? full : inserted ? insert : 0;
        }
        return usd;
    }
}
