package weatherlap.sim.laps;

import weatherlap.sim.Check;

/**
 * How long a seal lasts: F(t) = 1 − exp(−(t/η)^k).
 *
 * @param shape k, above 1 for wear
 * @param scaleYears η, the age by which 63 % have failed
 * @see "RILEM TC 190-SBJ (service life of sealed joints): of joints being resealed 55 % had failed within 10 years and 5 % lasted beyond
 *     20. A sample of joints that needed resealing is biased to early failure: true lives are longer."
 */
public record WeibullLife(double shape, double scaleYears) {
    public WeibullLife {
        Check.positive("Weibull shape", shape);
        Check.positive("Weibull scale", scaleYears);
    }

    /** Share that has failed by an age, 0 to 1. */
    public double failedBy(double years) {
        return years <= 0 ? 0 : -Math.expm1(-Math.pow(years / scaleYears, shape));
    }

    /** Chance that a seal sound at one age fails before another; 1 where none is left. */
    public double failsBetween(double fromYears, double toYears) {
        return -Math.expm1(Math.pow(Math.max(0, fromYears) / scaleYears, shape)
                - Math.pow(Math.max(0, toYears) / scaleYears, shape));
    }
}
