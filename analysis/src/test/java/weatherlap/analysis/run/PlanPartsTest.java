package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/** The parts that plans are put together from make up the whole where a plan is of one method. */
class PlanPartsTest {
    private static final Simulator SIMULATOR = new Simulator(Town.BUNDLED, Town.CLIMATE, Sampling.SOBOL, 64, 7);

    @ParameterizedTest
    @EnumSource(Method.class)
    void aPlanOfOneMethodCostsWhatTheHouseCostsByIt(Method method) {
        holds(SIMULATOR, method);
        holds(SIMULATOR.withChoice(Choice.PRICING, "overhead_and_net"), method);
    }

    private static void holds(Simulator simulator, Method method) {
        SimulatedHouse house = simulator.simulateForPlans(Town.house("H1"));
        MethodResult whole = house.result().method(method);
        Plan plan = HouseChoice.of(house, 1).wherever().get(method);
        assertThat(plan.methods()).isEqualTo(EnumSet.of(method));
        assertThat(plan.priceUsd()).isCloseTo(whole.priceUsd(), within(1e-6));
        assertThat(plan.horizonCostUsd()).isCloseTo(whole.horizonCostUsd().mean(), within(1e-6));
        assertThat(plan.leakProbability()).isCloseTo(whole.leakProbability(), within(1e-9));
        double mean =
                Arrays.stream(house.result().horizonDifferenceUsd()).average().orElseThrow();
        assertThat(Arrays.stream(HouseChoice.of(house, 1).horizonDifferenceUsd())
                        .average()
                        .orElseThrow())
                .isCloseTo(mean, within(1e-6));
    }
}
