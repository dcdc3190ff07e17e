package weatherlap.analysis.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.MadeHouses;
import weatherlap.analysis.plan.MadeHouses.Terms;
import weatherlap.analysis.plan.MadeHouses.Wall;
import weatherlap.analysis.rule.Cases;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Streams;

/** Portfolios of a few houses, worked out by hand. */
class DecisionTest {
    @Test
    void efficientSetLeavesOutWhatIsBeatenInBoth() {
        List<EfficientSet.Choice> choices = List.of(
                new EfficientSet.Choice("a", 10, 0.5),
                new EfficientSet.Choice("beaten by a", 12, 0.5),
                new EfficientSet.Choice("b", 20, 0.1),
                new EfficientSet.Choice("beaten by b", 20, 0.2),
                new EfficientSet.Choice("c", 5, 0.9));
        assertThat(EfficientSet.of(choices)).containsExactly(4, 0, 2);
    }

    @Test
    void portfolioMapCountsAndAverages() {
        PortfolioMap map = PortfolioMap.of(
                List.of("short", "long", "short", "short"),
                List.of("none", "short", "long"),
                List.of("1", "1", "2", "1"),
                List.of("1", "2"),
                new double[] {-100, 50, -20, 40});
        assertThat(map.across()).containsExactly("short", "long");
        assertThat(map.cells().get(0).get(0)).isEqualTo(new PortfolioMap.Cell(2, -30, 0.5));
        assertThat(map.cells().get(0).get(1)).isEqualTo(new PortfolioMap.Cell(1, 50, 0));
        assertThat(map.cells().get(1).get(1)).isEqualTo(new PortfolioMap.Cell(0, 0, 0));
    }

    @Test
    void theMapShowsWhatAHousePrefersAlsoWhereALimitLeavesItOnePlan() {
        List<HouseChoice> choices = List.of(
                choose(new Wall(0, 900, 1300, FrameCondition.ROTTEN, List.of())), choose(Wall.sound(24, 1200, 900)));
        Cases cases = DecisionCases.of(choices, true);
        Decision decision = new Decision(choices, cases, RuleStudy.of(cases, 2, new Streams(1)));
        PortfolioMap map = DecisionMaps.storeysAndOverhang(decision);
        assertThat(map.up()).containsExactly("0 to under 6", "24 to under 30");
        assertThat(map.cells().get(0)).containsExactly(new PortfolioMap.Cell(1, -400, 1));
        assertThat(map.cells().get(1)).containsExactly(new PortfolioMap.Cell(1, 300, 0));
    }

    @Test
    void casesMoveTheDrawsToThePlansAndSilenceHousesWithoutAChoice() {
        HouseChoice free = choose(Wall.sound(0, 1000, 1400));
        HouseChoice forced = choose(new Wall(0, 1300, 900, FrameCondition.ROTTEN, List.of()));
        HouseChoice half = choose(new Wall(0, 1300, 900, FrameCondition.ROTTEN, List.of()), Wall.sound(24, 1200, 900));
        var cases = DecisionCases.of(List.of(free, forced, half), true);
        assertThat(cases.differenceUsd()[0]).containsExactly(-410, -390);
        assertThat(cases.differenceUsd()[1]).containsExactly(0, 0);
        assertThat(cases.differenceUsd()[2])
                .containsExactly(new double[] {half.differenceUsd(), half.differenceUsd()}, within(1e-9));
        assertThat(cases.secondUsd())
                .containsExactly(
                        new double[] {
                            1400, 1300, half.wherever().get(Method.INSERT).horizonCostUsd()
                        },
                        within(1e-9));
    }

    private static HouseChoice choose(Wall... walls) {
        return HouseChoice.of(MadeHouses.house("h", new Terms(10, 300), new Terms(30, 500), walls), 0.5);
    }
}
