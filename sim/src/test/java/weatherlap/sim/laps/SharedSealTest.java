package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.house.Cladding;

/** How much it matters that faults behind one capping share its life, which the model leaves out. */
class SharedSealTest {

    private static final int YEARS = 20;
    private static final double[] STANDS = {0.85, 0.12, 0.22};
    private static final double[] LITRES_FOR_ONE_OF_RAIN = {0.014, 0.035, 0.012};

    private final LeakTables tables = LapFixtures.tables();
    private final LineOfDefence capping = tables.line(FirstLine.CAPPING, Cladding.VINYL_SIDING);

    @ParameterizedTest
    @CsvSource({"60", "100", "150", "250"})
    void independentSealsOverstateByLessThanTwoPoints(double rain) {
        double apart = 1;
        for (int f = 0; f < STANDS.length; f++) {
            double damaged =
                    new DamageCurve(capping, tables.fragility(), YEARS).byYear(rain * LITRES_FOR_ONE_OF_RAIN[f])[YEARS];
            apart *= 1 - STANDS[f] * damaged;
        }
        double overstated = shared(rain) - apart;
        assertThat(overstated).isBetween(0.0, 0.02);
    }

    /** Chance that no damage is done: the mean over the year in which the one seal fails. */
    private double shared(double rain) {
        double undamaged = 0;
        double sound = 1;
        for (int fails = 1; fails <= YEARS + 1; fails++) {
            double weight = fails > YEARS ? sound : sound * capping.failsIn(fails);
            double product = 1;
            for (int f = 0; f < STANDS.length; f++) {
                double litres = rain * LITRES_FOR_ONE_OF_RAIN[f];
                double good = 1 - tables.fragility().annualProbability(litres * capping.soundPasses());
                double bad = 1 - tables.fragility().annualProbability(litres * capping.failedPasses());
                product *= 1 - STANDS[f] * (1 - Math.pow(good, fails - 1) * Math.pow(bad, YEARS + 1 - fails));
            }
            undamaged += weight * product;
            sound -= weight;
        }
        return undamaged;
    }
}
