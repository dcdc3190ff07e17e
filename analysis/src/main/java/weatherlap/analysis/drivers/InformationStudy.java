package weatherlap.analysis.drivers;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.sensitivity.PartialInformation;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/**
 * What a better value of each row is worth, when every house's method is chosen by it: EVPPI, mean USD a house.
 *
 * @param worths in the order of the factors
 * @param nothingUsd worth that {@value #DUMMIES} columns of noise seem to have, the largest: a row below it cannot be told from noise
 * @param everythingUsd worth of knowing every row at once
 */
record InformationStudy(List<Worth> worths, double nothingUsd, double everythingUsd) {
    private static final int DUMMIES = 40;

    public InformationStudy {
        worths = List.copyOf(worths);
    }

    /** @param costs cost differences at points of the cube, [house][point] */
    static InformationStudy of(
            List<Factor> factors, Function<double[][], double[][]> costs, int points, Streams streams) {
        double[][] rows = new double[points][factors.size()];
        for (int f = 0; f < factors.size(); f++) {
            double[] column = Sampling.STRATIFIED.uniforms(
                    points, streams.world("information " + factors.get(f).name()));
            for (int i = 0; i < points; i++) {
                rows[i][f] = column[i];
            }
        }
        double[][] differences = costs.apply(rows);
        List<Worth> worths = IntStream.range(0, factors.size())
                .parallel()
                .mapToObj(f -> aHouse(
                        PartialInformation.on(Arrays.stream(rows)
                                .mapToDouble(row -> RangedAssumptions.value(factors.get(f), row[f]))
                                .toArray()),
                        differences))
                .toList();
        double nothing = IntStream.range(0, DUMMIES)
                .mapToDouble(k -> aHouse(
                                PartialInformation.on(
                                        Sampling.STRATIFIED.uniforms(points, streams.world("noise " + k))),
                                differences)
                        .value())
                .max()
                .orElseThrow();
        return new InformationStudy(worths, nothing, everything(differences));
    }

    /** Factors whose worth stands out of the noise, the most first, at most so many; positions. */
    List<Integer> worthMeasuring(int most) {
        return IntStream.range(0, worths.size())
                .boxed()
                .filter(f -> worths.get(f).value() > nothingUsd)
                .sorted(Comparator.comparingDouble(f -> -worths.get(f).value()))
                .limit(most)
                .toList();
    }

    /** Mean over the houses; the error holds their choice where there are more than one. */
    private static Worth aHouse(PartialInformation known, double[][] differences) {
        Worth all = known.worth(differences);
        double[] byHouse = Arrays.stream(differences)
                .mapToDouble(house -> known.worth(new double[][] {house}).value())
                .toArray();
        double ofChoice = Math.sqrt(StatUtils.variance(byHouse) / byHouse.length);
        return new Worth(all.value() / byHouse.length, Math.hypot(all.error() / byHouse.length, ofChoice));
    }

    private static double everything(double[][] differences) {
        double sum = 0;
        for (double[] house : differences) {
            double mean = Arrays.stream(house).average().orElseThrow();
            double informed =
                    Arrays.stream(house).map(d -> Math.min(d, 0)).average().orElseThrow();
            sum += Math.min(mean, 0) - informed;
        }
        return sum / differences.length;
    }
}
