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
        Elevation wall = demo.elevations().get(0);
        Opening opening = wall.openings().get(0);
        House house = with(
                demo,
                List.of(
                        with(wall, "north / left", with(opening, "1")),
                        with(wall, "north", with(opening, "left / 1"))));
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

    private static House with(House house, List<Elevation> walls) {
        return new House(
                house.id(),
                house.label(),
                house.yearBuilt(),
                house.terrain(),
                house.cladding(),
                house.barrier(),
                house.storeys(),
                house.region(),
                house.leadTest(),
                walls);
    }

    private static Elevation with(Elevation wall, String id, Opening opening) {
        return new Elevation(
                id,
                wall.bearingDeg(),
                wall.widthFt(),
                wall.eaveHeightFt(),
                wall.overhangIn(),
                wall.courseExposureIn(),
                wall.panelLengthIn(),
                wall.sidingCondition(),
                wall.obstructionM(),
                List.of(opening));
    }

    private static Opening with(Opening o, String id) {
        return new Opening(
                id,
                o.room(),
                o.operation(),
                o.newOperation(),
                o.units(),
                o.frameWidthIn(),
                o.frameHeightIn(),
                o.leftIn(),
                o.sillHeightIn(),
                o.interiorSillIn(),
                o.floorAreaFt2(),
                o.existingMaterial(),
                o.frameCondition(),
                o.interiorReturn(),
                o.returnLayers(),
                o.setbackIn(),
                o.headLap(),
                o.jambLap(),
                o.sillLap(),
                o.stain(),
                o.readings());
    }
}
