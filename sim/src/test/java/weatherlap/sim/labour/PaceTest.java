package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.work.WorkFixtures.scenario;
import static weatherlap.sim.work.WorkFixtures.step;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Amount;

class PaceTest {
    private static final LabourStep TAPE = step("tape", Driver.OPENING, 10, true, true, 1);
    private static final LabourStep TRIM = step("trim", Driver.OPENING, 10, false, false, 1);
    private static final LabourStep SET = step("set", Driver.OPENING, 10, false, false, 2);

    private static double product(List<Amount> factors) {
        return factors.stream().mapToDouble(Amount::value).reduce(1, (a, b) -> a * b);
    }

    @Test
    void ordinaryConditionsChangeNothing() {
        Pace pace = new Pace(scenario(), 8, false);
        assertThat(product(pace.atOpening(TAPE, 1))).isEqualTo(1);
        assertThat(pace.atOpening(TRIM, 3)).isEmpty();
    }

    @Test
    void coldAndHeightSlowOnlyWhatTheyTouch() {
        Pace pace = new Pace(scenario().with(Scalar.TEMPERATURE_F, 20), 1, false);
        assertThat(product(pace.atOpening(TAPE, 2))).isCloseTo(1.2 / 0.89, within(1e-12));
        assertThat(product(pace.atOpening(TAPE, 4))).isCloseTo(1.4 / 0.89, within(1e-12));
        assertThat(product(pace.atOpening(TRIM, 2))).isEqualTo(1);
    }

    @Test
    void aWallTakesTheMeanHeightOfItsOpenings() {
        Pace pace = new Pace(scenario(), 2, false);
        assertThat(product(pace.atElevation(TAPE, List.of(1, 2)))).isCloseTo(1.1, within(1e-12));
        assertThat(pace.atElevation(TRIM, List.of(1, 2))).isEmpty();
    }

    /** Mean of eight units at 80 %: 5.345914 / 8. */
    @Test
    void learningBearsOnOpeningsAndNotOnTheHouse() {
        Pace pace = new Pace(scenario().with(Scalar.LEARNING_SLOPE, 0.8), 8, false);
        assertThat(product(pace.atOpening(TRIM, 1))).isCloseTo(5.345914 / 8, within(1e-6));
        assertThat(pace.anywhere(TRIM)).isEmpty();
    }

    @Test
    void leadSafeWorkIsSlowerButNotTheContainmentItself() {
        Pace pace = new Pace(scenario(), 1, true);
        LabourStep contain = step("contain", Driver.OPENING, 10, "lead_safe=yes", false, false, 1);
        assertThat(product(pace.atOpening(TRIM, 1))).isEqualTo(1.25);
        assertThat(pace.atOpening(contain, 1)).isEmpty();
    }

    /** Panels and boards around an opening come down within the containment; ladders and staging stand outside it. */
    @Test
    void leadSafeWorkIsSlowerOnPanelsAndNotOnStaging() {
        Pace pace = new Pace(scenario(), 1, true);
        LabourStep boards = step("boards", Driver.PANEL, 4);
        LabourStep broken = step("broken", Driver.BROKEN_PANEL, 4);
        LabourStep staging = step("staging", Driver.ELEVATION, 60);
        assertThat(product(pace.atElevation(boards, List.of(1)))).isEqualTo(1.25);
        assertThat(product(pace.atElevation(broken, List.of(1)))).isEqualTo(1.25);
        assertThat(pace.atElevation(staging, List.of(1))).isEmpty();
        assertThat(new Pace(scenario(), 1, false).atElevation(boards, List.of(1)))
                .isEmpty();
    }

    @Test
    void oneAloneNeedsHelpWithAStepOfTwo() {
        assertThat(product(new Pace(scenario().with(Scalar.CREW_SIZE, 1), 1, false).atOpening(SET, 1)))
                .isEqualTo(2);
        assertThat(new Pace(scenario(), 1, false).atOpening(SET, 1)).isEmpty();
    }

    @Test
    void aWallOfOneStoryHasNoHeight() {
        Pace pace = new Pace(scenario(), 3, false);
        assertThat(pace.atElevation(TAPE, List.of(1, 1, 1))).hasSize(1);
        assertThat(pace.atElevation(TAPE, List.of(1, 2, 3))).hasSize(2);
        assertThat(pace.atOpening(TAPE, 1)).hasSize(1);
    }

    @Test
    void oneOpeningLearnsNothing() {
        assertThat(new Pace(scenario().with(Scalar.LEARNING_SLOPE, 0.8), 1, false).atOpening(TRIM, 1))
                .isEmpty();
        assertThat(new Pace(scenario().with(Scalar.LEARNING_SLOPE, 1), 8, false).atOpening(TRIM, 1))
                .isEmpty();
    }

    @Test
    void threePeopleAreOneAndAHalfCrewsOfTwo() {
        LabourStep lift = step("lift", Driver.OPENING, 10, false, false, 3);
        assertThat(product(new Pace(scenario(), 1, false).anywhere(lift))).isEqualTo(1.5);
    }
}
