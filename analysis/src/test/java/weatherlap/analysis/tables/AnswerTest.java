package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.analysis.tables.HandmadeResults.house;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.MadeHouses;
import weatherlap.analysis.plan.MadeHouses.Terms;
import weatherlap.analysis.plan.MadeHouses.Wall;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.SimulatedHouse;

class AnswerTest {
    /** By draw, the portfolio's difference is -100, 300, -400, -200: full-flange is cheaper in three of four draws. */
    private final Answer answer = HandmadeResults.compared(
                    house("a", Cladding.VINYL_SIDING, 0, -200, 0, -500, -300),
                    house("b", Cladding.VINYL_SIDING, 0, 100, 300, 100, 100))
            .answer();

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
        assertThat(answer.keeping()).isEqualTo(1);
        assertThat((answer.savedByKeepingUsd() - answer.savedByDepartingUsd()) / answer.houses())
                .as("many small losses and few large gains make the mean")
                .isEqualTo(answer.savedPerHouseUsd().mean(), within(1e-9));
    }

    /** The insert would save 400 all over at both houses; at one a rotten frame closes it at a wall, and the other wall is all it saves. */
    @Test
    void aHouseDepartsAsFarAsLimitsLetIt() {
        Terms terms = new Terms(10, 300);
        Comparison.Sum sum = new Comparison.Sum(2, 3);
        Wall rotten = new Wall(0, 1300, 900, FrameCondition.ROTTEN, List.of());
        for (SimulatedHouse house : List.of(
                MadeHouses.house("default", terms, terms, Wall.sound(0, 1000, 5000)),
                MadeHouses.house("held back", terms, terms, rotten),
                MadeHouses.house("departs", terms, terms, rotten, Wall.sound(24, 1300, 900)))) {
            sum.add(HouseChoice.of(house, 1));
        }
        Answer limited = sum.comparison().answer();
        assertThat(limited.cheaper()).isEqualTo(Method.FULL_FLANGE);
        assertThat(limited.departures()).isEqualTo(1);
        assertThat(limited.savedByDepartingUsd()).isEqualTo(2600 - (1300 + 900 + 60 * 0.5 + 40 * 0.5), within(1e-9));
        assertThat(limited.heldBack()).isEqualTo(1);
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
        assertThatThrownBy(() -> new Comparison.Sum(4, 0).comparison()).hasMessageContaining("must hold a house");
    }

    /** As machines that share a portfolio do it: each sums its houses, and sends the sum. */
    @Test
    void sumsOfPartsAddUpToThatOfTheWhole() throws Exception {
        Terms terms = new Terms(10, 300);
        Wall rotten = new Wall(0, 1300, 900, FrameCondition.ROTTEN, List.of());
        List<HouseChoice> houses = Stream.of(
                        MadeHouses.house("default", terms, terms, Wall.sound(0, 1000, 5000)),
                        MadeHouses.house("held back", terms, terms, rotten),
                        MadeHouses.house("departs", terms, terms, rotten, Wall.sound(24, 1300, 900)))
                .map(house -> HouseChoice.of(house, 1))
                .toList();
        PortfolioSum whole = new PortfolioSum(2);
        houses.forEach(whole::add);
        PortfolioSum parts = sent(new PortfolioSum(2));
        for (HouseChoice house : houses) {
            PortfolioSum part = new PortfolioSum(2);
            part.add(house);
            parts.add(sent(part));
        }
        parts.add(new PortfolioSum(2));
        assertThat(parts.comparison(houses)).usingRecursiveComparison().isEqualTo(whole.comparison(houses));
        assertThatThrownBy(() -> parts.add(new PortfolioSum(3))).hasMessageContaining("sums of 3 runs and of 2");
    }

    private static PortfolioSum sent(PortfolioSum sum) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(sum);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (PortfolioSum) in.readObject();
        }
    }
}
