package weatherlap.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/** Houses as the report has them. */
class HouseViewsTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();

    @Test
    void openingsWhoseIdsReadAlikeStayApart() {
        House demo = DemoPortfolio.load().houses().get(0);
        Opening opening = demo.openings().findFirst().orElseThrow();
        Elevation left = MadeWall.of(
                        "north / left", MadeOpening.like(opening).id("1").opening())
                .wall();
        Elevation north = MadeWall.of(
                        "north", MadeOpening.like(opening).id("left / 1").opening())
                .wall();
        House house = MadeHouse.like(demo).walls(List.of(left, north)).house();
        TableView openings = new HouseViews(20, result -> Optional.empty())
                .entries(List.of(HouseChoice.of(simulated(house), 1)))
                .get(0)
                .openings();
        assertThat(openings.rows()).hasSize(2);
    }

    private static SimulatedHouse simulated(House house) {
        RainClimate climate = RainClimate.of(DemoClimate.hourly(), BUNDLED.scenario());
        return new Simulator(BUNDLED, climate, Sampling.SOBOL, 16, 1).simulateForPlans(house);
    }
}
