package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import weatherlap.sim.labour.DayPlan.Run;
import weatherlap.sim.labour.DayPlan.Stint;
import weatherlap.sim.labour.DayPlan.Wall;

class DayPlanTest {
    /** Openings of a crew of one, each a run by itself. */
    private static Wall wall(double... minutes) {
        return new Wall(
                0,
                IntStream.range(0, minutes.length)
                        .mapToObj(i -> new Run(List.of(i), 0, List.of(minutes[i])))
                        .toList());
    }

    private static Wall tied(double setup, double siding, Double... minutes) {
        List<Integer> openings = IntStream.range(0, minutes.length).boxed().toList();
        return new Wall(setup, List.of(new Run(openings, siding, Arrays.asList(minutes))));
    }

    private static DayPlan plan(double dayMinutes, double house, Wall... walls) {
        return DayPlan.of(dayMinutes, 1, house, List.of(walls));
    }

    /** 3 × 200 min are 600 min, which a division would put into 1.5 days of 400; only one whole opening fits into a day of 390. */
    @Test
    void anOpeningIsNotLeftOpenOvernight() {
        assertThat(plan(390, 0, wall(200, 200, 200)).dayOfOpening()).containsExactly(1, 2, 3);
        assertThat(plan(400, 0, wall(200, 200, 200)).days()).isEqualTo(2);
    }

    @Test
    void whatTheHouseNeedsFillsTheTimeThatIsLeft() {
        assertThat(plan(390, 380, wall(200, 200)).days()).isEqualTo(2);
        assertThat(plan(390, 381, wall(200, 200)).days()).isEqualTo(3);
        assertThat(plan(400, 900, wall(100)).days()).isEqualTo(3);
    }

    /** Three windows that one siding ties together take 330: they wait for the morning, a small wall goes before. */
    @Test
    void aWallThatDoesNotFitIntoTheRestOfADayWaitsForTheMorning() {
        DayPlan plan = plan(400, 0, tied(20, 60, 100.0, 100.0, 100.0), tied(0, 0, 250.0), tied(0, 0, 100.0));
        assertThat(plan.dayOfOpening()).containsExactly(1, 1, 1, 2, 2);
    }

    /** Two runs of 200 and 100, set-up 50: the first still fits into the 250 that are left, the second is done next morning. */
    @Test
    void aLargeWallIsSplitBetweenItsRuns() {
        Wall large = new Wall(
                50,
                List.of(new Run(List.of(1), 40, List.of(150.0)), new Run(List.of(0, 2), 100, List.of(100.0, 100.0))));
        DayPlan plan = plan(400, 0, tied(0, 0, 600.0), large);
        assertThat(plan.stints())
                .containsExactly(
                        new Stint(1, 1, 0, List.of(0), true, false),
                        new Stint(2, 1, 0, List.of(), false, true),
                        new Stint(3, 1, 1, List.of(1), true, true),
                        new Stint(4, 1, 1, List.of(0, 2), true, true));
        assertThat(plan(450, 0, tied(0, 0, 600.0), large).stints().get(2))
                .isEqualTo(new Stint(2, 1, 1, List.of(1), true, true));
    }

    /** 60 + 4 × 150 in days of 400: siding off and two windows, then two windows and siding back. */
    @Test
    void sidingOfARunLongerThanADayStaysDownOvernightButNoOpeningDoes() {
        DayPlan plan = plan(400, 0, tied(0, 60, 150.0, 150.0, 150.0, 150.0));
        assertThat(plan.stints())
                .containsExactly(
                        new Stint(1, 1, 0, List.of(0, 1), true, false), new Stint(2, 1, 0, List.of(2, 3), false, true));
    }

    /** 100 + 400 ÷ 2 leave 100 of the first day: no window fits; two are done on the second, and 200 of siding do not fit into its rest. */
    @Test
    void halfOfTheSidingComesDownBeforeTheWindowsAndHalfGoesBackAfterThem() {
        assertThat(plan(400, 0, tied(100, 400, 150.0, 150.0)).stints())
                .containsExactly(
                        new Stint(1, 1, 0, List.of(), true, false),
                        new Stint(2, 1, 0, List.of(0, 1), false, false),
                        new Stint(3, 1, 0, List.of(), false, true));
    }

    @Test
    void aSmallWallFillsTheRestOfADay() {
        assertThat(plan(400, 0, tied(0, 0, 300.0), tied(0, 0, 250.0), tied(0, 0, 90.0))
                        .dayOfOpening())
                .containsExactly(1, 2, 1);
    }

    /** Of two teams of two people, 150 and 250 min are left when two walls are done: the third goes to the second team. */
    @Test
    void theTeamWithMoreOfItsDayLeftTakesTheNextWall() {
        DayPlan plan = DayPlan.of(
                400, 4, 0, List.of(tied(0, 0, 500.0), tied(0, 0, 300.0), tied(0, 0, 250.0), tied(0, 0, 200.0)));
        assertThat(plan.stints())
                .extracting(Stint::team, Stint::wall)
                .containsExactly(tuple(1, 0), tuple(1, 3), tuple(2, 1), tuple(2, 2));
    }

    @Test
    void aWallWithoutWindowsTakesNoTime() {
        assertThat(plan(400, 300, new Wall(300, List.of()), wall(100)).days()).isEqualTo(1);
    }

