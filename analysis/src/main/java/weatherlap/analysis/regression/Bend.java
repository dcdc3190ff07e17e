package weatherlap.analysis.regression;

import org.apache.commons.math3.linear.RealMatrix;

/**
 * How far the root of the fit's equations lies from the mean. A guess that is low makes the noise small and its jobs heavy, so that the
 * root β̂ of U(β) = Λ (β − μ) is low: over shops like the prior its mean error is −½ V b to second order,
 *
 * <pre>b = Σ_mn U_·,mn V_mn        V = (I + Λ)⁻¹</pre>
 *
 * <p>with U the score of quasi-likelihood, I its information, Λ the precision of the prior. It takes the first two moments of the noise
 * alone. For observations whose mean is foreseen with relative derivatives z = x + p (x of the rates, p of the pace, which stands in an
 * exponent) and the inverse P of their relative covariance,
 *
 * <pre>½ b = Σ_ik P_ik (x_i (x_iᵀ V z_k) + z_i (z_kᵀ V z_k + x_kᵀ V x_k) / 2)</pre>
 *
 * @see "McCullagh, Nelder 1989, Generalized Linear Models, ch. 9 (quasi-likelihood); Cox, Snell 1968, Journal of the Royal Statistical
 *     Society B 30(2) (mean errors of second order); from memory"
 */
public final class Bend {
    private final double[][] covariance;
    private final double[] half;

    /** @param covariance V of the unknowns at the root */
    public Bend(RealMatrix covariance) {
        this.covariance = covariance.getData();
        half = new double[this.covariance.length];
    }

    /** V ½ b, to be added to the root. */
    public double[] shift() {
        double[] shift = new double[half.length];
        for (int i = 0; i < shift.length; i++) {
            for (int j = 0; j < half.length; j++) {
                shift[i] += covariance[i][j] * half[j];
            }
        }
        return shift;
    }

    /**
     * One observation.
     *
     * @param columns of z, each once
     * @param z relative derivatives, of the rates the first {@code rates} of them
     * @param precision of it, relative
     */
    public void add(int[] columns, double[] z, int rates, double precision) {
        double xx = 0;
        double xp = 0;
        double pp = 0;
        for (int i = 0; i < columns.length; i++) {
            double[] row = covariance[columns[i]];
            double toRates = 0;
            double toPace = 0;
            for (int j = 0; j < rates; j++) {
                toRates += row[columns[j]] * z[j];
            }
            for (int j = rates; j < columns.length; j++) {
                toPace += row[columns[j]] * z[j];
            }
            xx += i < rates ? z[i] * toRates : 0;
            xp += i < rates ? z[i] * toPace : 0;
            pp += i < rates ? 0 : z[i] * toPace;
        }
        double all = precision * (2 * xx + 2 * xp + pp) / 2;
        double own = precision * (xx + xp);
        for (int i = 0; i < columns.length; i++) {
            half[columns[i]] += z[i] * (all + (i < rates ? own : 0));
        }
    }

    /**
     * Timed steps of a job, each with a rate of its own and all with one pace, of relative covariance (I − shared 11ᵀ)⁻¹ / precision.
     *
     * @param columns of the steps, then of the pace
     * @param z 1 over each rate, then of the pace
     * @param steps how many were timed, 1 or more
     * @param precision of what is not shared, relative
     * @param shared 0 to 1 over the steps
     */
    public void addTimed(int[] columns, double[] z, int steps, double precision, double shared) {
        double pp = 0;
        double[] xp = new double[steps];
        for (int j = steps; j < columns.length; j++) {
            for (int k = 0; k < steps; k++) {
                xp[k] += z[k] * covariance[columns[k]][columns[j]] * z[j];
            }
            for (int k = steps; k < columns.length; k++) {
                pp += z[k] * covariance[columns[k]][columns[j]] * z[j];
            }
        }
        double[] bends = new double[steps];
        double sum = 0;
        for (int k = 0; k < steps; k++) {
            bends[k] = z[k] * covariance[columns[k]][columns[k]] * z[k] + xp[k] + pp / 2;
            sum += bends[k];
        }
        for (int i = 0; i < steps; i++) {
            double own = z[i] * covariance[columns[i]][columns[i]] * z[i] + xp[i];
            double others = 0;
            for (int k = 0; k < steps; k++) {
                others += z[i] * covariance[columns[i]][columns[k]] * z[k] + xp[i];
            }
            half[columns[i]] += precision * z[i] * (own + bends[i] - shared * (others + sum));
        }
        for (int j = steps; j < columns.length; j++) {
            half[columns[j]] += precision * z[j] * (1 - steps * shared) * sum;
        }
    }
}
