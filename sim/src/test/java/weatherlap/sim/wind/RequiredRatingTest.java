package weatherlap.sim.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.work.WorkFixtures;

class RequiredRatingTest {
    /** Validation: NAFS goes from 15 psf up in steps of 5; water at 15 % of the grade, 2.86 psf at least; DP 50 is tested at 7.5 psf. */
    @ParameterizedTest(name = "{0} in, {1} out")
    @CsvSource({
        "9, 10, 15, 2.86",
        "15, 14, 15, 2.86",
        "13, 15.1, 20, 3",
        "14.3, 19.1, 20, 3",
        "46, 50, 50, 7.5",
        "60, 2, 60, 9"
    })
    void theNextGrade(double inward, double outward, int grade, double water) {
        RequiredRating rating = new RequiredRating(false, 15, inward, outward);
        assertThat(rating.gradePsf()).isEqualTo(grade);
        assertThat(rating.waterPsf()).isCloseTo(water, within(1e-9));
    }

    /**
     * By hand: walls 40 ft wide, eaves at 18 ft, so corners reach 4 ft. An opening 36 in. wide whose left edge is at 24 in. stands in one;
     * at 48 in. or at 396 in. (right edge 432, the corner begins there) it does not; an inch further right it does.
     */
    @ParameterizedTest(name = "left edge at {0} in.")
    @CsvSource({"24, true", "48, false", "396, false", "397, true"})
    void anyPartNearACornerCounts(double leftIn, boolean nearCorner) {
        Opening opening = at(leftIn);
        Elevation wall = WorkFixtures.elevation("front", List.of(opening));
        House house = WorkFixtures.house(1990, wall);
        RequiredRating rating = RequiredRating.of(
                        new DesignWind(115, ExposureCategory.B), house, wall, opening, 36, 40, WorkFixtures.scenario())
                .orElseThrow();
        assertThat(rating.nearCorner()).isEqualTo(nearCorner);
        assertThat(rating.areaFt2()).isCloseTo(10, within(1e-9));
        assertThat(rating.outwardPsf()).isCloseTo(nearCorner ? 19.1 : 15.5, within(0.1));
        assertThat(rating.gradePsf()).isEqualTo(20);
    }

    private static Opening at(double leftIn) {
        return MadeOpening.of("w").at(leftIn, 24).opening();
    }
}
