package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.analysis.tables.HandmadeResults.house;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.run.Results;

class AnswerTest {
    /** By draw, the portfolio's difference is -100, 300, -400, -200: full-flange is cheaper in three of four draws. */
    private final Answer answer = Answer.of(HandmadeResults.of(
            house("a", Cladding.VINYL_SIDING, 0, -200, 0, -500, -300),
            house("b", Cladding.VINYL_SIDING, 0, 100, 300, 100, 100)));

    @Test
    void theDefaultIsTheMethodThatCostsThePortfolioLess() {
        assertThat(answer.cheaper()).isEqualTo(Method.FULL_FLANGE);
        assertThat(answer.savedPerHouseUsd().mean()).isEqualTo((200 + 0 + 500 + 300 - 600) / 4.0 / 2);
        assertThat(answer.probability()).isEqualTo(0.75);
        assertThat(answer.savedPerHouseUsd().p50()).isEqualTo((100 + 200) / 2.0 / 2, within(1e-9));
    }

    @Test
    void housesThatDoBetterOtherwiseDepartFromIt() {
        assertThat(answer.departures()).isEqualTo(1);
        assertThat(answer.savedByDepartingUsd()).isEqualTo(150, within(1e-9));
    }

    @Test
    void meansAreOfAHouse() {
        Answer.PerHouse insert = answer.of(Method.INSERT);
        assertThat(insert.priceUsd()).isEqualTo(1000);
        assertThat(insert.glassLostFraction()).isEqualTo(0.2);
        assertThat(insert.anyLeak()).isEqualTo(0.12);
        assertThat(insert.grossProfitPerCrewDayUsd()).isEqualTo(450);
    }

    @Test
    void aPortfolioWithoutHousesHasNoAnswer() {
        assertThatThrownBy(() -> Answer.of(new Results(List.of(), 4))).hasMessageContaining("must hold a house");
    }
}
