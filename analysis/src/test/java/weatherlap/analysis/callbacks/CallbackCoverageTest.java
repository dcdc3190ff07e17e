package weatherlap.analysis.callbacks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fit on made shops of which the truth is known. */
class CallbackCoverageTest {
    private static final LevelFit.Prior PRIOR = new LevelFit.Prior(0.4, 0.3, List.of(0.25, 0.5, 1.0, 2.0));
    private static final int SHOPS = 600;

    /** By the model, of all openings of a job: a tenth of a call a year and job at first, half of that later. */
    private static final LaggedExposure EXPECTED =
            new LaggedExposure(List.of(0.0, 3.0, 10.0), List.of(0.0, 0.12, 0.26));

    /**
     * 600 shops drawn from the prior, seed 20, half of their jobs by each method, followed up to eight years: the share of the 90 %
     * intervals that hold the true level lies between 0.87 and 0.93 (its standard error is about 0.01).
     */
    @ParameterizedTest
    @ValueSource(ints = {20, 100, 500})
    void intervalsHoldTheTruthNineTimesInTen(int jobs) {
        RandomGenerator random = new Well19937c(20);
        int held = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            double shared = gamma(random, 1 / PRIOR.shared(), 1);
            double lag = PRIOR.lagsYears().get(random.nextInt(PRIOR.lagsYears().size()));
            double[] truth = {gamma(random, 1 / PRIOR.between(), shared), gamma(random, 1 / PRIOR.between(), shared)};
            LevelFit fit = LevelFit.of(
                    List.of(made(random, jobs / 2, truth[0], lag), made(random, jobs / 2, truth[1], lag)), PRIOR);
            for (int group = 0; group < 2; group++) {
                double below = fit.probabilityBelow(group, truth[group]);
                held += below >= 0.05 && below <= 0.95 ? 1 : 0;
            }
        }
        assertThat(held / (2.0 * SHOPS)).isBetween(0.87, 0.93);
    }

    /**
     * 60 shops of 200 jobs each, seed 7, some 30 calls where the tables are right: in nine of ten shops it is known, at nine in ten, on which
     * side of the tables a level of half or double them lies. (The whole interval leaves the tables out in 46 of the 60 at half.)
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2})
    void halfAndDoubleAreFound(double truth) {
        RandomGenerator random = new Well19937c(7);
        long found = IntStream.range(0, 60)
                .mapToObj(shop -> LevelFit.of(List.of(made(random, 200, truth, 0.5)), PRIOR)
                        .probabilityBelow(0, 1))
                .filter(below -> truth < 1 ? below > 0.9 : below < 0.1)
                .count();
        assertThat(found).isGreaterThanOrEqualTo(54);
    }

    @Test
    void noCallsPullTheLevelDownAndLeaveItAboveZero() {
        List<LevelFit.Job> silent = IntStream.range(0, 10)
                .mapToObj(i -> new LevelFit.Job(LaggedExposure.constant(6 * 0.01), 5, List.of()))
                .toList();
        LevelFit fit = LevelFit.of(List.of(new LevelFit.Group(silent)), PRIOR);
        assertThat(fit.level(0).mean()).isBetween(0.05, 0.7);
        assertThat(fit.level(0).low()).isPositive();
        assertThat(fit.level(0).high()).isLessThan(2.5);
    }

    @Test
    void withoutRecordsThePriorStays() {
        LevelFit fit = LevelFit.of(List.of(new LevelFit.Group(List.of()), new LevelFit.Group(List.of())), PRIOR);
        assertThat(fit.level(0).mean()).isBetween(0.99, 1.01);
        assertThat(fit.shared().mean()).isBetween(0.99, 1.01);
    }

    /** Calls of one method move the other a little, by what they share. */
    @Test
    void methodsArePooledInPart() {
        RandomGenerator random = new Well19937c(3);
        LevelFit fit = LevelFit.of(List.of(made(random, 400, 3, 0.5), new LevelFit.Group(List.of())), PRIOR);
        assertThat(fit.level(0).mean()).isBetween(2.3, 3.7);
        assertThat(fit.level(1).mean()).isBetween(1.2, fit.level(0).mean());
        assertThat(fit.level(1).high() - fit.level(1).low())
                .isGreaterThan(2 * (fit.level(0).high() - fit.level(0).low()));
    }

    private static double gamma(RandomGenerator random, double shape, double mean) {
        return new GammaDistribution(random, shape, mean / shape).sample();
    }

    /** Jobs followed for half a year to eight; what had not been told by then is not known. */
    private static LevelFit.Group made(RandomGenerator random, int jobs, double level, double lagYears) {
        List<LevelFit.Job> made = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            double years = 0.5 + 7.5 * random.nextDouble();
            made.add(new LevelFit.Job(EXPECTED, years, calls(random, years, level, lagYears)));
        }
        return new LevelFit.Group(made);
    }

    private static List<Double> calls(RandomGenerator random, double years, double level, double lagYears) {
        List<Double> calls = new ArrayList<>();
        double before = 0;
        for (int k = 0; k < 2; k++) {
            double start = EXPECTED.knots().get(k);
            double end = Math.min(years, EXPECTED.knots().get(k + 1));
            double expected = EXPECTED.happened(end) - before;
            before = EXPECTED.happened(end);
            int events = end > start && expected > 0
                    ? new PoissonDistribution(random, level * expected, 1e-12, 10_000).sample()
                    : 0;
            for (int i = 0; i < events; i++) {
                double told =
                        start + (end - start) * random.nextDouble() - lagYears * Math.log(1 - random.nextDouble());
                if (told <= years) {
                    calls.add(told);
                }
            }
        }
        return calls;
    }
}
