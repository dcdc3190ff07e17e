package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.probability.ExactProbability;
import weatherlap.sim.probability.FaultTree;
import weatherlap.sim.random.PertQuantile;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/** The leaks of one opening: closed form, fault tree and simulation agree; contributions add up. */
class LeakModelTest {

    private static final Opening OPENING = LapFixtures.unseen("w1");
    private static final LeakTables TABLES = LapFixtures.tables();
    private static final HouseLaps LAPS = HouseLaps.of(LapFixtures.house(Barrier.HOUSEWRAP, List.of(OPENING)), TABLES);

    static double[][] admitted(int draws, long seed) {
        Streams streams = new Streams(seed);
        return LapFixtures.FAULTS.stream()
                .map(f -> PertQuantile.draws(f.admitted(), Sampling.PLAIN.uniforms(draws, streams.world(f.id()))))
                .toArray(double[][]::new);
    }

    static LeakCauses causes(int draws, long seed) {
        return causes(admitted(draws, seed), draws, seed);
    }

    static LeakCauses causes(double[][] admitted, int draws, long seed) {
        Streams streams = new Streams(seed);
        return LeakCauses.of(
                new AdmittedShares(admitted),
                Sampling.PLAIN.uniforms(draws, streams.world("house")),
                Sampling.PLAIN.uniforms(draws, streams.world("crew")),
                Sampling.PLAIN.uniforms(draws, streams.world("weather")));
    }

    private static LeakDraws run(LeakModel model, LeakCauses causes) {
        LeakDraws out = new LeakDraws(causes.draws());
        model.run(causes, out);
        return out;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    @Test
    void aFullFlangeTakesTheOldFaultsAwayAndAnInsertKeepsThem() {
        assertThat(faults(Method.FULL_FLANGE)).containsExactly(LapFixtures.CORNER_UNROLLED, LapFixtures.SILL_SEALED);
        assertThat(faults(Method.INSERT))
                .containsExactly(
                        LapFixtures.HEAD_REVERSED,
                        LapFixtures.PAN_MISSING,
                        LapFixtures.JAMB_OPEN,
                        LapFixtures.CAPPING_SEAM);
    }

    private static List<LapFault> faults(Method method) {
        return LeakModel.of(OPENING, method, LapFixtures.exposure(60), LAPS).paths().stream()
                .map(LeakPath::fault)
                .toList();
    }

    @Test
    void aDrawEqualsTheFaultTreeOfItsPaths() {
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(150), LAPS);
        double[][] admitted = admitted(50, 4);
        LeakCauses causes = causes(admitted, 50, 4);
        LeakDraws out = run(model, causes);
        for (int d = 0; d < causes.draws(); d++) {
            assertThat(out.damage()[d]).isCloseTo(ExactProbability.of(tree(causes, admitted, d)), within(1e-3));
        }
    }

    /** Damage = OR over faults of (fault stands AND its water does damage), from the curves without tables. */
    private static FaultTree tree(LeakCauses causes, double[][] admitted, int draw) {
        double sigma = Math.sqrt(Math.log1p(0.25 * 0.25 / 20));
        double weather = Math.exp(sigma * causes.weatherNormal()[draw] - sigma * sigma / 2);
        List<FaultTree> paths = new ArrayList<>();
        for (int f = 0; f < LapFixtures.FAULTS.size(); f++) {
            LapFault fault = LapFixtures.FAULTS.get(f);
            if (fault.method().covers(Method.INSERT)) {
                boolean old = !fault.priorByBarrier().isEmpty();
                int[] stratum = old ? causes.houseStratum() : causes.crewStratum();
                double stands = LAPS.standing(f, OPENING).byStratum()[stratum[draw]];
                double litres = LapFixtures.exposure(150).litresPerYear(fault.joint()) * admitted[f][draw] * weather;
                double damages = new DamageCurve(TABLES.lines().get(fault.firstLine()), TABLES.fragility(), 20)
                        .byYear(litres)[20];
                paths.add(FaultTree.and(
                        FaultTree.event(fault.id() + " stands", stands),
                        FaultTree.event(fault.id() + " does damage", damages)));
            }
        }
        return new FaultTree.Or(paths);
    }

    @Test
    void contributionsSumToTheMeanForBothMethods() {
        for (Method method : Method.values()) {
            LeakModel model = LeakModel.of(OPENING, method, LapFixtures.exposure(120), LAPS);
            LeakDraws out = run(model, causes(500, 1));
            double sum = 0;
            for (int f = 0; f < model.paths().size(); f++) {
                assertThat(out.contribution()[f]).isNotNegative();
                sum += out.contribution()[f];
            }
            assertThat(sum).isCloseTo(mean(out.damage()), within(1e-14));
        }
    }

