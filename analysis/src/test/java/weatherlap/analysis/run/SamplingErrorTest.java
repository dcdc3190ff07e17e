package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.junit.jupiter.api.Test;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

/**
 * Standard errors of a house over 50 seeds. A variance from 50 values is uncertain by 20 %, the ratio of two by 30 %; that of scrambled
 * points at 256 draws and plain ones at 4,096 is far below 1 for costs and their difference; for the leak score of a house whose faults
 * were seen it comes near to 1.5.
 */
class SamplingErrorTest {
    private static final int SEEDS = 50;
    private static final List<House> HOUSES =
            List.of(Town.porch("S", Lap.UNKNOWN), Town.house("B", Lap.REVERSED, 0, 0));

    /** @param allowed variance of scrambled points at 256 draws over that of plain ones at 4,096 */
    private record Estimate(String name, double allowed, ToDoubleFunction<HouseResult> of) {}

    private static final List<Estimate> MEANS = List.of(
            new Estimate("full-flange, horizon cost", 1, house -> horizon(house, Method.FULL_FLANGE)),
            new Estimate("insert, horizon cost", 1, house -> horizon(house, Method.INSERT)),
            new Estimate("difference", 1, house -> horizon(house, Method.FULL_FLANGE) - horizon(house, Method.INSERT)),
            new Estimate("insert, leak score", 2, house -> house.method(Method.INSERT)
                    .leakScore()
                    .mean()));

    @Test
    void scrambledPointsReachIn256DrawsWhatPlainOnesNeed4096For() {
        double[] scrambled = variances(Sampling.SOBOL, 256);
        double[] plain = variances(Sampling.PLAIN, 4096);
        for (int i = 0; i < scrambled.length; i++) {
            assertThat(scrambled[i])
                    .as(MEANS.get(i).name())
                    .isLessThan(MEANS.get(i).allowed() * plain[i]);
        }
    }

    @Test
    void scrambledPointsBeatStrataOfEachCauseAlone() {
        double[] scrambled = variances(Sampling.SOBOL, 256);
        double[] stratified = variances(Sampling.STRATIFIED, 256);
        for (int i = 0; i < scrambled.length; i++) {
            assertThat(scrambled[i]).as(MEANS.get(i).name()).isLessThan(stratified[i]);
        }
    }

    private static double horizon(HouseResult house, Method method) {
        return house.method(method).horizonCostUsd().mean();
    }

    /** Over the seeds, mean over the houses. */
    private static double[] variances(Sampling sampling, int draws) {
        HouseResult[][] results = IntStream.range(0, SEEDS)
                .parallel()
                .mapToObj(seed -> new Simulator(Town.BUNDLED, Town.CLIMATE, sampling, draws, seed))
                .map(simulator -> HOUSES.stream().map(simulator::simulate).toArray(HouseResult[]::new))
                .toArray(HouseResult[][]::new);
        return MEANS.stream()
                .mapToDouble(estimate -> IntStream.range(0, HOUSES.size())
                        .mapToDouble(h -> new Variance()
                                .evaluate(Arrays.stream(results)
                                        .mapToDouble(houses -> estimate.of().applyAsDouble(houses[h]))
                                        .toArray()))
                        .average()
                        .orElseThrow())
                .toArray();
    }
}
