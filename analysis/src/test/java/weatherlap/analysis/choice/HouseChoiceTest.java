package weatherlap.analysis.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.choice.MadeHouses.Terms;
import weatherlap.analysis.choice.MadeHouses.Wall;
import weatherlap.analysis.rule.Cases;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.random.Streams;
import weatherlap.sim.run.HouseResult;

/** Choices worked out by hand; the set-up of the full flange is 60 USD, that of the insert 40. */
class HouseChoiceTest {
    private static final Map<Method, Double> SETUP = Map.of(Method.FULL_FLANGE, 60.0, Method.INSERT, 40.0);
    private static final Terms FLANGE = new Terms(10, 300);
    private static final Terms INSERT = new Terms(30, 500);

    @Test
    void mixedHousePaysTheSecondSetup() {
        // Full flange 1000 + 1200, insert 1400 + 900. By wall: 1000 + 900, and the parts of the set-ups that these
        // shares do not carry:
        // 60 · 1200/2200 and 40 · 1400/2300.
        HouseChoice choice = choose(Wall.sound(0, 1000, 1400), Wall.sound(24, 1200, 900));

        assertThat(choice.familyMethod()).isEqualTo(Method.FULL_FLANGE);
        assertThat(choice.differenceUsd()).isCloseTo(-100, within(1e-9));
        assertThat(choice.family().single()).isEmpty();
        assertThat(choice.family().byElevation())
                .containsEntry("w0", Method.FULL_FLANGE)
                .containsEntry("w1", Method.INSERT);
        double mixed = 1900 + 60 * 1200 / 2200.0 + 40 * 1400 / 2300.0;
        assertThat(choice.family().horizonCostUsd()).isCloseTo(mixed, within(1e-9));
        assertThat(choice.mixingSavesUsd()).isCloseTo(2200 - mixed, within(1e-9));
    }

    @Test
    void oneMethodIsKeptWhereASecondSetupCostsMoreThanItSaves() {
        HouseChoice choice = choose(Wall.sound(0, 1000, 1400), Wall.sound(24, 920, 900));
        assertThat(choice.family().single()).contains(Method.FULL_FLANGE);
        assertThat(choice.mixingSavesUsd()).isZero();
    }

    @Test
    void rottenFrameTakesTheFullFlangeAtItsWallOnly() {
        HouseChoice choice =
                choose(new Wall(0, 1300, 900, FrameCondition.ROTTEN, List.of()), Wall.sound(24, 1200, 900));
        assertThat(choice.closed()).containsEntry(Method.INSERT, Set.of(Limit.ROTTEN_FRAME));
        assertThat(choice.wherever().get(Method.INSERT).byElevation())
                .containsEntry("w0", Method.FULL_FLANGE)
                .containsEntry("w1", Method.INSERT);
        assertThat(choice.wherever().get(Method.FULL_FLANGE).single()).contains(Method.FULL_FLANGE);
        assertThat(choice.familyMethod()).isEqualTo(Method.INSERT);
    }

    @Test
    void escapeOpeningIsKept() {
        HouseChoice choice =
                choose(new Wall(0, 1300, 900, FrameCondition.SOUND, List.of("light_fails", "escape_lost")));
        assertThat(choice.closed()).containsEntry(Method.INSERT, Set.of(Limit.ESCAPE_LOST));
        assertThat(choice.family().single()).contains(Method.FULL_FLANGE);
        assertThat(choice.differenceUsd()).isZero();
        assertThat(choice.shop()).isEqualTo(Method.FULL_FLANGE);
        assertThat(choice.interestsPart()).isFalse();
    }

    @Test
    void riskLimitClosesAMethodOnlyWhereTheOtherKeepsIt() {
        HouseResult house = MadeHouses.house("h", FLANGE, INSERT, Wall.sound(0, 1300, 900));
        HouseChoice between = HouseChoice.of(house, 0.2, SETUP);
        assertThat(between.closed()).containsEntry(Method.INSERT, Set.of(Limit.RISK_LIMIT));
        assertThat(between.family().single()).contains(Method.FULL_FLANGE);
        assertThat(between.atRisk()).isFalse();

        HouseChoice belowBoth = HouseChoice.of(house, 0.05, SETUP);
        assertThat(belowBoth.atRisk()).isTrue();
        assertThat(belowBoth.family().single()).contains(Method.INSERT);
    }

    @Test
    void interestsThatPartAreToldWithWhatEachSideWouldLose() {
        HouseChoice choice = choose(Wall.sound(0, 1000, 1400));
        assertThat(choice.familyMethod()).isEqualTo(Method.FULL_FLANGE);
        assertThat(choice.shop()).isEqualTo(Method.INSERT);
        assertThat(choice.interestsPart()).isTrue();
        assertThat(choice.familyLosesUsd()).isEqualTo(400);
        assertThat(choice.shopLosesPerDayUsd()).isEqualTo(200);
    }

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
        Cases cases = DecisionCases.of(choices);
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
        var cases = DecisionCases.of(List.of(free, forced, half));
        assertThat(cases.differenceUsd()[0]).containsExactly(-410, -390);
        assertThat(cases.differenceUsd()[1]).containsExactly(0, 0);
        assertThat(cases.differenceUsd()[2])
                .containsExactly(new double[] {half.differenceUsd() - 10, half.differenceUsd() + 10}, within(1e-9));
        assertThat(cases.insertUsd())
                .containsExactly(
                        new double[] {
                            1400, 1300, half.wherever().get(Method.INSERT).horizonCostUsd()
                        },
                        within(1e-9));
    }

    private static HouseChoice choose(Wall... walls) {
        return HouseChoice.of(MadeHouses.house("h", FLANGE, INSERT, walls), 0.5, SETUP);
    }
}
