package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.house.Cladding;

/** Damage over the years: closed forms, the simulation of each year, and the table. */
class DamageCurveTest {

    private static final Fragility FRAGILITY = new Fragility(0.1, 4, 1.2);
    private static final WeibullLife LIFE = new WeibullLife(2, 15);

    @Test
    void fragilityAtItsMedianAndOneSpreadAboveAndBelow() {
        assertThat(FRAGILITY.annualProbability(4.1)).isCloseTo(0.5, within(1e-12));
        // Φ(1) and Φ(−1) of the standard normal: 0.841345, 0.158655 (any table).
        assertThat(FRAGILITY.annualProbability(0.1 + 4 * Math.exp(1.2))).isCloseTo(0.841345, within(5e-7));
        assertThat(FRAGILITY.annualProbability(0.1 + 4 * Math.exp(-1.2))).isCloseTo(0.158655, within(5e-7));
        assertThat(FRAGILITY.annualProbability(0.1)).isZero();
    }

    @Test
    void withoutAgeingYearsAreIndependent() {
        LineOfDefence cladding = new LineOfDefence(0.25, 0.25, Optional.empty(), 0);
        double year = FRAGILITY.annualProbability(0.25 * 5);
        double[] damaged = new DamageCurve(cladding, FRAGILITY, 20).byYear(5);
        assertThat(damaged[0]).isZero();
        assertThat(damaged[1]).isCloseTo(year, within(1e-14));
        assertThat(damaged[20]).isCloseTo(1 - Math.pow(1 - year, 20), within(1e-13));
    }

    @Test
    void ageingEqualsTheSumOverTheYearOfFailure() {
        LineOfDefence seal = new LineOfDefence(0.01, 0.5, Optional.of(LIFE), 0);
        double sound = 1 - FRAGILITY.annualProbability(0.01 * 20);
        double failed = 1 - FRAGILITY.annualProbability(0.5 * 20);
        double undamaged = Math.pow(sound, 20) * (1 - LIFE.failedBy(19.5));
        for (int year = 1; year <= 20; year++) {
            double failsNow = LIFE.failedBy(year - 0.5) - LIFE.failedBy(year - 1.5);
            undamaged += failsNow * Math.pow(sound, year - 1) * Math.pow(failed, 21 - year);
        }
        assertThat(new DamageCurve(seal, FRAGILITY, 20).byYear(20)[20]).isCloseTo(1 - undamaged, within(1e-13));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7})
    void closedFormAgreesWithTheSimulationOfEveryYear(int renewYears) {
        LineOfDefence seal = new LineOfDefence(0.02, 0.5, Optional.of(LIFE), renewYears);
        double expected = new DamageCurve(seal, FRAGILITY, 20).byYear(6)[20];
        int runs = 40_000;
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20250101L);
        double[] yearly = {FRAGILITY.annualProbability(0.02 * 6), FRAGILITY.annualProbability(0.5 * 6)};
        int damaged = 0;
        for (int run = 0; run < runs; run++) {
            damaged += damaged(seal, yearly, random) ? 1 : 0;
        }
        double error = Math.sqrt(expected * (1 - expected) / runs);
        // Four standard errors: false alarm about once in 16,000 seeds; the seed is fixed.
        assertThat((double) damaged / runs).isCloseTo(expected, within(4 * error));
    }

    private static boolean damaged(LineOfDefence seal, double[] yearly, UniformRandomProvider random) {
        double failsAt = 0;
        for (int year = 1; year <= 20; year++) {
            if (year == 1 || seal.renewedBefore(year)) {
                failsAt = year - 1 + LIFE.scaleYears() * Math.pow(-Math.log(1 - random.nextDouble()), 1 / LIFE.shape());
            }
            if (random.nextDouble() < yearly[failsAt <= year - 0.5 ? 1 : 0]) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @EnumSource(FirstLine.class)
    void tableStaysWithinItsStatedErrorOfTheCurve(FirstLine first) {
        for (double spread : new double[] {0.5, 1.2, 2}) {
            Fragility fragility = new Fragility(0.1, 4, spread);
            LineOfDefence line = LineOfDefence.of(first, Cladding.VINYL_SIDING, LapFixtures.scenario());
            LeakTable table = new LeakTable(line, fragility, 20, 10, 0.05);
            DamageCurve curve = new DamageCurve(line, fragility, 20);
            for (double log = -3; log < 9; log += 0.0237) {
                double x = Math.exp(log);
                double[] exact = curve.byYear(x);
                assertThat(table.horizon(x)).isCloseTo(exact[20], within(1e-3));
                assertThat(table.warranty(x)).isCloseTo(LeakTable.discounted(exact, 10, 0.05), within(1e-3));
                assertThat(table.discounted(x)).isCloseTo(LeakTable.discounted(exact, 20, 0.05), within(1e-3));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(FirstLine.class)
    void theTableKnowsUpToWhereNothingIsDamaged(FirstLine first) {
        LineOfDefence line = LineOfDefence.of(first, Cladding.VINYL_SIDING, LapFixtures.scenario());
        LeakTable table = new LeakTable(line, new Fragility(0.1, 4, 0.5), 20, 10, 0.05);
        for (double position = 0.25; position < LeakTable.lastPosition(); position += 0.5) {
            double litres = Math.exp(table.lowest + position / table.knotsPerLog);
            double any = table.horizon(litres) + table.warranty(litres) + table.discounted(litres);
            assertThat(any > 0).as("at %s of %s", position, table.lastDry).isEqualTo(position > table.lastDry);
        }
    }

    @Test
    void discountingByHand() {
        // Certain damage in year 1 and in year 3, 5 %: 1.05^−0.5 and 1.05^−2.5.
        assertThat(LeakTable.discounted(new double[] {0, 1, 1, 1}, 3, 0.05)).isCloseTo(0.975900, within(5e-7));
        assertThat(LeakTable.discounted(new double[] {0, 0, 0, 1}, 3, 0.05)).isCloseTo(0.885170, within(5e-7));
        assertThat(LeakTable.discounted(new double[] {0, 0.2, 0.3, 0.6}, 3, 0)).isCloseTo(0.6, within(1e-15));
    }
}
