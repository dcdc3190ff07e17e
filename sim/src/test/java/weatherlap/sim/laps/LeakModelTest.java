package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.LeakModel.RepairWorth;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.probability.ExactProbability;
import weatherlap.sim.probability.FaultTree;
import weatherlap.sim.random.PertQuantile;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/** The leaks of one opening: closed form, fault tree and simulation agree; contributions add up. */
class LeakModelTest {

    private static final Opening OPENING = LapFixtures.unseen("w1");
    private static final double WET = 60;
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
        List<FaultTree> paths = new ArrayList<>();
        for (int f = 0; f < LapFixtures.FAULTS.size(); f++) {
            LapFault fault = LapFixtures.FAULTS.get(f);
            if (fault.method().covers(Method.INSERT)) {
                paths.add(FaultTree.and(
                        FaultTree.event(fault.id() + " stands", stands(LAPS, causes, f, draw)),
                        FaultTree.event(
                                fault.id() + " does damage", damages(LAPS, causes, admitted, f, draw, 150)[20])));
            }
        }
        return new FaultTree.Or(paths);
    }

    private static double stands(HouseLaps laps, LeakCauses causes, int fault, int draw) {
        boolean old = laps.tables().assumptions().faults().get(fault).kind() == FaultKind.EXISTING;
        int[] stratum = old ? causes.houseStratum() : causes.crewStratum();
        return laps.standing(fault, OPENING).byStratum()[stratum[draw]];
    }

    /** Chance that a standing fault has done damage by the end of each year, from the curve without a table. */
    private static double[] damages(
            HouseLaps laps, LeakCauses causes, double[][] admitted, int f, int draw, double rain) {
        LapFault fault = laps.tables().assumptions().faults().get(f);
        double sigma = Math.sqrt(Math.log1p(0.25 * 0.25 / 20));
        double weather = Math.exp(sigma * causes.weatherNormal()[draw] - sigma * sigma / 2);
        double litres = LapFixtures.exposure(rain).litresPerYear(fault.joint()) * admitted[f][draw] * weather;
        return new DamageCurve(TABLES.line(fault.firstLine(), Cladding.VINYL_SIDING), TABLES.fragility(), 20)
                .byYear(litres);
    }

    /** Mean chance of damage to an insert by the end of each year, through the faults of a kind. */
    private static double[] byYear(
            HouseLaps laps, LeakCauses causes, double[][] admitted, double rain, Set<FaultKind> kinds) {
        double[] mean = new double[21];
        for (int d = 0; d < causes.draws(); d++) {
            double[] spared = new double[21];
            Arrays.fill(spared, 1);
            for (int f = 0; f < laps.tables().assumptions().faults().size(); f++) {
                LapFault fault = laps.tables().assumptions().faults().get(f);
                if (fault.method().covers(Method.INSERT) && kinds.contains(fault.kind())) {
                    double[] damages = damages(laps, causes, admitted, f, d, rain);
                    for (int year = 0; year <= 20; year++) {
                        spared[year] *= 1 - stands(laps, causes, f, d) * damages[year];
                    }
                }
            }
            for (int year = 0; year <= 20; year++) {
                mean[year] += (1 - spared[year]) / causes.draws();
            }
        }
        return mean;
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
        LeakModel wetter = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(90), LAPS);
        LeakModel covered = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(60), mixed("any_leak", 2));
        LeakDraws used = new LeakDraws(100);
        for (LeakCauses one : List.of(causes, causes(100, 4), causes)) {
            for (LeakModel model : List.of(large, small, large, wetter, covered, large)) {
                model.run(one, used);
                LeakDraws alone = run(model, one);
                assertThat(used.damage()).isEqualTo(alone.damage());
                assertThat(used.contribution()).startsWith(alone.contribution());
                assertThat(model.repairWorth(used)).isEqualTo(model.repairWorth(alone));
            }
        }
    }

    @Test
    void ofAHouseOfVeryManyOpeningsNotAllPathsAreKept() {
        LeakCauses causes = causes(100, 2);
        LeakDraws few = new LeakDraws(100, 0);
        LeakDraws all = new LeakDraws(100);
        int most = 0;
        for (int litres = 10; litres < 100; litres++) {
            LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(litres), LAPS);
            most = Math.max(most, model.paths().size());
            model.run(causes, few);
            model.run(causes, all);
            assertThat(few.damage()).isEqualTo(all.damage());
            assertThat(few.contribution()).isEqualTo(all.contribution());
        }
        assertThat(few.columns()).isLessThanOrEqualTo(most);
        assertThat(all.columns()).isGreaterThan(most);
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
        double expected =
                0.3 * TABLES.table(fault.firstLine(), Cladding.VINYL_SIDING).horizon(litres);
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
                any |= random.nextDouble() < out.ofPath(f).damage[d];
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
                .isCloseTo(112 * TABLES.passes(path.fault().firstLine(), Cladding.VINYL_SIDING), within(1e-12));
        assertThat(path.intoWallLitresPerYear())
                .isCloseTo(path.pastFirstLineLitresPerYear() * admitted * 0.8, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"50, 0.99", "150, 0.95"})
    void aRepairIsWorthNearlyWhatItIsAtTheFirstDamage(double rain, double lowest) {
        LeakCauses causes = causes(400, 5);
        double[] byYear = byYear(LAPS, causes, admitted(400, 5), rain, EnumSet.allOf(FaultKind.class));
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(rain), LAPS);
        RepairWorth worth = model.repairWorth(run(model, causes));
        double exact = LeakTable.discounted(byYear, 20, 0.05) / byYear[20];
        assertThat(worth.family() + worth.shop()).isBetween(exact * lowest, exact * 1.001);
    }

    @Test
    void theShopPaysWhatItsWarrantyCoversAndTheFamilyTheRest() {
        LeakCauses causes = causes(400, 5);
        double[] own = byYear(mixed("nothing", 10), causes, admitted(400, 5), WET, Set.of(FaultKind.NEW));
        double[] any = byYear(mixed("nothing", 10), causes, admitted(400, 5), WET, EnumSet.allOf(FaultKind.class));
        double all = LeakTable.discounted(any, 20, 0.05) / any[20];
        RepairWorth ownWork = worth("own_work", 10, causes);
        RepairWorth anyLeak = worth("any_leak", 10, causes);
        RepairWorth nothing = worth("nothing", 10, causes);
        assertThat(ownWork.shop())
                .isCloseTo(LeakTable.discounted(own, 10, 0.05) / any[20], withinPercentage(5))
                .isPositive();
        assertThat(anyLeak.shop()).isCloseTo(LeakTable.discounted(any, 10, 0.05) / any[20], withinPercentage(5));
        assertThat(nothing.shop()).isZero();
        assertThat(List.of(ownWork, anyLeak, nothing)).allSatisfy(worth -> assertThat(worth.family() + worth.shop())
                .isCloseTo(nothing.family(), within(1e-12))
                .isCloseTo(all, withinPercentage(5)));
    }

    @Test
    void aWarrantyAsLongAsTheHorizonLeavesTheFamilyNothingAndALongerOneCostsTheShopMore() {
        LeakCauses causes = causes(400, 5);
        assertThat(worth("any_leak", 20, causes).family()).isZero();
        assertThat(worth("any_leak", 20, causes).shop())
                .isCloseTo(worth("nothing", 20, causes).family(), within(1e-12));
        assertThat(worth("any_leak", 30, causes).family()).isZero();
        assertThat(worth("any_leak", 30, causes).shop())
                .isGreaterThan(worth("any_leak", 20, causes).shop());
        assertThat(worth("any_leak", 0, causes).shop()).isZero();
    }

    private static RepairWorth worth(String covers, int warrantyYears, LeakCauses causes) {
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(WET), mixed(covers, warrantyYears));
        return model.repairWorth(run(model, causes));
    }

    /** An old fault and one of the crew's at one joint. */
    private static HouseLaps mixed(String covers, int warrantyYears) {
        LapFault own = LapFixtures.work("foam_open", Joint.JAMB, MethodScope.of(Method.INSERT), 0.3, FirstLine.NONE);
        Scenario scenario =
                LapFixtures.scenario().with(Choice.WARRANTY_COVERS, covers).with(Scalar.WARRANTY_YEARS, warrantyYears);
        return house(List.of(LapFixtures.JAMB_OPEN, own), scenario);
    }

    @Test
    void withoutRainNothingHappens() {
        LeakModel model = LeakModel.of(OPENING, Method.INSERT, LapFixtures.exposure(0), LAPS);
        LeakDraws out = run(model, causes(20, 3));
        assertThat(out.damage()).containsOnly(0);
        assertThat(model.repairWorth(out)).isEqualTo(new RepairWorth(0, 0));
    }
}