    /** A crew of four is two teams of two: 400 person-minutes a wall are 200 of a team, so two walls are done by noon. */
    @Test
    void aLargerCrewRunsTwoWalls() {
        List<Wall> walls = Collections.nCopies(4, tied(0, 0, 400.0));
        DayPlan plan = DayPlan.of(400, 4, 0, walls);
        assertThat(plan.days()).isEqualTo(1);
        assertThat(plan.stints()).extracting(Stint::team).containsExactly(1, 1, 2, 2);
        assertThat(DayPlan.of(400, 3, 0, walls).dayOfOpening()).containsExactly(1, 1, 2, 2);
        assertThat(DayPlan.of(400, 2, 0, walls).days()).isEqualTo(2);
    }

    @Test
    void aDayWithoutTimeIsRefusedAndAHouseTakesADay() {
        assertThatThrownBy(() -> plan(0, 0, wall(1))).isInstanceOf(IllegalArgumentException.class);
        assertThat(plan(400, 0).days()).isEqualTo(1);
    }

    @Provide
    Arbitrary<List<Wall>> houses() {
        Arbitrary<Double> minutes = Arbitraries.doubles().between(20, 500);
        Arbitrary<Integer> sizes = Arbitraries.integers().between(1, 4);
        Arbitrary<Wall> walls = sizes.list().ofMaxSize(4).flatMap(runs -> minutes.list()
                .ofSize(runs.stream().mapToInt(n -> n).sum() + runs.size() + 1)
                .map(m -> wall(runs, m)));
        return walls.list().ofMaxSize(5);
    }

    private static Wall wall(List<Integer> sizes, List<Double> minutes) {
        List<Run> runs = new ArrayList<>();
        int opening = 0;
        int at = 1;
        for (int size : sizes) {
            List<Integer> openings =
                    IntStream.range(opening, opening + size).boxed().toList();
            runs.add(new Run(openings, minutes.get(at) / 5, minutes.subList(at + 1, at + 1 + size)));
            opening += size;
            at += size + 1;
        }
        return new Wall(minutes.get(0) / 10, runs);
    }

    /**
     * Siding comes down once and goes back once for every run; a team does not leave a wall that it has begun; a run that fits into a
     * day is opened and closed on one; each opening is begun once.
     */
    @Property(tries = 1000)
    void noPlanOpensAWallTwice(@ForAll("houses") List<Wall> walls, @ForAll @IntRange(min = 1, max = 5) int crew) {
        DayPlan plan = DayPlan.of(400, crew, 100, walls);
        Map<List<Integer>, List<Stint>> ofWall = new HashMap<>();
        plan.stints().forEach(s -> ofWall.computeIfAbsent(List.of(s.wall()), none -> new ArrayList<>())
                .add(s));
        for (int w = 0; w < walls.size(); w++) {
            List<Stint> stints = ofWall.getOrDefault(List.of(w), List.of());
            List<Run> runs = walls.get(w).runs();
            assertThat(stints.stream().filter(Stint::opens)).hasSize(runs.size());
            assertThat(stints.stream().filter(Stint::closes)).hasSize(runs.size());
            assertThat(stints.stream().flatMap(s -> s.openings().stream())).doesNotHaveDuplicates();
            assertThat(stints.stream().map(Stint::team).distinct()).hasSizeLessThanOrEqualTo(1);
            for (Run run : runs) {
                double people = crew < 3 ? crew : crew / 2.0;
                if ((run.minutes() + walls.get(w).setup()) / people <= 400) {
                    assertThat(stints)
                            .filteredOn(s -> s.openings().equals(run.openings()))
                            .singleElement()
                            .matches(s -> s.opens() && s.closes());
                }
            }
        }
        for (int team = 1; team <= 2; team++) {
            int own = team;
            Set<Integer> left = new HashSet<>();
            int at = -1;
            for (Stint stint :
                    plan.stints().stream().filter(s -> s.team() == own).toList()) {
                assertThat(left).doesNotContain(stint.wall());
                if (at >= 0 && stint.wall() != at) {
                    left.add(at);
                }
                at = stint.wall();
            }
        }
    }

    @Property(tries = 300)
    void neverFewerDaysThanTheMinutesNeedNorTwiceAsManyAndAFew(@ForAll("houses") List<Wall> walls) {
        double total = 100
                + walls.stream()
                        .filter(wall -> !wall.runs().isEmpty())
                        .mapToDouble(Wall::minutes)
                        .sum();
        int days = plan(400, 100, walls.toArray(Wall[]::new)).days();
        assertThat(days).isGreaterThanOrEqualTo((int) Math.ceil(total / 400 - 1e-9));
        assertThat(days).isLessThanOrEqualTo((int) Math.ceil(2 * total / 400) + 1 + walls.size());
    }

    @Property(tries = 100)
    void theOrderOfTheTableDoesNotChangeTheDays(@ForAll("houses") List<Wall> walls) {
        List<Wall> turned = new ArrayList<>(walls);
        Collections.reverse(turned);
        assertThat(plan(400, 30, turned.toArray(Wall[]::new)).days())
                .isEqualTo(plan(400, 30, walls.toArray(Wall[]::new)).days());
    }
}
