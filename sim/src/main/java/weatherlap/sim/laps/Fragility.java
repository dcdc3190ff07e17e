package weatherlap.sim.laps;

import org.apache.commons.statistics.distribution.NormalDistribution;
import weatherlap.sim.Check;

/**
 * The chance that a year's water does damage. Of what enters, the wall drains and dries {@code dryingLitres} without harm; what it keeps,
 * K = max(0, entered − dried), does damage with probability Φ(ln(K/m)/β): a lognormal fragility, as used for damage under loads.
 *
 * <p>Years are independent given K: the curve stands for the weather within a year and the luck of where the water goes, not for walls
 * that can take more for ever. Median and spread are judgement, set so that whole houses come out as surveys found them.
 *
 * @param dryingLitres drained and dried by one wetted place a year, L
 * @param medianLitres m, L kept a year at which damage is as likely as not in that year
 * @param spread β, standard deviation of the logarithm
 */
public record Fragility(double dryingLitres, double medianLitres, double spread) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    public Fragility {
        Check.notNegative("water dried a year", dryingLitres);
        Check.positive("median of the fragility", medianLitres);
        Check.positive("spread of the fragility", spread);
    }

    /** Chance of damage in one year in which {@code enteredLitres} get into the wall at one place, 0 to 1. */
    public double annualProbability(double enteredLitres) {
        double kept = enteredLitres - dryingLitres;
        return kept <= 0 ? 0 : STANDARD.cumulativeProbability(Math.log(kept / medianLitres) / spread);
    }
}
