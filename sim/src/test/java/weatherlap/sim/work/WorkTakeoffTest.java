package weatherlap.sim.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static weatherlap.sim.work.WorkFixtures.elevation;
import static weatherlap.sim.work.WorkFixtures.item;
import static weatherlap.sim.work.WorkFixtures.opening;
import static weatherlap.sim.work.WorkFixtures.step;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.quantity.HouseQuantities;

/** One house by hand: two walls with windows, one without; one window stands on the second storey. */
class WorkTakeoffTest {
    private static final House HOUSE = WorkFixtures.house(
            1990,
            elevation("north", List.of(opening("n1", 24, 1), opening("n2", 132, 1))),
            elevation("east", List.of(opening("e1", 24, 1))),
            elevation("south", List.of()));

    private static final Assumptions ASSUMPTIONS = WorkFixtures.assumptions(
            List.of(
                    step("unload", Driver.JOB, 40),
                    step("sweep", Driver.DAY, 20),
                    step("staging", Driver.ELEVATION, 60),
                    step("rehang", Driver.PANEL, 3, true, true, 1),
                    step("set", Driver.OPENING, 100, false, true, 2),
                    step("bead", Driver.PERIMETER_FT, 5, true, false, 1)),
            List.of(
                    item("tape", Driver.PERIMETER_FT, 1, 0.1, 75, 30),
                    item("panel", Driver.BROKEN_PANEL, 1, 0, 1, 18),
                    item("tarp", Driver.ELEVATION, 1, 0, 4, 20)));

    private static WorkTakeoff takeoff(Assumptions assumptions) {
        return WorkTakeoff.of(assumptions, HOUSE, WorkFixtures.quantities(HOUSE, Method.FULL_FLANGE, 10));
    }

    private final WorkTakeoff work = takeoff(ASSUMPTIONS);

    /**
     * By hand, person-minutes. n1 and e1: 100 + 16 · 5 = 180; n2 on the second storey: 100 · 1.2 + 80 = 200. North: staging 60 +
     * 10 panels · 3 · (1 + 1.2)/2 = 93; east: 60 + 30 = 90. A day of two people has 480 − 60 travel − 10 sweeping = 410 crew
     * minutes; the job takes 20, n2 (200 + 46.5)/2 = 123.25, n1 113.25, e1 135: 391.5 in all, one day. House: 40 + 20 + 380 + 93 +
     * 180 + 90 + travel 120 = 923.
     */
    @Test
    void minutesByHand() {
        assertThat(work.openings().stream().map(o -> o.labour().value())).containsExactly(180.0, 200.0, 180.0);
        assertThat(work.elevations().get(0).shared().value()).isCloseTo(93, within(1e-9));
        assertThat(work.elevations().get(1).labour().value()).isCloseTo(270, within(1e-9));
        assertThat(work.crewDays().days()).isEqualTo(1);
        assertThat(work.labour().value()).isCloseTo(923, within(1e-9));
    }

    /** With six-hour days 290 crew minutes are left: the north wall's 236.5 fit, the east wall's 135 wait for the second morning. */
    @Test
    void shorterDaysTakeMoreOfThemAndMoreTravel() {
        WorkTakeoff shorter = takeoff(ASSUMPTIONS.with(ASSUMPTIONS.scenario().with(Scalar.HOURS_PER_DAY, 6)));
        assertThat(shorter.crewDays().days()).isEqualTo(2);
        assertThat(shorter.crewDays().dayOfOpening()).containsExactly(1, 1, 2);
        assertThat(shorter.labour().value()).isCloseTo(923 + 20 + 120, within(1e-9));
    }

    /**
     * By hand, USD. Units 3 · (200 + 4 · 96) = 1752. Tape 3 · 16 · 1.1 = 52.8 ft: one roll, 30. Panels 20 · 0.015 = 0.3: one, 18.
     * Tarps 2 of a pack of 4: 20. Tipping 3 · 62.08 lb / 2000 · 80 = 7.45. Permit 75.
     */
    @Test
    void materialByHand() {
        assertThat(work.material().value()).isCloseTo(1752 + 30 + 18 + 20 + 7.45 + 75, within(0.005));
        assertThat(work.materialUsd()).isEqualTo(work.material().value());
    }

    @Test
    void openingsAndHouseMakeAllTheMaterial() {
        double sum = work.materialOfHouse().value();
        for (int o = 0; o < 3; o++) {
            sum += work.materialOfOpening(o).value();
        }
        assertThat(sum).isCloseTo(work.material().value(), within(1e-9));
    }

    /** Ten panels down on each of two walls, 1.5 % of them break: 0.3 panels, 20 minutes each. */
    @Test
    void aStepForABrokenPanelTakesThoseThatBreakAlone() {
        Assumptions patching = WorkFixtures.assumptions(List.of(step("patch", Driver.BROKEN_PANEL, 20)), List.of());
        assertThat(takeoff(patching).lines().stream()
                        .mapToDouble(line -> line.meanMinutes())
                        .sum())
                .isCloseTo(0.3 * 20, within(1e-9));
    }

