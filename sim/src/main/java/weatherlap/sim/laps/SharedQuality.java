package weatherlap.sim.laps;

import java.util.List;
import org.apache.commons.math3.special.Beta;
import weatherlap.sim.Check;
import weatherlap.sim.Each;

/**
 * How often a fault stands at the openings of one house, or in the work of one crew: an unknown share θ ~ Beta(α, β), the same for all
 * openings, each of which has the fault with chance θ. So openings of a house resemble each other with the intra-class correlation
 * ρ = 1/(α + β + 1), and what is seen at one tells of the others (beta-binomial model).
 *
 * <p>When n openings are seen for certain and k have the fault, θ is Beta(α + k, β + n − k) afterwards. Where a sight can err, the
 * likelihood is ∏(θ·l_i + (1 − θ)·m_i), a polynomial in θ, and the posterior is a mixture of the n + 1 betas Beta(α + k, β + n − k); it is
 * replaced by the one beta of the same mean and variance. Mean and variance are thus exact, the shape is not; for certain sights all of
 * it is exact.
 *
 * @param mean E θ, 0 to 1; θ is known where it is 0 or 1
 * @param weight α + β, above 0: as many openings the belief is worth
 * @see "Skellam 1948, Journal of the Royal Statistical Society B 10(2) (the beta-binomial distribution)"
 */
public record SharedQuality(double mean, double weight) {
    /** A weight at which openings are independent for all purposes. */
    static final double LARGEST_WEIGHT = 1e6;

    public SharedQuality {
        Check.fraction("mean share of faults", mean);
        Check.positive("weight of the belief", weight);
    }

    /** The belief with a mean and an intra-class correlation of 0 to below 1. */
    public static SharedQuality of(double mean, double correlation) {
        Check.within("correlation", correlation, 0, 0.999_999);
        return new SharedQuality(mean, Math.min(LARGEST_WEIGHT, (1 - correlation) / correlation));
    }

    public double alpha() {
        return mean * weight;
    }

    public double beta() {
        return (1 - mean) * weight;
    }

    public double variance() {
        return mean * (1 - mean) / (weight + 1);
    }

    /** After sights at several openings, one each. */
    public SharedQuality after(List<Likelihood> sights) {
        if (known()) {
            return this;
        }
        List<Likelihood> telling = Each.where(sights, sight -> !sight.saysNothing());
        if (telling.isEmpty()) {
            return this;
        }
        int n = telling.size();
        double[] share = mixture(coefficients(telling));
        double first = 0;
        double second = 0;
        for (int k = 0; k <= n; k++) {
            double up = (alpha() + k) / (weight + n);
            first += share[k] * up;
            second += share[k] * up * (alpha() + k + 1) / (weight + n + 1);
        }
        double variance = second - first * first;
        double matched = variance > 0 ? first * (1 - first) / variance - 1 : LARGEST_WEIGHT;
        return new SharedQuality(Math.min(1, first), Math.max(1e-3, Math.min(LARGEST_WEIGHT, matched)));
    }

    /** Share of each Beta(α + k, β + n − k) in the posterior: c_k·B(α + k, β + n − k), scaled to sum 1. */
    private double[] mixture(double[] coefficients) {
        int n = coefficients.length - 1;
        double[] share = new double[n + 1];
        double prior = Beta.logBeta(alpha(), beta());
        double sum = 0;
        for (int k = 0; k <= n; k++) {
            share[k] = coefficients[k] * Math.exp(Beta.logBeta(alpha() + k, beta() + n - k) - prior);
            sum += share[k];
        }
        for (int k = 0; k <= n; k++) {
            share[k] /= sum;
        }
        return share;
    }

    /** c_k of ∏(θ·l_i + (1 − θ)·m_i) = Σ c_k θ^k (1 − θ)^(n − k), each sight scaled to a sum of 1. */
    private static double[] coefficients(List<Likelihood> sights) {
        double[] c = new double[sights.size() + 1];
        c[0] = 1;
        int degree = 0;
        for (Likelihood sight : sights) {
            double sum = sight.ifStanding() + sight.ifNot();
            degree++;
            for (int k = degree; k > 0; k--) {
                c[k] = (c[k] * sight.ifNot() + c[k - 1] * sight.ifStanding()) / sum;
            }
            c[0] *= sight.ifNot() / sum;
        }
        return c;
    }

    private boolean known() {
        return mean == 0 || mean == 1;
    }
}
