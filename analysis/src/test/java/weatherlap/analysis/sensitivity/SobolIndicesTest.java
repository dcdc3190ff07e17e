package weatherlap.analysis.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.sensitivity.SobolIndices.Design;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.SobolIndices.Share;
import weatherlap.sim.random.Streams;

/** Estimates against indices that are known in closed form. */
class SobolIndicesTest {
    private static final Design DESIGN = new Design(1024, 8, new Streams(1));

    @Test
    void ishigami() {
        // Ishigami and Homma 1990, a = 7, b = 0.1. Closed form: V1 = (1 + bπ⁴/5)²/2, V2 = a²/8, V13 = 8b²π⁸/225.
        double v1 = Math.pow(1 + 0.1 * Math.pow(Math.PI, 4) / 5, 2) / 2;
        double v2 = 49 / 8.0;
        double v13 = 8 * 0.01 * Math.pow(Math.PI, 8) / 225;
        double v = v1 + v2 + v13;
        assertThat(v).isCloseTo(13.8445879407, within(1e-9));

        SobolIndices found = estimate(SobolIndicesTest::ishigami, 3);

        assertThat(found.mean()).isCloseTo(3.5, within(0.02));
        assertThat(found.variance()).isCloseTo(v, within(0.01 * v));
        assertIndex(found, 0, 0.3139051911, 0.5575888552, 0.02);
        assertIndex(found, 1, 0.4424111448, 0.4424111448, 0.02);
        assertIndex(found, 2, 0, 0.2436836641, 0.02);
    }

    @Test
    void gFunction() {
        // Sobol' 1993: V_i = 1/(3 (1 + a_i)²), V + 1 = ∏ (1 + V_i), T_i = V_i ∏_{j≠i} (1 + V_j) / V.
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        double product = Arrays.stream(a).map(c -> 1 + partial(c)).reduce(1, (p, q) -> p * q);
        SobolIndices found = estimate(x -> gFunction(a, x), a.length);
        for (int i = 0; i < a.length; i++) {
            double first = partial(a[i]) / (product - 1);
            double total = partial(a[i]) * product / (1 + partial(a[i])) / (product - 1);
            assertIndex(found, i, first, total, 0.02);
        }
        assertThat(partial(0) / (product - 1)).isCloseTo(0.716192, within(1e-6));
    }

    /** Five factors in seven bear almost nothing: so few points put their estimates on either side of zero. */
    @Test
    void noShareIsNegativeOrMoreThanAll() {
        double[] a = {0, 1, 99, 99, 99, 99, 99};
        Design few = new Design(16, 2, new Streams(5));
        List<FactorGroup> groups = FactorGroup.singly(List.of("a", "b", "c", "d", "e", "f", "g"));
        CubeModel model = points -> new double[][] {
            Arrays.stream(points).mapToDouble(x -> gFunction(a, x)).toArray()
        };
        for (SobolIndices.Index index :
                SobolIndices.estimate(model, a.length, groups, few).get(0).indices()) {
            assertThat(index.firstOrder().value()).isBetween(0.0, 1.0);
            assertThat(index.total().value()).isBetween(0.0, 1.0);
        }
    }

    @Test
    void additiveFunctionByHand() {
        // Y = 3 X1 + 4 X2: variances 9/12 and 16/12, so 0.36 and 0.64, first order and total alike.
        SobolIndices found = estimate(x -> 1e6 + 3 * x[0] + 4 * x[1], 2);
        assertThat(found.variance()).isCloseTo(25 / 12.0, within(0.01));
        assertIndex(found, 0, 0.36, 0.36, 1e-3);
        assertIndex(found, 1, 0.64, 0.64, 1e-3);
    }

    @Test
    void groupOfAllFactorsHoldsAllTheVarianceAndAnIdleFactorNone() {
        List<FactorGroup> groups =
                List.of(new FactorGroup("all", List.of(0, 1, 2)), new FactorGroup("idle", List.of(3)));
        SobolIndices found = SobolIndices.estimate(rowwise(SobolIndicesTest::ishigami), 4, groups, DESIGN)
                .get(0);
        assertIndex(found, 0, 1, 1, 0.02);
        assertThat(found.indices().get(1).total().value()).isZero();
    }

    @Test
    void statedErrorIsOfTheSizeOfTheTrueOne() {
        // Over many seeds, the root mean square of (estimate − truth)/error stands near 1; 16 degrees of chance leave
        // 0.5 to 2.
        double squares = 0;
        int seeds = 16;
        for (int seed = 0; seed < seeds; seed++) {
            Index index = SobolIndices.estimate(
                            rowwise(SobolIndicesTest::ishigami),
                            3,
                            List.of(new FactorGroup("x1", List.of(0))),
                            new Design(64, 16, new Streams(seed)))
                    .get(0)
                    .indices()
                    .get(0);
            squares += Math.pow(
                    (index.total().value() - 0.5575888552) / index.total().error(), 2);
        }
        assertThat(Math.sqrt(squares / seeds)).isBetween(0.5, 2.0);
    }

