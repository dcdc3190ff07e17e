package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;

/** Risk never falls with more rain, one more fault, more years or a higher admitted share, in any draw. */
class LeakPropertyTest {

    private static final int DRAWS = 64;
    private static final double ROUNDING = 1e-12;
    private static final Opening OPENING = LapFixtures.unseen("w1");
    private static final LeakTables TABLES = LapFixtures.tables();

    private static double[] damage(LeakTables tables, LeakCauses causes, Method method, OpeningExposure exposure) {
        HouseLaps laps = HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(OPENING)), tables);
        LeakDraws out = new LeakDraws(DRAWS);
        LeakModel.of(OPENING, method, exposure, laps).run(causes, out);
        return out.damage();
    }

    private static void neverFalls(double[] before, double[] after) {
        for (int d = 0; d < DRAWS; d++) {
            assertThat(after[d]).isBetween(before[d] - ROUNDING, 1.0);
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void moreRainNeverLowersTheDamage(
            @ForAll long seed,
            @ForAll Method method,
            @ForAll @DoubleRange(min = 0, max = 300) double rain,
            @ForAll @DoubleRange(min = 0, max = 100) double more) {
        LeakCauses causes = LeakModelTest.causes(DRAWS, seed);
        neverFalls(
                damage(TABLES, causes, method, LapFixtures.exposure(rain)),
                damage(TABLES, causes, method, LapFixtures.exposure(rain + more)));
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void oneMoreFaultNeverLowersTheDamage(
            @ForAll long seed, @ForAll Method method, @ForAll @IntRange(min = 0, max = 5) int left) {
        List<LapFault> faults = new ArrayList<>(LapFixtures.FAULTS);
        LapFault last = faults.remove(left);
        Scenario scenario = LapFixtures.scenario();
        List<double[]> shares = new ArrayList<>(List.of(LeakModelTest.admitted(DRAWS, seed)));
        shares.add(shares.remove(left));
        LeakCauses ordered = LeakModelTest.causes(shares.toArray(double[][]::new), DRAWS, seed);
        double[] without = damage(
                LeakTables.of(LapFixtures.assumptions(faults, scenario)), ordered, method, LapFixtures.exposure(80));
        faults.add(last);
        neverFalls(
                without,
                damage(
                        LeakTables.of(LapFixtures.assumptions(faults, scenario)),
                        ordered,
                        method,
                        LapFixtures.exposure(80)));
    }

    @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
    void aLaterYearNeverHasLessDamage(
            @ForAll @IntRange(min = 1, max = 59) int years, @ForAll @IntRange(min = 0, max = 12) int renew) {
        Scenario scenario = LapFixtures.scenario().with(Scalar.RESEAL_YEARS, renew);
        for (FirstLine first : FirstLine.values()) {
            LineOfDefence line = LineOfDefence.of(first, Cladding.VINYL_SIDING, scenario);
            double[] damaged = new DamageCurve(line, TABLES.fragility(), years + 1).byYear(3);
            assertThat(damaged[years + 1]).isGreaterThanOrEqualTo(damaged[years]);
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void aHigherAdmittedShareNeverLowersTheDamage(
            @ForAll long seed,
            @ForAll @IntRange(min = 0, max = 5) int fault,
            @ForAll @DoubleRange(min = 1, max = 10) double factor) {
        LeakCauses causes = LeakModelTest.causes(DRAWS, seed);
        double[][] raised = LeakModelTest.admitted(DRAWS, seed);
        for (int d = 0; d < DRAWS; d++) {
            raised[fault][d] *= factor;
        }
        LeakCauses more = LeakModelTest.causes(raised, DRAWS, seed);
        for (Method method : Method.values()) {
            neverFalls(
                    damage(TABLES, causes, method, LapFixtures.exposure(60)),
                    damage(TABLES, more, method, LapFixtures.exposure(60)));
        }
    }
}
