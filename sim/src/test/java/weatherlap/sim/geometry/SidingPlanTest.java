package weatherlap.sim.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;

/** A wall of 10 ft by 8 ft in courses of 4 in., one panel wide, so that courses can be counted by hand. */
class SidingPlanTest {
    private static final Elevation NARROW = Measured.wall(10, 8, 4, 144, List.of());

    /** ⌈top/4⌉ − ⌊bottom/4⌋ and one above; an edge on the boundary of two courses belongs to the course it closes or opens. */
    @ParameterizedTest
    @CsvSource({"20, 40, 6", "20.1, 39.9, 6", "19.9, 40.1, 8", "22, 38, 6", "20, 40.1, 7", "19.9, 40, 7"})
    void coursesAreThoseMetAndOneAbove(double bottomIn, double topIn, int courses) {
        Opening opening = Measured.frame(30, topIn - bottomIn).at(10, bottomIn).opening();

        assertThat(SidingPlan.of(NARROW, List.of(opening)).panelsDown()).isEqualTo(courses);
    }

    @Test
    void underTheEaveNoCourseIsAboveAndTheTopOneComesOutOfItsTrim() {
        Opening high = Measured.frame(30, 16).at(10, 80).opening();
        SidingPlan plan = SidingPlan.of(NARROW, List.of(high));

        assertThat(plan.panelsDown()).isEqualTo(4);
        assertThat(plan.opensTrimAtEave()).isTrue();
        assertThat(plan.takenDown()).extracting(SidingPanel::mark).containsExactly("X1", "W1", "V1", "U1");
    }

    @Test
    void aPanelThatSpansTwoOpeningsComesDownOnceAtATime() {
        Opening left = Measured.frame(24, 40).at(10, 30).opening();
        Opening right = Measured.frame(24, 40).at(80, 30).opening();
        SidingPlan plan = SidingPlan.of(NARROW, List.of(left, right));

        assertThat(plan.panelsDown()).isEqualTo(12);
        assertThat(plan.panelsOneAtATime()).isEqualTo(24);
        assertThat(plan.opensTrimAtEave()).isFalse();
    }

    @Test
    void panelsAreUnlockedFromTheTopCourseDownAndFromTheLeft() {
        Elevation wide = Measured.wall(40, 8, 4, 145, List.of());
        Opening opening = Measured.frame(100, 9).at(130, 12).opening();

        // from 130 to 230 in. across: joints at 36 and 180 in course D, 144 in E, 72 and 216 in F, 108 and 252 in G,
        // the one above
        assertThat(SidingPlan.of(wide, List.of(opening)).takenDown())
                .extracting(SidingPanel::mark)
                .containsExactly("G2", "F2", "F3", "E1", "E2", "D2", "D3");
    }

    @Test
    void brickAndStuccoHaveNoPanels() {
        Opening opening = Measured.frame(30, 40).opening();

        for (Cladding cladding : List.of(Cladding.BRICK_VENEER, Cladding.STUCCO)) {
            assertThat(SidingPlan.of(Measured.house(cladding, NARROW), NARROW, List.of(opening))
                            .panelsDown())
                    .isZero();
        }
        assertThat(SidingPlan.of(Measured.house(Cladding.FIBER_CEMENT, NARROW), NARROW, List.of(opening))
                        .panelsDown())
                .isPositive();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, A1", "25, 1, Z2", "26, 0, AA1", "51, 2, AZ3", "52, 0, BA1"})
    void coursesAreLetteredFromGradeUp(int course, int place, String mark) {
        assertThat(new SidingPanel(course, place, new Rect(0, 0, 1, 1), false).mark())
                .isEqualTo(mark);
    }
}
