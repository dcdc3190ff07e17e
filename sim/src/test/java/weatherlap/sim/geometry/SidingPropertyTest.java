package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.quantity.SidingRun;

class SidingPropertyTest {

    /** Walls with up to six openings, which stand side by side in strips and so do not overlap. Measures in eighths of an inch. */
    @Provide
    Arbitrary<Elevation> walls() {
        Arbitrary<Double> shares = Arbitraries.integers().between(0, 80).map(n -> n / 80.0);
        return Combinators.combine(
                        Arbitraries.integers().between(20, 60),
                        Arbitraries.integers().between(9, 30),
                        Arbitraries.integers().between(24, 128).map(n -> n / 8.0),
                        Arbitraries.integers().between(192, 2400).map(n -> n / 8.0),
                        shares.list().ofMinSize(0).ofMaxSize(6),
                        shares.list().ofSize(6))
                .as(SidingPropertyTest::wall);
    }

    private static Elevation wall(
            int widthFt, int eaveFt, double exposureIn, double panelIn, List<Double> across, List<Double> up) {
        List<Opening> openings = new ArrayList<>();
        double stripIn = widthFt * 12.0 / 6;
        for (int i = 0; i < across.size(); i++) {
            double widthIn = eighths(8 + across.get(i) * (stripIn - 16));
            double sillIn = eighths(up.get(i) * (eaveFt * 12 - 60));
            double heightIn = eighths(8 + across.get(across.size() - 1 - i) * 51);
            openings.add(Measured.frame(widthIn, heightIn)
                    .at(eighths(i * stripIn + up.get(i) * (stripIn - widthIn)), sillIn)
                    .opening());
        }
        return Measured.wall(widthFt, eaveFt, exposureIn, panelIn, openings);
    }

    private static double eighths(double in) {
        return Math.floor(in * 8) / 8;
    }

    @Property(tries = 25)
    void thePanelsCoverTheWallAsAnotherLibrarySeesThem(@ForAll("walls") Elevation wall) {
        SidingPlan plan = SidingPlan.of(wall, wall.openings());
        List<Rect> rects = plan.panels().stream().map(SidingPanel::rect).toList();
        Rect whole = new Rect(0, 0, wall.widthIn(), wall.eaveHeightIn());

        assertThat(Jts.union(rects).getArea()).isEqualTo(whole.areaIn2(), within(1e-4));
        assertThat(rects).allMatch(rect -> !rect.isEmpty());
        assertThat(rects)
                .allMatch(rect -> rect.widthIn() <= wall.panelLengthIn().getAsDouble() + 1e-9);
    }

    /** Down: what shares area with an opening, and what shares area with the opening's width in the course above its highest. */
    @Property(tries = 2000)
    void thePanelsDownAreThoseThatAnotherLibraryFinds(@ForAll("walls") Elevation wall) {
        SidingPlan plan = SidingPlan.of(wall, wall.openings());
        STRtree tree = new STRtree();
        plan.panels().forEach(panel -> tree.insert(Jts.of(panel.rect()).getEnvelopeInternal(), panel));
        Set<SidingPanel> expected = new HashSet<>();
        int apart = 0;
        for (Opening opening : wall.openings()) {
            Set<SidingPanel> met = meeting(tree, rect(opening));
            int highest = met.stream().mapToInt(SidingPanel::course).max().orElseThrow();
            double exposureIn = wall.courseExposureIn().getAsDouble();
            Rect above = new Rect(
                    opening.place().leftIn(),
                    (highest + 1) * exposureIn + 0.1,
                    opening.frame().widthIn(),
                    exposureIn - 0.2);
            Set<SidingPanel> own = new HashSet<>(met);
            own.addAll(meeting(tree, above));
            apart += own.size();
            expected.addAll(own);
        }

        assertThat(plan.takenDown()).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(plan.panelsDown()).isEqualTo(expected.size());
        assertThat(plan.panelsOneAtATime()).isEqualTo(apart);
    }

