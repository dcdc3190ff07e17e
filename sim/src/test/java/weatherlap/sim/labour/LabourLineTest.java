package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.work.WorkFixtures.step;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;

class LabourLineTest {
    private static final LabourStep STEP = step("bead", Driver.PERIMETER_FT, 6);

    @Test
    void quantityTimesMinutesTimesFactors() {
        LabourLine line = new LabourLine(STEP, 16, List.of(Amount.given("height", 1.25, "")));
        assertThat(line.meanMinutes()).isEqualTo(16 * 6 * 1.25);
        assertThat(line.weight()).isEqualTo(20);
        assertThat(line.amount().parts()).hasSize(3);
        assertThat(line.amount().parts().get(1).parts())
                .allMatch(leaf -> leaf.origin().isPresent());
    }

    /** Beta-PERT variance of (3, 6, 9) is 9/7; ten openings share the step's minutes: 10² · 9/7 and not 10 · 9/7. */
    @Test
    void theMinutesOfAStepAreOneUnknownForTheHouse() {
        List<LabourLine> ten = java.util.Collections.nCopies(10, new LabourLine(STEP, 1, List.of()));
        assertThat(LabourLine.variance(ten)).isCloseTo(100 * 9.0 / 7, within(1e-9));
    }

    @Test
    void differentStepsAreIndependent() {
        List<LabourLine> two = List.of(
                new LabourLine(STEP, 1, List.of()), new LabourLine(step("tape", Driver.HEAD_FT, 6), 1, List.of()));
        assertThat(LabourLine.variance(two)).isCloseTo(2 * 9.0 / 7, within(1e-12));
    }
}
