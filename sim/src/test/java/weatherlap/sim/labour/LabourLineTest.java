package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
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
}
