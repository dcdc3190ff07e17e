package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.analysis.breakeven.BreakEven;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Comparison;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;
import weatherlap.sim.run.Simulator;

/** What a break-even varies is what a table, or the command line, would say. */
class FactorsTest {
    private static final AssumptionTables TABLES = AssumptionTables.bundled();
    private static final Assumptions BUNDLED = TABLES.assumptions();
    private static final RainClimate CLIMATE = RainClimate.of(DemoClimate.hourly(), BUNDLED.scenario());
    private static final List<House> HOUSES =
            SimulatedPortfolio.sample(DemoPortfolio.load().houses(), 3);
    private static final SimulatedPortfolio PORTFOLIO = new SimulatedPortfolio(HOUSES, scenario -> CLIMATE, 64, 1);

    @Test
    void atItsLikelyValueAFactorChangesNothing() {
        for (Factor factor : Factors.all(BUNDLED)) {
            assertThat(factor.assume(BUNDLED, factor.range().likely()))
                    .as(factor.name())
                    .isEqualTo(BUNDLED);
        }
    }

    /** A search and a comparison with the number set tell the same difference, also for a number that is drawn from a range. */
    @ParameterizedTest
    @CsvSource({"repair_cost_usd,9000", "gross_margin,0.45", "horizon_years,12", "house_correlation,0.123"})
    void aSearchFindsWhatACompareWithTheValueSetFinds(String name, double value) {
        Factor factor = Factors.named(BUNDLED, name).orElseThrow();
        Assumptions set =
                TABLES.with(List.of(name + "=" + value)).value().orElseThrow().assumptions();
        assertThat(searched(factor.assume(BUNDLED, value))).isCloseTo(compared(set), within(1e-6));
    }

    @Test
    void aRowOfThreePointsIsSearchedByItsLikelyValueWithItsRange() {
        String id = BUNDLED.steps().get(0).id();
        Factor factor = Factors.named(BUNDLED, "labour-steps/" + id).orElseThrow();
        double likely = BUNDLED.steps().get(0).minutes().high();
        UnaryOperator<Assumptions> edited = all -> all.withSteps(all.steps().stream()
                .map(row -> row.id().equals(id) ? row.withMinutes(row.minutes().withLikely(likely)) : row)
                .toList());
        assertThat(searched(factor.assume(BUNDLED, likely))).isCloseTo(compared(edited.apply(BUNDLED)), within(1e-6));
    }

    @Test
    void aGroupOfRatesMovesItsOwnRowsTogether() {
        Assumptions slower =
                Factors.named(BUNDLED, "labour-steps/insert").orElseThrow().assume(BUNDLED, 2);
        MethodScope alone = MethodScope.of(Method.INSERT);
        assertThat(BUNDLED.steps()).anyMatch(step -> step.method().equals(alone));
        for (int i = 0; i < BUNDLED.steps().size(); i++) {
            LabourStep step = BUNDLED.steps().get(i);
            assertThat(slower.steps().get(i).minutes())
                    .as(step.id())
                    .isEqualTo(step.method().equals(alone) ? step.minutes().times(2) : step.minutes());
        }
        assertThat(slower.withSteps(BUNDLED.steps())).isEqualTo(BUNDLED);
    }

    /** A fault lets no more past than arrives. */
    @Test
    void aGroupOfSharesEndsAtAll() {
        Assumptions leaky =
                Factors.named(BUNDLED, "lap-faults/existing").orElseThrow().assume(BUNDLED, 50);
        assertThat(leaky.faults())
                .filteredOn(fault -> fault.kind() == FaultKind.EXISTING)
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.admitted().high()).isLessThanOrEqualTo(1));
        assertThat(leaky.faults())
                .filteredOn(fault -> fault.kind() == FaultKind.NEW)
                .containsExactlyElementsOf(BUNDLED.faults().stream()
                        .filter(fault -> fault.kind() == FaultKind.NEW)
                        .toList());
    }

    private static double searched(Assumptions assumptions) {
        return Arrays.stream(PORTFOLIO.costs(assumptions).differenceUsd())
                .average()
                .orElseThrow();
    }

    /** What a search finds, put into a comparison by {@code --set}, is where neither method is ahead; the rotten frames are no choice. */
    @Test
    void theCrossingSetInACompareLeavesAHeadlineOfNothing() {
        List<House> demo = DemoPortfolio.load().houses();
        List<House> houses = new ArrayList<>(SimulatedPortfolio.sample(demo, 4));
        demo.stream().filter(house -> house.id().equals("rot")).forEach(houses::add);
        SimulatedPortfolio portfolio = new SimulatedPortfolio(houses, scenario -> CLIMATE, 64, 1);
        Factor repair = Factors.named(BUNDLED, "repair_cost_usd").orElseThrow();
        BreakEven found = BreakEven.over(
                Contrast.USUAL,
                repair.name(),
                repair.search().low(),
                repair.search().high(),
                value -> portfolio.costs(repair.assume(BUNDLED, value)).differenceUsd(),
                new BreakEven.Effort(4, 20, new Streams(1)));
        assertThat(found.crossings()).hasSize(1);
        String set = "repair_cost_usd=" + found.crossings().get(0).value();
        Answer answer =
                answer(houses, TABLES.with(List.of(set)).value().orElseThrow().assumptions());
        double alone = answer.of(Method.FULL_FLANGE).horizonCostUsd()
                - answer.of(Method.INSERT).horizonCostUsd();
        assertThat(Math.abs(alone)).as("whatever limits let be built").isGreaterThan(10);
        assertThat(answer.savedPerHouseUsd().mean()).isCloseTo(0.0, within(1.0));
    }

    /** Mean of a house, full-flange less insert, as the headline of a comparison has it. */
    private static double compared(Assumptions assumptions) {
        Answer answer = answer(HOUSES, assumptions);
        double saved = answer.savedPerHouseUsd().mean();
        return answer.cheaper() == Method.INSERT ? saved : -saved;
    }

    private static Answer answer(List<House> houses, Assumptions assumptions) {
        Comparison.Sum sum = new Comparison.Sum(64, houses.size());
        double limit = assumptions.scenario().value(Scalar.RISK_LIMIT);
        Simulator simulator = new Simulator(assumptions, CLIMATE, Sampling.SOBOL, 64, 1);
        houses.forEach(house -> sum.add(HouseChoice.of(simulator.simulateForPlans(house), limit)));
        return sum.comparison().answer();
    }

    @ParameterizedTest
    @CsvSource({"-10,-26,6", "0,-16,16", "-40,-40,0", "50,25,100"})
    void aTemperatureIsSearchedAroundItsValue(double likely, double low, double high) {
        Assumptions cold = BUNDLED.with(BUNDLED.scenario().with(Scalar.TEMPERATURE_F, likely));
        Factor factor = Factors.named(cold, "temperature_f").orElseThrow();
        assertThat(factor.range().low())
                .as("the range is dropped where the value leaves it")
                .isLessThanOrEqualTo(likely);
        assertThat(factor.search().low()).isLessThanOrEqualTo(low);
        assertThat(factor.search().high()).isGreaterThanOrEqualTo(high);
        assertThat(factor.search().low()).isGreaterThanOrEqualTo(Scalar.TEMPERATURE_F.low());
    }
}
