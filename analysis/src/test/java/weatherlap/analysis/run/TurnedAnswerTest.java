package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Simulator;

/** At the cost of a repair that is said to turn the answer, a run finds no difference, whoever pays the repairs. */
class TurnedAnswerTest {
    private static final List<Scalar> REPAIR =
            List.of(Scalar.REPAIR_COST_LOW_USD, Scalar.REPAIR_COST_USD, Scalar.REPAIR_COST_HIGH_USD);

    @ParameterizedTest
    @CsvSource({"own_work,gross_margin", "any_leak,overhead_and_net", "nothing,gross_margin"})
    void aRunAtTheTurningCostOfARepairFindsNoGap(String covers, String pricing) {
        Scenario scenario =
                Town.BUNDLED.scenario().with(Choice.WARRANTY_COVERS, covers).with(Choice.PRICING, pricing);
        double factor = points(scenario).repairFactor().orElseThrow();
        for (Scalar end : REPAIR) {
            scenario = scenario.with(end, scenario.value(end) * factor);
        }
        assertThat(points(scenario).gapUsd()).isCloseTo(0, within(1e-6));
    }

    private static TippingPoints points(Scenario scenario) {
        Simulator simulator = new Simulator(Town.BUNDLED.with(scenario), Town.CLIMATE, Sampling.SOBOL, 64, 7);
        Results results = simulator.run(new Portfolio(List.of(Town.house("a"), Town.porch("b", Lap.UNKNOWN))), 1);
        return TippingPoints.of(results, Pricing.of(scenario));
    }
}
