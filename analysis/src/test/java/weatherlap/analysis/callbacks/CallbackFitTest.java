package weatherlap.analysis.callbacks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The parts of the fit against published values and closed forms. */
class CallbackFitTest {
    private static final List<Integer> FAILURES = List.of(5, 1, 5, 14, 3, 19, 1, 1, 4, 22);
    private static final List<Double> THOUSAND_HOURS =
            List.of(94.3, 15.7, 62.9, 126.0, 5.24, 31.4, 1.05, 1.05, 2.1, 10.5);

    /**
     * Validation. Ten pumps of Gaver and O'Muircheartaigh 1987 with α ~ Exp(1), β ~ Gamma(0.1, 1): posterior means α 0.697, β 0.927,
     * θ₁ 0.0598, θ₁₀ 1.990 by a grid integral; Mamba.jl's worked example, by Markov chains, prints 0.679, 0.894, 0.0597, 1.988.
     */
    @Test
    void pumpsComeOutAsPublished() {
        List<GammaPoisson.Point> points = new ArrayList<>();
        for (double logAlpha = -4; logAlpha <= 2.5; logAlpha += 0.04) {
            for (double logBeta = -7; logBeta <= 3; logBeta += 0.05) {
                double alpha = Math.exp(logAlpha);
                double beta = Math.exp(logBeta);
                double weight = logAlpha - alpha + 0.1 * logBeta - beta;
                points.add(new GammaPoisson.Point(alpha, beta, weight, THOUSAND_HOURS));
            }
        }
        GammaPoisson pumps = GammaPoisson.of(points, FAILURES);
        List<Double> weights = pumps.weights();
        assertThat(IntStream.range(0, points.size())
                        .mapToDouble(p -> weights.get(p) * points.get(p).shape())
                        .sum())
                .isCloseTo(0.697, within(0.0005));
        assertThat(IntStream.range(0, points.size())
                        .mapToDouble(p -> weights.get(p) * points.get(p).rate())
                        .sum())
                .isCloseTo(0.927, within(0.0005));
        assertThat(pumps.mean(0)).isCloseTo(0.0598, within(0.00005)).isCloseTo(0.0597, within(0.0002));
        assertThat(pumps.mean(9)).isCloseTo(1.990, within(0.0005)).isCloseTo(1.988, within(0.004));
    }

    /** Validation. With one point the rate is Gamma(a + n, b + E): Gamma(1, b) has the median ln 2 / b. */
    @Test
    void oneGroupIsConjugate() {
        GammaPoisson one = GammaPoisson.of(List.of(new GammaPoisson.Point(1, 2, 0, List.of(3.0))), List.of(0));
        assertThat(one.mean(0)).isCloseTo(1 / 5.0, within(1e-12));
        assertThat(one.quantile(0, 0.5)).isCloseTo(Math.log(2) / 5, within(1e-9));
        assertThat(one.probabilityBelow(0, 1)).isCloseTo(1 - Math.exp(-5), within(1e-12));
    }

    /** Validation. One rate, T = 2.4, mean lag 1: the share reported is 1 − (1 − e^(−T/d)) d/T = 0.6211. */
    @Test
    void laggedExposureIsTheClosedForm() {
        LaggedExposure year = LaggedExposure.constant(1);
        assertThat(year.reported(2.4, 1) / 2.4).isCloseTo(0.6211, within(0.00005));
        assertThat(year.reported(2.4, 0)).isCloseTo(2.4, within(1e-12));
        assertThat(year.reported(0, 1)).isZero();
    }

    /** The reports of all years before sum to those reported by then; midpoint rule over a rate with three steps. */
    @Test
    void reportsOfTheYearsSumToThoseReported() {
        LaggedExposure steps = new LaggedExposure(List.of(0.0, 1.0, 3.0, 7.0), List.of(0.0, 0.3, 0.4, 2.0));
        for (double lag : new double[] {0.2, 1, 5}) {
            for (double years : new double[] {0.5, 2.5, 12}) {
                int parts = 20_000;
                double step = years / parts;
                double sum = IntStream.range(0, parts)
                        .mapToDouble(i -> step * steps.reportedPerYear((i + 0.5) * step, lag))
                        .sum();
                assertThat(sum).isCloseTo(steps.reported(years, lag), within(1e-6));
            }
        }
        assertThat(steps.happened(12)).isCloseTo(2.0 + 5 * 0.4, within(1e-12));
    }

    /**
     * Validation. The 21 patients on 6-mercaptopurine of Freireich et al. 1963 (Blood 21), weeks of remission, + still in remission: the
     * table of Kleinbaum and Klein, Survival Analysis, ch. 2, and its Greenwood errors (from memory).
     */
    @Test
    void remissionsSurviveAsPublished() {
        List<KaplanMeier.Followed> patients = Stream.of(
                        "6", "6", "6", "6+", "7", "9+", "10", "10+", "11+", "13", "16", "17+", "19+", "20+", "22", "23",
                        "25+", "32+", "32+", "34+", "35+")
                .map(weeks ->
                        new KaplanMeier.Followed(Double.parseDouble(weeks.replace("+", "")), !weeks.endsWith("+")))
                .toList();
        KaplanMeier curve = KaplanMeier.of(patients);
        assertThat(curve.steps().stream().map(s -> Math.round(1e4 * s.survival()) / 1e4))
                .containsExactly(0.8571, 0.8067, 0.7529, 0.6902, 0.6275, 0.5378, 0.4482);
        assertThat(curve.steps().stream().map(s -> Math.round(1e4 * s.standardError()) / 1e4))
                .containsExactly(0.0764, 0.0869, 0.0963, 0.1068, 0.1141, 0.1282, 0.1346);
        assertThat(curve.steps().stream().map(KaplanMeier.Step::atRisk)).containsExactly(21, 17, 15, 12, 11, 7, 6);
        assertThat(curve.at(5.9)).isEqualTo(1);
        assertThat(curve.at(12)).isCloseTo(0.7529, within(0.00005));
    }

    /** A backtest asks for a level at each job and each price; it took four fifths of its time. */
    @Test
    void aLevelIsWorkedOutOnce() {
        LevelFit.Job job = new LevelFit.Job(LaggedExposure.constant(0.1), 3, List.of(1.0));
        LevelFit fit = LevelFit.of(
                List.of(new LevelFit.Group(List.of(job)), new LevelFit.Group(List.of())),
                new LevelFit.Prior(1, 0.1, List.of(0.5)));
        assertThat(fit.level(0)).isSameAs(fit.level(0)).isNotEqualTo(fit.level(1));
    }
}
