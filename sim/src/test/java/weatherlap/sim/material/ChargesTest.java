package weatherlap.sim.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Method;
import weatherlap.sim.work.WorkFixtures;

/** New units, broken panels and tipping. */
class ChargesTest {
    @Test
    void aUnitIsPricedByUnitedInches() {
        var assumptions = WorkFixtures.assumptions(List.of(), List.of());
        assertThat(NewUnit.cost(assumptions, Method.FULL_FLANGE, WorkFixtures.opening("o", 24, 1))
                        .value())
                .isEqualTo(200 + 4 * 96);
    }

    /** Two mulled lites are two units of 18 × 60. */
    @Test
    void mulledLitesAreUnitsOfTheirOwn() {
        var assumptions = WorkFixtures.assumptions(List.of(), List.of());
        assertThat(NewUnit.cost(assumptions, Method.INSERT, WorkFixtures.opening("o", 24, 2))
                        .value())
                .isEqualTo(2 * 210 + 4 * (2 * 78));
    }

    @Test
    void theValueAloneIsThatOfTheAmount() {
        var assumptions = WorkFixtures.assumptions(List.of(), List.of());
        var opening = WorkFixtures.opening("o", 24, 3);
        assertThat(NewUnit.usd(assumptions, Method.INSERT, opening))
                .isEqualTo(NewUnit.cost(assumptions, Method.INSERT, opening).value());
        assertThat(Disposal.usd(assumptions.scenario(), opening))
                .isEqualTo(Disposal.cost(assumptions.scenario(), opening).value());
    }

    /**
     * Validation. Glass weighs 2.5 kg/m² for each mm: two 3 mm lites of 36 × 60 in. are 46.1 lb (by hand: 15 ft² × 6 mm ×
     * 0.512 lb/ft² mm); 16 ft of frame at 1 lb/ft are 16 lb more.
     */
    @Test
    void theOldUnitIsTippedByWeight() {
        var opening = WorkFixtures.opening("o", 24, 1);
        assertThat(Disposal.weightLb(WorkFixtures.scenario(), opening)).isCloseTo(46.1 + 16, within(0.1));
        assertThat(Disposal.cost(WorkFixtures.scenario(), opening).value()).isCloseTo(62.1 / 2000 * 80, within(0.01));
    }

    /** The shares that crews report, as judged: 1.5 % when warm, 5 % at freezing, 12.5 % at 20 °F. */
}
