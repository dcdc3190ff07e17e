package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;

/** The beta-binomial belief, and its quantiles by table. */
class SharedQualityTest {

    /** Some openings seen for certain. */
    private static List<Likelihood> seen(int faulty, int sound) {
        return Stream.concat(
                        Collections.nCopies(faulty, Likelihood.look(true, 1)).stream(),
                        Collections.nCopies(sound, Likelihood.look(false, 1)).stream())
                .toList();
    }

    @Test
    void certainSightsAreConjugate() {
        // Beta(2, 3), 3 of 4 openings faulty: Beta(5, 4), mean 5/9 (any textbook on the beta-binomial model).
        SharedQuality after = new SharedQuality(0.4, 5).after(seen(3, 1));
        assertThat(after.mean()).isCloseTo(5.0 / 9, within(1e-12));
        assertThat(after.alpha()).isCloseTo(5, within(1e-9));
        assertThat(after.beta()).isCloseTo(4, within(1e-9));
    }

    @Test
    void correlationIsThatOfTwoOpenings() {
        SharedQuality quality = SharedQuality.of(0.2, 0.3);
        // Cov(X1, X2) = Var θ for two openings; Var X = μ(1 − μ).
        assertThat(quality.variance() / (0.2 * 0.8)).isCloseTo(0.3, within(1e-14));
        // Seeing one faulty opening raises the next from μ to μ + ρ(1 − μ).
        assertThat(quality.after(seen(1, 0)).mean()).isCloseTo(0.2 + 0.3 * 0.8, within(1e-14));
        assertThat(quality.after(seen(0, 1)).mean()).isCloseTo(0.2 - 0.3 * 0.2, within(1e-14));
    }

    @Test
    void doubtfulSightsKeepMeanAndVarianceOfTheExactPosterior() {
        SharedQuality prior = new SharedQuality(0.3, 2.5);
        List<Likelihood> sights = List.of(
                Likelihood.look(true, 0.8),
                Likelihood.look(false, 0.8),
                new Likelihood(3, 1),
                Likelihood.look(false, 0.6));
        SharedQuality after = prior.after(sights);
        double norm = moment(prior, sights, 0);
        double mean = moment(prior, sights, 1) / norm;
        assertThat(after.mean()).isCloseTo(mean, within(1e-4));
        assertThat(after.variance()).isCloseTo(moment(prior, sights, 2) / norm - mean * mean, within(1e-4));
    }

    /** Posterior moments by the midpoint rule over t with θ = sin²t, which takes the singular ends away. */
    private static double moment(SharedQuality prior, List<Likelihood> sights, int power) {
        int steps = 4000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) * Math.PI / 2 / steps;
            double theta = Math.pow(Math.sin(t), 2);
            double value = Math.pow(Math.sin(t), 2 * prior.alpha() - 1) * Math.pow(Math.cos(t), 2 * prior.beta() - 1);
            for (Likelihood sight : sights) {
                value *= theta * sight.ifStanding() + (1 - theta) * sight.ifNot();
            }
            sum += value * Math.pow(theta, power);
        }
        return sum;
    }

    @Test
    void whatIsKnownStaysKnown() {
        assertThat(SharedQuality.of(0, 0.3)
                        .after(List.of(Likelihood.look(true, 0.9)))
                        .mean())
                .isZero();
        assertThat(SharedQuality.of(1, 0.3).after(seen(0, 3)).mean()).isOne();
    }

    @Test
    void strataAreTheConditionalMeansOfTheExactQuantile() {
        SharedQuality quality = SharedQuality.of(0.2, 0.3);
        double[] strata = QualityStrata.exact(quality);
        BetaDistribution beta = BetaDistribution.of(quality.alpha(), quality.beta());
        for (int i = 3; i < QualityStrata.STRATA; i++) {
            double low = beta.inverseCumulativeProbability(i / 256.0);
            double high = beta.inverseCumulativeProbability((i + 1) / 256.0);
            assertThat(strata[i]).isBetween(low * 0.98 - 1e-4, high * 1.02 + 1e-4);
        }
        assertThat(Arrays.stream(strata).average().orElseThrow()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void gridKeepsTheMeanAndNearlyTheSpread() {
        QualityStrata grid = new QualityStrata(SharedQuality.of(0.5, 0.3).weight());
        for (double mean : new double[] {0.003, 0.04, 0.111, 0.3, 0.5, 0.77, 0.95, 0.997}) {
            for (double weight : new double[] {0.9, 7.0 / 3, 4, 11, 200}) {
                SharedQuality quality = new SharedQuality(mean, weight);
                double[] strata = grid.of(quality);
                double second = Arrays.stream(strata).map(p -> p * p).average().orElseThrow();
                assertThat(Arrays.stream(strata).average().orElseThrow()).isCloseTo(mean, within(1e-10));
                assertThat(Math.sqrt(second - mean * mean) / Math.sqrt(quality.variance()))
                        .as("mean %s weight %s", mean, weight)
                        .isCloseTo(1, within(mean < 0.02 || mean > 0.98 ? 0.1 : 0.03));
                assertThat(Arrays.stream(strata).boxed().toList())
                        .isSortedAccordingTo((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b));
            }
        }
    }

    @Test
    void withoutCorrelationEveryHouseIsTheSame() {
        double[] strata = new QualityStrata(SharedQuality.LARGEST_WEIGHT).of(SharedQuality.of(0.2, 0));
        assertThat(Collections.max(Arrays.stream(strata).boxed().toList())).isCloseTo(0.2, within(0.01));
        assertThat(Collections.min(Arrays.stream(strata).boxed().toList())).isCloseTo(0.2, within(0.01));
    }
}
