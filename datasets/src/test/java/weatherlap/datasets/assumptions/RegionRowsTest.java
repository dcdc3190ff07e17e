package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.made.MadeHouse;

/** Rows of labor and material that hold in one region: that of the house, else that of the scenario, as with the wages. */
class RegionRowsTest {
    private static final Condition HARBOR = Condition.parse("region=harbour_county|valley_county", Fact.ofRows());

    private static boolean holds(House house, Scenario scenario) {
        return HARBOR.holds(Facts.of(house, scenario))
                && HARBOR.holds(Facts.of(house, house.elevations().get(0), scenario));
    }

    @Test
    void theRegionIsThatOfTheHouseElseOfTheScenario() {
        Scenario national = AssumptionTables.bundled().assumptions().scenario();
        Scenario harbor = national.with(Choice.REGION, "harbour_county");
        House nowhere = DemoPortfolio.load().houses().get(0);
        House upland = MadeHouse.like(nowhere).paidIn("upland_county").house();
        House valley = MadeHouse.like(nowhere).paidIn("valley_county").house();
        assertThat(nowhere.region()).isEmpty();
        assertThat(holds(nowhere, national)).isFalse();
        assertThat(holds(nowhere, harbor)).isTrue();
        assertThat(holds(upland, harbor)).isFalse();
        assertThat(holds(valley, national)).isTrue();
    }
}
