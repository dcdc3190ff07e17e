package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.analysis.choice.EvenPrice;
import weatherlap.analysis.tables.Answer.PerHouse;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Method;

class EvenPriceTest {
    /** By hand: full-flange earns 900 in 2 days, an insert 450 in 1: both 450 a day, nothing to raise. */
    @Test
    void nothingIsRaisedWhereBothEarnTheSame() {
        Answer answer = HandmadeResults.compared(
                        HandmadeResults.house("a", Cladding.VINYL_SIDING, 0, -200, 0),
                        HandmadeResults.house("b", Cladding.VINYL_SIDING, 0, 100, 300))
                .answer();
        assertThat(EvenPrice.of(answer, 0.02).perHouseUsd()).isEqualTo(0, within(1e-9));
    }

    /** With the new price the one that lagged earns what the other earns, whatever is kept for service. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.02, 0.3})
    void theRaiseBringsTheSameForACrewDay(double service) {
        Answer answer = earning(600);
        EvenPrice even = EvenPrice.of(answer, service);
        PerHouse insert = answer.of(Method.INSERT);
        PerHouse flange = answer.of(Method.FULL_FLANGE);
        assertThat(even.raised()).isEqualTo(Method.FULL_FLANGE);
        assertThat((flange.grossProfitUsd() + even.perHouseUsd() * (1 - service)) / flange.crewDays())
                .isEqualTo(insert.grossProfitPerCrewDayUsd(), within(1e-9));
        assertThat(even.perWindowUsd()).isEqualTo(even.perHouseUsd(), within(1e-9));
        assertThat(even.priceUsd()).isEqualTo(2000 + even.perHouseUsd(), within(1e-9));
        assertThat(EvenPrice.of(earning(300), service).raised()).isEqualTo(Method.INSERT);
    }

    /** By hand: 600 a day over 2 days is 1200, 300 more than the 900 earned. */
    @Test
    void byHand() {
        assertThat(EvenPrice.of(earning(600), 0).perHouseUsd()).isEqualTo(300, within(1e-9));
        assertThat(EvenPrice.of(earning(300), 0).perHouseUsd())
                .as("150 in a day")
                .isEqualTo(150, within(1e-9));
    }

    /** By hand: full-flange takes one day more and earns 300 more: at 200 a day 100 to spare, at 400 a day 100 short. */
    @Test
    void aDayThatIsWorthLessAsksForLess() {
        assertThat(EvenPrice.raiseUsd(earning(600), 0, Method.FULL_FLANGE, 200)).isEqualTo(-100, within(1e-9));
        assertThat(EvenPrice.raiseUsd(earning(600), 0.5, Method.FULL_FLANGE, 400))
                .isEqualTo(200, within(1e-9));
    }

    /** The handmade answer where a house by inserts, one crew day and one window, earns so much. */
    private static Answer earning(double insertUsd) {
        Answer answer = HandmadeResults.compared(HandmadeResults.house("a", Cladding.VINYL_SIDING, 0, -200, 0))
                .answer();
        PerHouse old = answer.of(Method.INSERT);
        PerHouse insert = new PerHouse(
                old.priceUsd(),
                old.costUsd(),
                old.labourHours(),
                old.crewDays(),
                old.glassLostFraction(),
                old.anyLeak(),
                old.expectedDamageUsd(),
                old.horizonCostUsd(),
                insertUsd,
                insertUsd / old.crewDays(),
                old.planHorizonCostUsd(),
                old.overLimit());
        return new Answer(
                answer.contrast(),
                answer.standIns(),
                answer.cheaper(),
                answer.savedPerHouseUsd(),
                answer.probability(),
                answer.keeping(),
                answer.savedByKeepingUsd(),
                answer.departures(),
                answer.savedByDepartingUsd(),
                answer.heldBack(),
                answer.houses(),
                answer.openings(),
                java.util.Map.of(Method.INSERT, insert, Method.FULL_FLANGE, answer.of(Method.FULL_FLANGE)),
                answer.plans());
    }
}
