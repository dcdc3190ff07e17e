package weatherlap.sim.labour;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import weatherlap.sim.Check;

/**
 * Time of hand work outdoors at a temperature, as a multiple of its time in mild weather. The curves disagree below 30 °F: two are
 * offered so that the difference can be seen.
 */
enum ColdCurve {
    /**
     * PR = 9.448 + 0.0518 T − 2.819 ln T, T in °F, 1.000 at 54.4 °F. The published equation has a further term in relative
     * humidity, 3.89e-37·e^H, which adds at most 0.022 up to 80 % and is left out. Below 25 °F the value at 25 °F stands: the
     * observations end there.
     *
     * @see "Thomas, Yiakoumis 1987, Journal of Construction Engineering and Management 113(4); coefficients from memory"
     */
    THOMAS_YIAKOUMIS {
        @Override
        public double factor(double temperatureF) {
            return productivityRatio(Math.max(COLDEST_OBSERVED_F, temperatureF));
        }
    },
    /**
     * One over the efficiency, read straight between 20 °F 0.89, 30 0.94, 40 0.98, 50 to 70 1.00, 80 0.98, 90 0.93; held beyond.
     *
     * @see "National Electrical Contractors Association 1974, the effect of temperature on productivity; from memory, ± 0.03"
     */
    NECA {
        @Override
        public double factor(double temperatureF) {
            double[] knots = NECA_EFFICIENCY.getKnots();
            double held = Math.max(knots[0], Math.min(knots[knots.length - 1], temperatureF));
            return 1 / NECA_EFFICIENCY.value(held);
        }
    };

    private static final double COLDEST_OBSERVED_F = 25;

    private static final PolynomialSplineFunction NECA_EFFICIENCY = new LinearInterpolator()
            .interpolate(
                    new double[] {20, 30, 40, 50, 70, 80, 90}, new double[] {0.89, 0.94, 0.98, 1.00, 1.00, 0.98, 0.93});

    /** @param temperatureF outside, °F */
    public abstract double factor(double temperatureF);

    /** The equation of Thomas and Yiakoumis as it stands, for T above 0 °F. */
    static double productivityRatio(double temperatureF) {
        Check.positive("temperature", temperatureF);
        return 9.448 + 0.0518 * temperatureF - 2.819 * Math.log(temperatureF);
    }
}
