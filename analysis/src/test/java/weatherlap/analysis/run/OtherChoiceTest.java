package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.choice.OtherChoice;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

class OtherChoiceTest {
    private static final House HOUSE = Town.house("h");
    private static final Simulator SIMULATOR = new Simulator(Town.BUNDLED, Town.CLIMATE, Sampling.SOBOL, 64, 7);
    private static final HouseResult ASSUMED = SIMULATOR.simulate(HOUSE);

    private final Map<String, OtherChoice> others = OtherChoice.of(SIMULATOR, HOUSE).stream()
            .collect(Collectors.toMap(OtherChoice::setting, Function.identity()));

    @Test
    void everyWordThatIsNotAssumedIsTried() {
        assertThat(others)
                .containsOnlyKeys(
                        "shelter=wall_factor",
                        "sill_flange=sealed",
                        "workmanship=careful",
                        "workmanship=hurried",
                        "cold_curve=neca",
                        "pricing=overhead_and_net");
    }

    @Test
    void eachIsWhatARunWithThatChoiceGives() {
        others.values().forEach(other -> {
            var changed = Town.BUNDLED.with(Town.BUNDLED.scenario().with(other.choice(), other.word()));
            HouseResult run = new Simulator(changed, Town.CLIMATE, Sampling.SOBOL, 64, 7).simulate(HOUSE);
            assertThat(other.result().methods()).as(other.setting()).isEqualTo(run.methods());
        });
    }

    /** A flange sealed at the sill holds water in whatever the draw; the old frame of an insert has none. */
    @Test
    void sealingTheSillFlangeMovesTheFullFlangeAlone() {
        HouseResult sealed = others.get("sill_flange=sealed").result();
        assertThat(leak(sealed, Method.FULL_FLANGE)).isGreaterThan(leak(ASSUMED, Method.FULL_FLANGE));
        assertThat(leak(sealed, Method.INSERT)).isEqualTo(leak(ASSUMED, Method.INSERT));
    }

    @Test
    void careIsInTheOrderOfItsWords() {
        for (Method method : Method.values()) {
            assertThat(List.of(
                            leak(others.get("workmanship=careful").result(), method),
                            leak(ASSUMED, method),
                            leak(others.get("workmanship=hurried").result(), method)))
                    .isSorted()
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void theWayToPriceLeavesCostAndLeaksAlone() {
        HouseResult priced = others.get("pricing=overhead_and_net").result();
        for (Method method : Method.values()) {
            assertThat(priced.method(method).priceUsd())
                    .isNotCloseTo(ASSUMED.method(method).priceUsd(), within(1.0));
            assertThat(leak(priced, method)).isEqualTo(leak(ASSUMED, method));
            assertThat(priced.method(method).labourHours())
                    .isEqualTo(ASSUMED.method(method).labourHours());
        }
    }

    private static double leak(HouseResult house, Method method) {
        return house.method(method).leakProbability();
    }
}
