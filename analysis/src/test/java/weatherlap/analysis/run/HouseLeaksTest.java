package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.analysis.leaks.FaultSwing;
import weatherlap.analysis.leaks.HouseLeakTable;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.words.LeakWords;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseLook;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

/** What is said of the leaks of one house. */
class HouseLeaksTest {
    private static final House HOUSE = Town.house("H1");
    private static final Simulator SIMULATOR = new Simulator(Town.BUNDLED, Town.CLIMATE, Sampling.SOBOL, 64, 7);

    @Test
    void theTableGoesByBearingThenByStorey() {
        HouseResult result = SIMULATOR.simulate(HOUSE);
        ResultTable table = HouseLeakTable.of(List.of(HouseChoice.of(SIMULATOR.simulateForPlans(HOUSE), 1)));
        assertThat(table.rows()).isEqualTo(3 * HOUSE.openingCount());
        assertThat(table.table().doubleColumn("bearing_deg").asList())
                .isSorted()
                .contains(0.0, 180.0);
        assertThat(table.table().intColumn("storey").asList()).startsWith(1, 1, 1, 2, 2, 2);
        assertThat(table.table().doubleColumn("leak_score").sum())
                .isCloseTo(
                        result.openings().stream()
                                .mapToDouble(o -> o.leakScore().mean())
                                .sum(),
                        within(1e-9));
        for (int row = 0; row < table.rows(); row++) {
            boolean risk = table.table().doubleColumn("leak_score").getDouble(row) > 0;
            assertThat(table.text(row, "cause_1").contains("of the risk")).isEqualTo(risk);
        }
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void aHigherAdmittedShareMovesTheScoreUpAndTheLargestSwingStandsFirst(Method method) {
        List<FaultSwing> swings = FaultSwing.of(SIMULATOR, HOUSE, method);
        assertThat(swings)
                .hasSize((int) Town.BUNDLED.faults().stream()
                        .filter(fault -> HOUSE.openings()
                                .anyMatch(o -> fault.canStand(HOUSE, o, method, Town.BUNDLED.scenario())))
                        .count())
                .isSortedAccordingTo(
                        Comparator.comparingDouble(FaultSwing::width).reversed())
                .allMatch(swing -> swing.width() >= 0);
        double mean = SIMULATOR.simulate(HOUSE).method(method).leakScore().mean();
        assertThat(mean).isBetween(swings.get(0).low(), swings.get(0).high());
        assertThat(FaultSwing.line(swings, 3)).contains(swings.get(2).fault().id());
        assertThat(FaultSwing.line(swings, 3))
                .doesNotContain(swings.get(3).fault().id() + " ");
    }

    @Test
    void aLookIsWorthNothingWhereItCannotChangeTheChoiceAndSomethingWhereItMay() {
        HouseLook look = SIMULATOR.look(SIMULATOR.simulate(HOUSE)).orElseThrow();
        assertThat(look.openings()).isEqualTo(HOUSE.openingCount());
        assertThat(look.value().gainUsd()).isGreaterThanOrEqualTo(0);
        assertThat(look.value().priceUsd()).isEqualTo(Town.BUNDLED.scenario().value(Scalar.LOOK_COST_USD));
        assertThat(LeakWords.look(look)).contains("judgment");
        // Everything has been looked at.
        assertThat(SIMULATOR.look(SIMULATOR.simulate(Town.house("H2", Lap.SHINGLED, 0, 24))))
                .isEmpty();
    }
}