    /** Each opening stands in one run; runs share no panel, and a run could not be split in two that share none. */
    @Property(tries = 300)
    void runsShareNoPanelAndCannotBeSplit(@ForAll("walls") Elevation wall) {
        List<SidingRun> runs = SidingRuns.of(
                Measured.house(Cladding.VINYL_SIDING, wall),
                wall,
                java.util.Collections.nCopies(wall.openings().size(), true));
        assertThat(runs.stream().flatMap(run -> run.openings().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, wall.openings().size()).boxed().toList());
        assertThat(runs.stream().mapToDouble(SidingRun::panels).sum())
                .isEqualTo(SidingPlan.of(wall, wall.openings()).panelsDown());
        for (SidingRun run : runs) {
            List<Opening> own =
                    run.openings().stream().map(wall.openings()::get).toList();
            assertThat(run.panels()).isEqualTo(SidingPlan.of(wall, own).panelsDown());
            for (int one = 0; one < own.size() && own.size() > 1; one++) {
                List<Opening> others = new ArrayList<>(own);
                SidingPlan alone = SidingPlan.of(wall, List.of(others.remove(one)));
                assertThat(alone.panelsDown() + SidingPlan.of(wall, others).panelsDown())
                        .isGreaterThan((int) run.panels());
            }
        }
    }

    /** Siding comes down for some openings as if the others were not there. */
    @Property(tries = 100)
    void anOpeningWhoseSidingStaysIsARunWithoutPanels(@ForAll("walls") Elevation wall, @ForAll int bits) {
        List<Boolean> down = IntStream.range(0, wall.openings().size())
                .mapToObj(o -> (bits >> o & 1) == 1)
                .toList();
        List<SidingRun> runs = SidingRuns.of(Measured.house(Cladding.VINYL_SIDING, wall), wall, down);
        assertThat(runs.stream().flatMap(run -> run.openings().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, down.size()).boxed().toList());
        List<Opening> opened = IntStream.range(0, down.size())
                .filter(down::get)
                .mapToObj(wall.openings()::get)
                .toList();
        assertThat(runs.stream().mapToDouble(SidingRun::panels).sum())
                .isEqualTo(SidingPlan.of(wall, opened).panelsDown());
        assertThat(runs).filteredOn(run -> !down.get(run.openings().get(0))).allSatisfy(run -> {
            assertThat(run.openings()).hasSize(1);
            assertThat(run.panels()).isZero();
        });
    }

    @Property(tries = 300)
    void oneMoreOpeningNeverLowersThePanelsDown(@ForAll("walls") Elevation wall) {
        int before = 0;
        for (int count = 0; count <= wall.openings().size(); count++) {
            SidingPlan plan = SidingPlan.of(wall, wall.openings().subList(0, count));
            assertThat(plan.panelsDown()).isGreaterThanOrEqualTo(before);
            assertThat(plan.panelsDown()).isLessThanOrEqualTo(plan.panelsOneAtATime());
            before = plan.panelsDown();
        }
    }

    @Property(tries = 100)
    void jointsDoNotStandInLineWithinThreeCourses(@ForAll("walls") Elevation wall) {
        SidingLayout layout = SidingLayout.of(wall).orElseThrow();
        for (int course = 0; course < layout.courses(); course++) {
            for (int above = course + 1; above <= Math.min(course + 3, layout.courses() - 1); above++) {
                assertThat(joints(layout, course)).doesNotContainAnyElementsOf(joints(layout, above));
            }
        }
    }

    private static List<Long> joints(SidingLayout layout, int course) {
        List<Long> joints = new ArrayList<>();
        for (int place = 1; place < layout.panels(course); place++) {
            joints.add(Math.round(layout.panel(course, place).leftIn() * 1000));
        }
        joints.add(-1L - course);
        return joints;
    }

    private static Rect rect(Opening opening) {
        return new Rect(
                opening.place().leftIn(),
                opening.place().sillHeightIn(),
                opening.frame().widthIn(),
                opening.frame().heightIn());
    }

    private static Set<SidingPanel> meeting(STRtree tree, Rect rect) {
        Geometry shape = Jts.of(rect);
        Set<SidingPanel> met = new HashSet<>();
        for (Object found : tree.query(shape.getEnvelopeInternal())) {
            SidingPanel panel = (SidingPanel) found;
            if (Jts.of(panel.rect()).intersection(shape).getArea() > 1e-6) {
                met.add(panel);
            }
        }
        return met;
    }
}
