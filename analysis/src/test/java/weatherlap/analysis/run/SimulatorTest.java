package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningExplanation;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Simulator;

class SimulatorTest {
    private static final House HOUSE = Town.house("H1");

    private static Simulator simulator(Sampling sampling, int draws, long seed) {
        return new Simulator(Town.BUNDLED, Town.CLIMATE, sampling, draws, seed);
    }

    @Test
    void aHouseDoesNotDependOnOthersOrThreads() {
        List<House> many =
                IntStream.range(0, 9).mapToObj(i -> Town.house("H" + i)).toList();
        Results alone = simulator(Sampling.SOBOL, 64, 7).run(new Portfolio(List.of(HOUSE)), 1);
        Results together = simulator(Sampling.SOBOL, 64, 7).run(new Portfolio(many), 3);
        HouseResult one = alone.houses().get(0);
        HouseResult same = together.houses().get(1);
        assertThat(same.methods()).isEqualTo(one.methods());
        assertThat(same.openings()).isEqualTo(one.openings());
        assertThat(same.elevations()).isEqualTo(one.elevations());
        assertThat(same.horizonDifferenceUsd()).containsExactly(one.horizonDifferenceUsd());
        assertThat(together.houses())
                .extracting(h -> h.house().id())
                .containsExactlyElementsOf(many.stream().map(House::id).toList());
    }

    @Test
    void anotherSeedGivesOtherDraws() {
        assertThat(simulator(Sampling.SOBOL, 64, 8).simulate(HOUSE).horizonDifferenceUsd())
                .isNotEqualTo(simulator(Sampling.SOBOL, 64, 7).simulate(HOUSE).horizonDifferenceUsd());
    }

