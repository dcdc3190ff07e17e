package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.analysis.sensitivity.SobolIndices.Design;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.random.Streams;

/** A made-up portfolio whose outcomes are linear in three rows, so that every share of the variance is known. */
class DriverStudyTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();

    /** The first rows of each table are enough. */
    private static final Assumptions FEW = BUNDLED.withSteps(BUNDLED.steps().subList(0, 3))
            .withMaterials(BUNDLED.materials().subList(0, 3))
            .withFaults(BUNDLED.faults().subList(0, 3));

    private static final Factor STEP = Factors.named(
                    BUNDLED, "labour-steps/" + BUNDLED.steps().get(0).id())
            .orElseThrow();
    private static final Factor ITEM = Factors.named(
                    BUNDLED, "materials/" + BUNDLED.materials().get(0).id())
            .orElseThrow();
    private static final Factor GLASS =
            Factors.named(BUNDLED, Scalar.GLASS_VALUE_USD_PER_FT2_YEAR.key()).orElseThrow();
    private static final double STEP_SD = Math.sqrt(STEP.range().variance());
    private static final double ITEM_SD = Math.sqrt(ITEM.range().variance());
    private static final double GLASS_SD = Math.sqrt(GLASS.range().variance());

    private static final AtomicInteger RUNS = new AtomicInteger();

    private static DriverStudy study;

    /** Not in a static initialiser: the points are worked out by other threads, which would wait for it. */
    @BeforeAll
    static void run() {
        study = DriverStudy.of(FEW, TWO, TWO, new DriverStudy.Effort(new Design(128, 4, new Streams(1)), 3, 400));
    }

    private static final Houses TWO = new Houses() {
        @Override
        public int count() {
            return 2;
        }

        @Override
        public OneHouse house(int position, Assumptions base) {
            return known -> {
                RUNS.incrementAndGet();
                return made(known, position);
            };
        }
    };

    /** Standardised rows with weights 3 (step), 4 (glass) in the cost of two houses, and 1 (item) in the risk. */
    private static Houses.Difference made(Assumptions known, int house) {
        double step = (known.steps().get(0).minutes().likely() - STEP.range().mean()) / STEP_SD;
        double item = (known.materials().get(0).price().likely() - ITEM.range().mean()) / ITEM_SD;
        double glass = (known.scenario().value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR)
                        - GLASS.range().mean())
                / GLASS_SD;
        double cost = 3 * step + 4 * glass;
        return new Houses.Difference(cost + 1000 * house, item);
    }

    @Test
    void sharesOfTheVarianceAreThoseOfTheWeights() {
        assertIndex(Outcome.COST_DIFFERENCE, "labour-steps", 0.36);
        assertIndex(Outcome.COST_DIFFERENCE, "scenario", 0.64);
        assertIndex(Outcome.COST_DIFFERENCE, "materials", 0);
        assertIndex(Outcome.COST_DIFFERENCE, STEP.name(), 0.36);
        assertIndex(Outcome.RISK_DIFFERENCE, ITEM.name(), 1);
        assertThat(study.indices().get(0).variance()).isCloseTo(25, within(2.0));
    }

    @Test
    void rowsStandFromTheWidestSwing() {
        List<DriverRow> single = study.rows().stream()
                .filter(row -> !row.group() && row.outcome() == Outcome.COST_DIFFERENCE)
                .toList();
        assertThat(single).hasSize(study.factors().size());
        assertThat(single.get(0).assumption()).isEqualTo(GLASS.name());
        assertThat(single.get(1).assumption()).isEqualTo(STEP.name());
        assertThat(single.get(2).swing().width()).isCloseTo(0, within(1e-9));
    }

    @Test
    void onlyTheRowsThatMoveTheChoiceAreWorthMeasuring() {
        InformationStudy information = study.information();
        List<String> worthy = information.worthMeasuring(5).stream()
                .map(f -> study.factors().get(f).name())
                .toList();
        assertThat(worthy).startsWith(GLASS.name(), STEP.name()).doesNotContain(ITEM.name());
        List<String> names = study.factors().stream().map(Factor::name).toList();
        // A house in the balance: knowing all saves half the mean deviation, and the house at + 1000 nothing; a half of
        // it each.
        assertThat(information.everythingUsd()).isBetween(0.8, 1.2);
        assertThat(information.worths().get(names.indexOf(GLASS.name())).value())
                .isBetween(0.6, information.everythingUsd());
        assertThat(DriverWords.of(study)).anyMatch(line -> line.startsWith("Measure next, 1: " + GLASS.name()));
    }

    /** One of the two houses gains nothing by it: the worth of a house is half of the other's, and as much off as it is large. */
    @Test
    void errorOfAWorthHoldsTheChoiceOfHouses() {
        int glass = study.factors().stream().map(Factor::name).toList().indexOf(GLASS.name());
        Worth worth = study.information().worths().get(glass);
        assertThat(worth.error()).isCloseTo(worth.value(), within(0.1 * worth.value()));
    }

    @Test
    void theChoiceOfWarrantyInForceIsTold() {
        assertThat(DriverWords.held(BUNDLED.scenario())).contains("warranty_covers = own_work");
    }

    @Test
    void runsAreCountedBeforehand() {
        assertThat(RUNS).hasValue(DriverStudy.runs(FEW, TWO, study.effort()));
    }

    @Test
    void tableHoldsEveryRow() {
        assertThat(DriverTable.of(study).rows()).isEqualTo(study.rows().size());
    }

    @Test
    void everyFactorPutsItsValueInAndNothingElse() {
        for (Factor factor : Factors.all(BUNDLED)) {
            double value = factor.range().likely() == 0
                    ? factor.search().high()
                    : factor.range().likely();
            Assumptions once = factor.set(BUNDLED, value);
            Assumptions again = Factors.named(once, factor.name()).orElseThrow().set(once, value);
            assertThat(once).as(factor.name()).isEqualTo(factor.name().equals("units/price_list") ? once : again);
            long changed = IntStream.of(
                            once.steps().equals(BUNDLED.steps()) ? 0 : 1,
                            once.materials().equals(BUNDLED.materials()) ? 0 : 1,
                            once.unitPrices().equals(BUNDLED.unitPrices()) ? 0 : 1,
                            once.faults().equals(BUNDLED.faults()) ? 0 : 1,
                            once.wages().equals(BUNDLED.wages()) ? 0 : 1,
                            once.scenario().equals(BUNDLED.scenario()) ? 0 : 1)
                    .sum();
            assertThat(changed).as(factor.name()).isLessThanOrEqualTo(1);
            assertThat(factor.search().low())
                    .as(factor.name())
                    .isLessThan(factor.search().high());
        }
    }

    @Test
    void namesAreUnique() {
        assertThat(Factors.all(BUNDLED)).extracting(Factor::name).doesNotHaveDuplicates();
    }

    private void assertIndex(Outcome outcome, String name, double share) {
        DriverRow row = study.rows().stream()
                .filter(r -> r.outcome() == outcome && r.assumption().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(row.indices().orElseThrow().firstOrder().value()).isCloseTo(share, within(0.05));
        assertThat(row.indices().orElseThrow().total().value()).isCloseTo(share, within(0.05));
    }
}