    @Test
    void scratchCanBeUsedAgainForAnotherOpening() {
        LeakCauses causes = causes(100, 2);
        LeakModel small = LeakModel.of(OPENING, Method.FULL_FLANGE, LapFixtures.exposure(60), LAPS);
        LeakModel large = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(60), LAPS);
        LeakDraws used = new LeakDraws(100);
        large.run(causes, used);
        small.run(causes, used);
        assertThat(used.damage()).isEqualTo(run(small, causes).damage());
        large.run(causes, used);
        assertThat(used.damage()).isEqualTo(run(large, causes).damage());
    }

    @Test
    void closedFormOfOnePathAgreesWithTheMeanOverTheDraws() {
        // Without weather and with admitted shares known, E[p·Q] = E[p]·Q exactly, whatever the spread of the house's
        // quality.
        LapFault fault = LapFixtures.JAMB_OPEN;
        LeakModel model = LeakModel.of(
                OPENING, Method.INSERT, LapFixtures.exposure(150), house(List.of(fault), LapFixtures.scenario()));
        int draws = 20_000;
        double[][] admitted = new double[1][draws];
        Arrays.fill(admitted[0], 0.05);
        LeakCauses random = causes(draws, 11);
        LeakCauses causes = new LeakCauses(
                new AdmittedShares(admitted), random.houseStratum(), random.crewStratum(), new double[draws]);
        LeakDraws out = run(model, causes);
        double sigma2 = Math.log1p(0.25 * 0.25 / 20);
        double litres = 150 * 0.15 * 0.05 * Math.exp(-sigma2 / 2);
        double expected = 0.3 * TABLES.table(fault.firstLine()).horizon(litres);
        double spread = Math.sqrt(
                Arrays.stream(out.damage()).map(p -> p * p).average().orElseThrow() - Math.pow(mean(out.damage()), 2));
        assertThat(mean(out.damage())).isCloseTo(expected, within(4 * spread / Math.sqrt(draws)));
    }

    private static HouseLaps house(List<LapFault> faults, Scenario scenario) {
        return HouseLaps.of(
                LapFixtures.house(Barrier.HOUSEWRAP, List.of(OPENING)),
                LeakTables.of(LapFixtures.assumptions(faults, scenario)));
    }

    @Test
    void probabilitiesAgreeWithDrawingWhetherEachFaultStandsAndDoesDamage() {
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(150), LAPS);
        LeakCauses causes = causes(20_000, 21);
        LeakDraws out = run(model, causes);
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(77L);
        int damaged = 0;
        for (int d = 0; d < causes.draws(); d++) {
            boolean any = false;
            for (int f = 0; f < model.paths().size(); f++) {
                any |= random.nextDouble() < out.byPath[f][d];
            }
            damaged += any ? 1 : 0;
        }
        double expected = mean(out.damage());
        double error = Math.sqrt(expected * (1 - expected) / causes.draws());
        assertThat((double) damaged / causes.draws()).isCloseTo(expected, within(4 * error));
    }

    @Test
    void weatherHasMeanOneSoThatExpectedLitresAreTheProduct() {
        LeakPath path = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(80), LAPS)
                .paths()
                .get(1);
        // W · mean share past the capping · PERT mean (0.005 + 0.12 + 0.1)/6 · prior
        double admitted = 0.225 / 6;
        assertThat(path.pastFirstLineLitresPerYear())
                .isCloseTo(112 * TABLES.passes(path.fault().firstLine()), within(1e-12));
        assertThat(path.intoWallLitresPerYear())
                .isCloseTo(path.pastFirstLineLitresPerYear() * admitted * 0.8, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"50, 0.99", "150, 0.95"})
    void discountFactorIsNearlyThatOfTheFirstDamage(double rain, double lowest) {
        LeakCauses causes = causes(400, 5);
        double[] byYear = new double[21];
        for (int year = 1; year <= 20; year++) {
            // The curve does not look ahead: a warranty of t years gives the chance of damage by year t.
            HouseLaps laps = house(LapFixtures.FAULTS, LapFixtures.scenario().with(Scalar.WARRANTY_YEARS, year));
            LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(rain), laps);
            byYear[year] = mean(run(model, causes).callback());
        }
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(rain), LAPS);
        double exact = LeakTable.discounted(byYear, 20, 0.05) / byYear[20];
        assertThat(model.discountFactor(run(model, causes))).isBetween(exact * lowest, exact * 1.0001);
    }

    @Test
    void withoutRainNothingHappens() {
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(0), LAPS);
        LeakDraws out = run(model, causes(20, 3));
        assertThat(out.damage()).containsOnly(0);
        assertThat(out.callback()).containsOnly(0);
        assertThat(model.discountFactor(out)).isOne();
    }
}