    /** A person-hour of one carpenter and one helper: (30 + 20) · 1.5 / 2 = 37.50 USD. */
    @Test
    void moneyByHand() {
        JobCost cost = work.expectedCost(50);
        double direct = 923 / 60.0 * 37.5 + work.material().value() + 50;
        assertThat(cost.crewHours()).isCloseTo(923 / 120.0, within(1e-9));
        assertThat(cost.directUsd()).isCloseTo(direct, within(1e-9));
        assertThat(Pricing.of(ASSUMPTIONS.scenario()).priceUsd(cost)).isCloseTo(direct / 0.58, within(1e-9));
        assertThat(work.grossProfitPerCrewDayUsd(50)).isCloseTo(direct / 0.58 * 0.4, within(1e-9));
    }

    /** The same to the cent, as the table in the module's readme tells it. */
    @Test
    void moneyToTheCent() {
        JobCost cost = work.expectedCost(50);
        assertThat(cost.materialUsd()).isCloseTo(1902.45, within(0.005));
        assertThat(cost.labourUsd()).isCloseTo(576.875, within(1e-9));
        assertThat(cost.directUsd()).isCloseTo(2529.33, within(0.005));
        assertThat(Pricing.of(ASSUMPTIONS.scenario()).priceUsd(cost)).isCloseTo(4360.91, within(0.005));
        assertThat(work.grossProfitPerCrewDayUsd(50)).isCloseTo(1744.36, within(0.005));
    }

    @Test
    void everyTreeMakesItsTotal() {
        checkTree(work.labour());
        checkTree(work.material());
        checkTree(work.personHour());
    }

    private static void checkTree(Amount amount) {
        double[] parts = amount.parts().stream().mapToDouble(Amount::value).toArray();
        switch (amount.rule()) {
            case SUM ->
                assertThat(amount.value())
                        .isCloseTo(java.util.Arrays.stream(parts).sum(), withinPercentage(1e-12));
            case PRODUCT ->
                assertThat(java.util.Arrays.stream(parts).reduce(1, (a, b) -> a * b))
                        .isEqualTo(amount.value());
            case DIFFERENCE -> assertThat(parts[0] - parts[1]).isEqualTo(amount.value());
            case GIVEN -> assertThat(parts).isEmpty();
            case FORMULA -> assertThat(parts).isNotEmpty();
        }
        amount.parts().forEach(WorkTakeoffTest::checkTree);
    }

    /** The drawing loop's arrays with every draw at its mean. */
    @Test
    void weightsGiveTheMean() {
        WorkWeights weights = work.weights();
        double minutes = weights.travelMinutes();
        double usd = weights.houseFixedUsd();
        for (int s = 0; s < ASSUMPTIONS.steps().size(); s++) {
            double weight = weights.houseSteps()[s];
            for (double[] row : weights.elevationSteps()) {
                weight += row[s];
            }
            for (double[] row : weights.openingSteps()) {
                weight += row[s];
            }
            minutes += weight * ASSUMPTIONS.steps().get(s).minutes().mean();
        }
        for (int i = 0; i < ASSUMPTIONS.materials().size(); i++) {
            usd += weights.packages()[i]
                    * ASSUMPTIONS.materials().get(i).price().mean();
        }
        for (int o = 0; o < 3; o++) {
            usd += weights.unitUsd()[o] + weights.openingFixedUsd()[o];
        }
        assertThat(minutes).isCloseTo(work.labour().value(), within(1e-9));
        assertThat(usd).isCloseTo(work.material().value(), within(1e-9));
        assertThat(weights.openingItems()[1][0]).isCloseTo(17.6 / 75, within(1e-12));
    }

    @Test
    void theOrderOfTheWallsDoesNotMatter() {
        House turned = WorkFixtures.house(
                1990,
                HOUSE.elevations().get(1),
                HOUSE.elevations().get(2),
                HOUSE.elevations().get(0));
        Assumptions learning = ASSUMPTIONS.with(ASSUMPTIONS.scenario().with(Scalar.LEARNING_SLOPE, 0.9));
        WorkTakeoff other = WorkTakeoff.of(learning, turned, WorkFixtures.quantities(turned, Method.FULL_FLANGE, 10));
        assertThat(other.labour().value()).isCloseTo(takeoff(learning).labour().value(), within(1e-9));
    }

    @Test
    void quantitiesMustCoverTheHouse() {
        HouseQuantities none = new HouseQuantities(Set.of(Method.INSERT), List.of());
        assertThatThrownBy(() -> WorkTakeoff.of(ASSUMPTIONS, HOUSE, none)).hasMessageContaining("every wall");
    }

    @Test
    void aDriverMustBeTakenOff() {
        Assumptions glass = WorkFixtures.assumptions(List.of(step("wipe", Driver.GLASS_FT2, 1)), List.of());
        assertThatThrownBy(() -> takeoff(glass)).hasMessageContaining("GLASS_FT2");
    }
}
