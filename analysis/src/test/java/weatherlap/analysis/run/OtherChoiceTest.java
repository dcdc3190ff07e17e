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
import weatherlap.sim.price.Pricing;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
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
                        "pricing=overhead_and_net",
                        "warranty_covers=any_leak",
                        "warranty_covers=nothing");
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

    /** Whoever pays, a leak is paid for once: the price rises by the shop's repairs and their margin, the family's fall by as much. */
    @Test
    void theWarrantyMovesRepairsFromTheFamilyIntoThePriceAndMakesNoneTwice() {
        Pricing pricing = Pricing.of(Town.BUNDLED.scenario());
        for (Method method : Method.values()) {
            MethodResult nothing =
                    others.get("warranty_covers=nothing").result().method(method);
            MethodResult own = ASSUMED.method(method);
            MethodResult any = others.get("warranty_covers=any_leak").result().method(method);
            assertThat(nothing.warrantyUsd()).isZero();
            assertThat(own.warrantyUsd()).isPositive().isLessThanOrEqualTo(any.warrantyUsd());
            for (MethodResult covered : List.of(own, any)) {
                assertThat(covered.expectedDamageUsd() + covered.warrantyUsd())
                        .isCloseTo(nothing.expectedDamageUsd(), within(1e-6));
                assertThat(covered.priceUsd() - nothing.priceUsd())
                        .isCloseTo(pricing.chargedUsd(covered.warrantyUsd()), within(1e-6));
            }
        }
        // All laps of a full flange but the barrier beyond it are the crew's; most of an insert's were in the wall.
        assertThat(sharePaid(Method.FULL_FLANGE)).isBetween(0.6, 0.9);
        assertThat(sharePaid(Method.INSERT)).isBetween(0.0, 0.4);
    }

    /** Of what a shop that mends any leak would pay, by one that mends its own. */
    private double sharePaid(Method method) {
        return ASSUMED.method(method).warrantyUsd()
                / others.get("warranty_covers=any_leak").result().method(method).warrantyUsd();
    }

    private static double leak(HouseResult house, Method method) {
        return house.method(method).leakProbability();
    }
}