    /**
     * Lognormal, so that a few points hold most of the variance, and of houses of two kinds that are drawn anew with each sequence: a
     * share within two of its errors of the truth in nine of ten studies or so, and totals that reach 1 as often.
     */
    @Test
    void statedErrorCoversAHeavyTailAndTheChoiceOfHouses() {
        double[][] spreads = {{0.9, 0.5, 0.3}, {0.3, 0.4, 0.8}};
        double[] scale = {3, 1};
        double[] total = new double[3];
        double[] first = new double[3];
        double variance = 0;
        for (int kind = 0; kind < 2; kind++) {
            double all = DoubleStream.of(spreads[kind]).map(s -> s * s).sum();
            // Y = c e^Σσz: Var Y = c² e^σ² (e^σ² − 1), Var E(Y|z_u) = c² e^σ² (e^σu² − 1), and T_u = 1 − S of the
            // others.
            double unit = scale[kind] * scale[kind] * Math.exp(all);
            variance += unit * Math.expm1(all);
            for (int u = 0; u < 3; u++) {
                double own = spreads[kind][u] * spreads[kind][u];
                first[u] += unit * Math.expm1(own);
                total[u] += unit * (Math.expm1(all) - Math.expm1(all - own));
            }
        }
        int studies = 100;
        int[] covered = new int[7];
        for (int seed = 0; seed < studies; seed++) {
            SplittableRandom kinds = new SplittableRandom(seed);
            int[] kind = IntStream.range(0, 60).map(r -> kinds.nextInt(2)).toArray();
            SobolIndices found = SobolIndices.estimateEach(
                            r -> rowwise(u -> lognormal(scale[kind[r]], spreads[kind[r]], u)),
                            3,
                            FactorGroup.singly(List.of("a", "b", "c")),
                            new Design(16, 60, new Streams(seed)))
                    .get(0);
            double sum = 0;
            double error = 0;
            for (int u = 0; u < 3; u++) {
                Index index = found.indices().get(u);
                covered[u] += covers(index.firstOrder(), first[u] / variance);
                covered[3 + u] += covers(index.total(), total[u] / variance);
                sum += index.total().value();
                error += index.total().error();
            }
            covered[6] += sum + 2 * error >= 1 ? 1 : 0;
        }
        assertThat(IntStream.of(covered)).as(Arrays.toString(covered)).allMatch(times -> times >= 84);
    }

    private static int covers(Share share, double truth) {
        return Math.abs(share.value() - truth) <= 2 * share.error() ? 1 : 0;
    }

    private static double lognormal(double scale, double[] spreads, double[] u) {
        double log = 0;
        for (int f = 0; f < spreads.length; f++) {
            log += spreads[f] * NormalDistribution.of(0, 1).inverseCumulativeProbability(u[f]);
        }
        return scale * Math.exp(log);
    }

    @Test
    void errorHoldsWhatDiffersFromOneSequenceToTheNext() {
        // Every other sequence sees Y = X0, the rest Y = X1: the share of X0 is 1/2, each sequence 1/2 off it.
        List<FactorGroup> groups = FactorGroup.singly(List.of("x0", "x1"));
        Index index = SobolIndices.estimateEach(shift -> rowwise(x -> x[shift % 2]), 2, groups, DESIGN)
                .get(0)
                .indices()
                .get(0);
        assertThat(index.total().value()).isCloseTo(0.5, within(0.01));
        assertThat(index.total().error()).isCloseTo(0.5 / Math.sqrt(7), within(0.01));
    }

    @Test
    void constantOutcomeHasNoDrivers() {
        Index index = estimate(x -> 7, 1).indices().get(0);
        assertThat(index).isEqualTo(new Index("x0", new Share(0, 0), new Share(0, 0)));
    }

    @Test
    void refusesMoreFactorsThanTheSequenceHasDimensionsFor() {
        assertThatThrownBy(() -> SobolIndices.estimate(rowwise(x -> 0), 501, List.of(), DESIGN))
                .hasMessageContaining("501");
    }

    private static void assertIndex(SobolIndices found, int i, double first, double total, double tolerance) {
        assertThat(found.indices().get(i).firstOrder().value()).isCloseTo(first, within(tolerance));
        assertThat(found.indices().get(i).total().value()).isCloseTo(total, within(tolerance));
    }

    private static SobolIndices estimate(ToDoubleFunction<double[]> function, int factors) {
        List<String> names = IntStream.range(0, factors).mapToObj(i -> "x" + i).toList();
        return SobolIndices.estimate(rowwise(function), factors, FactorGroup.singly(names), DESIGN)
                .get(0);
    }

    private static CubeModel rowwise(ToDoubleFunction<double[]> function) {
        return points ->
                new double[][] {Arrays.stream(points).mapToDouble(function).toArray()};
    }

    private static double ishigami(double[] u) {
        double x1 = Math.PI * (2 * u[0] - 1);
        double x2 = Math.PI * (2 * u[1] - 1);
        double x3 = Math.PI * (2 * u[2] - 1);
        return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    private static double gFunction(double[] a, double[] u) {
        double product = 1;
        for (int i = 0; i < a.length; i++) {
            product *= (Math.abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
        }
        return product;
    }

    private static double partial(double a) {
        return 1 / (3 * (1 + a) * (1 + a));
    }
}