    /** Exact means against plain draws: the middle one (from the band: σ ≈ (p90 − p10)/2.563), and the mean of those a repair skews. */
    @ParameterizedTest
    @EnumSource(Method.class)
    void exactMeansLieInTheMiddleOfTheDraws(Method method) {
        int draws = 4000;
        Simulator simulator = simulator(Sampling.PLAIN, draws, 3);
        MethodResult plain = simulator.simulate(HOUSE).method(method);
        double[] costs = simulator.costUsd(HOUSE).get(method);
        double error = Math.sqrt(StatUtils.variance(costs) / draws);
        assertThat(StatUtils.mean(costs)).isCloseTo(plain.costUsd().mean(), within(4 * error));
        for (var summary : List.of(plain.labourHours(), plain.materialUsd())) {
            double sigma = (summary.p90() - summary.p10()) / 2.563;
            assertThat(summary.p50()).isCloseTo(summary.mean(), within(0.15 * sigma));
            assertThat(summary.p10()).isLessThan(summary.p50());
            assertThat(summary.p50()).isLessThan(summary.p90());
        }
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void everyExplanationEndsInTheResult(Method method) {
        Simulator simulator = simulator(Sampling.SOBOL, 128, 7);
        HouseResult result = simulator.simulate(HOUSE);
        List<OpeningResult> openings =
                result.openings().stream().filter(o -> o.method() == method).toList();
        for (int o = 0; o < openings.size(); o++) {
            OpeningResult opening = openings.get(o);
            OpeningExplanation why = simulator.explain(HOUSE, o, method);
            assertThat(why.glassLost().value()).isCloseTo(opening.glassLostFt2(), within(1e-9));
            assertThat(why.clearArea().value()).isCloseTo(opening.clearAreaFt2(), within(1e-9));
            assertThat(why.labour().value()).isCloseTo(opening.labourMinutes().mean(), within(1e-9));
            assertThat(why.material().value()).isCloseTo(opening.materialUsd().mean(), within(1e-9));
            assertThat(why.price().value()).isCloseTo(opening.priceUsd(), within(1e-9));
            assertThat(why.leak().value()).isCloseTo(opening.leakProbability(), within(1e-12));
            why.all().forEach(SimulatorTest::addsUp);
        }
    }

    /** Sums, products and differences are those of their parts, all the way down. */
    private static void addsUp(Amount amount) {
        List<Double> parts = amount.parts().stream().map(Amount::value).toList();
        Function<Double, org.assertj.core.data.Offset<Double>> near = x -> within(1e-9 * Math.max(1, Math.abs(x)));
        switch (amount.rule()) {
            case SUM ->
                assertThat(amount.value())
                        .as(amount.name())
                        .isCloseTo(parts.stream().mapToDouble(x -> x).sum(), near.apply(amount.value()));
            case PRODUCT ->
                assertThat(amount.value())
                        .as(amount.name())
                        .isCloseTo(parts.stream().reduce(1.0, (a, b) -> a * b), near.apply(amount.value()));
            case DIFFERENCE ->
                assertThat(amount.value())
                        .as(amount.name())
                        .isCloseTo(
                                parts.get(0)
                                        - parts.stream()
                                                .skip(1)
                                                .mapToDouble(x -> x)
                                                .sum(),
                                near.apply(amount.value()));
            case GIVEN -> assertThat(parts).as(amount.name()).isEmpty();
            case FORMULA -> assertThat(parts).as(amount.name()).isNotEmpty();
        }
        amount.parts().forEach(SimulatorTest::addsUp);
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void partsAddUpToTheHouse(Method method) {
        HouseResult result = simulator(Sampling.SOBOL, 128, 7).simulate(HOUSE);
        MethodResult house = result.method(method);
        List<OpeningResult> openings =
                result.openings().stream().filter(o -> o.method() == method).toList();
        assertThat(openings.stream().mapToDouble(OpeningResult::priceUsd).sum())
                .isCloseTo(house.priceUsd(), within(1e-6));
        assertThat(openings.stream().mapToDouble(OpeningResult::glassFt2).sum())
                .isCloseTo(house.glassFt2(), within(1e-9));
        assertThat(house.costParts().values().stream().mapToDouble(x -> x).sum())
                .isCloseTo(house.costUsd().mean(), within(1e-6));
        assertThat(house.labourMinutesByStep().values().stream()
                                .mapToDouble(x -> x)
                                .sum()
                        / 60)
                .isCloseTo(house.labourHours().mean(), within(1e-9));
        assertThat(house.horizonCostUsd().mean())
                .isCloseTo(house.priceUsd() + house.expectedDamageUsd() + house.glassValueUsd(), within(1e-6));
        assertThat(result.elevations().stream()
                        .filter(e -> e.method() == method)
                        .mapToDouble(e -> e.horizonCostUsdMean())
                        .sum())
                .isCloseTo(house.horizonCostUsd().mean(), within(1e-6));
        for (OpeningResult opening : openings) {
            assertThat(opening.leakCauses().stream()
                            .mapToDouble(OpeningResult.LeakCause::contribution)
                            .sum())
                    .isCloseTo(opening.leakProbability(), within(1e-12));
        }
    }

    @Test
    void theInsertShowsLessGlassTakesLessLabourAndKeepsOldFaults() {
        HouseResult result = simulator(Sampling.SOBOL, 128, 7).simulate(HOUSE);
        MethodResult flange = result.method(Method.FULL_FLANGE);
        MethodResult insert = result.method(Method.INSERT);
        assertThat(insert.glassFt2()).isLessThan(flange.glassFt2());
        assertThat(insert.labourHours().mean()).isLessThan(flange.labourHours().mean());
        assertThat(insert.leakProbability()).isGreaterThan(flange.leakProbability());
    }

    /** An insert under a deep porch, laps seen to be sound, must come out nearly as good. */
    @Test
    void anInsertInAShelteredWallWithSoundLapsIsNearlyAsGood() {
        HouseResult sound = simulator(Sampling.SOBOL, 128, 7).simulate(Town.porch("S", Lap.SHINGLED));
        HouseResult bad = simulator(Sampling.SOBOL, 128, 7).simulate(Town.house("B", Lap.REVERSED, 0, 0));
        double flange = sound.method(Method.FULL_FLANGE).leakProbability();
        double insert = sound.method(Method.INSERT).leakProbability();
        assertThat(insert - flange).isLessThan(0.02);
        assertThat(bad.method(Method.INSERT).leakProbability())
                .isGreaterThan(bad.method(Method.FULL_FLANGE).leakProbability() + 0.05);
    }

    @Test
    void stratifiedAndPlainDrawsAgree() {
        MethodResult plain = simulator(Sampling.PLAIN, 4000, 5).simulate(HOUSE).method(Method.INSERT);
        MethodResult stratified =
                simulator(Sampling.SOBOL, 500, 5).simulate(HOUSE).method(Method.INSERT);
        double sigma = (plain.costUsd().p90() - plain.costUsd().p10()) / 2.563;
        assertThat(stratified.costUsd().p90()).isCloseTo(plain.costUsd().p90(), within(0.15 * sigma));
        assertThat(stratified.leakProbability())
                .isCloseTo(plain.leakProbability(), within(0.1 * plain.leakProbability()));
    }
}
