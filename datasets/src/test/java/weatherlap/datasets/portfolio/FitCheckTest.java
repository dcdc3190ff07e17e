package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.made.MadeHouse;

/** Whether units fit is asked of the methods that a house is open to, and of no other. */
class FitCheckTest {
    @TempDir
    private Path folder;

    /** The bundled tables, with units for a flange so small that none shows glass. */
    private static Assumptions withoutFlanged() {
        Assumptions tables = AssumptionTables.bundled().assumptions();
        return new Assumptions(
                tables.steps(),
                tables.materials(),
                tables.unitPrices(),
                tables.sightlines().stream().map(FitCheckTest::small).toList(),
                tables.faults(),
                tables.wages(),
                tables.scenario());
    }

    private static Sightline small(Sightline row) {
        double deduction = row.product() == Product.FULL_FLANGE ? 1000 : row.widthDeductionIn();
        return new Sightline(
                row.product(),
                row.material(),
                row.operation(),
                row.headIn(),
                row.jambIn(),
                row.sillIn(),
                row.meetingRailIn(),
                row.topRailIn(),
                row.bottomRailIn(),
                row.stileIn(),
                deduction,
                row.heightDeductionIn(),
                row.depthIn(),
                row.origin());
    }

    private List<String> warnings(House house) throws IOException {
        Path own = Files.createDirectory(folder.resolve(house.cladding().name()));
        try (Writer houses = Files.newBufferedWriter(own.resolve("houses.csv"));
                Writer walls = Files.newBufferedWriter(own.resolve("elevations.csv"));
                Writer openings = Files.newBufferedWriter(own.resolve("openings.csv"))) {
            PortfolioText.write(new Portfolio(List.of(house)), houses, walls, openings);
        }
        assertThat(Portfolios.fit(List.of(house), withoutFlanged())).isTrue();
        return Portfolios.read(own, withoutFlanged()).warnings().stream()
                .map(Problem::toString)
                .filter(warning -> warning.contains("no unit"))
                .toList();
    }

    @Test
    void aHouseOfBrickIsNotAskedForUnitsWithAFlange() throws IOException {
        House vinyl = DemoPortfolio.load().houses().stream()
                .filter(house -> house.cladding() == Cladding.VINYL_SIDING)
                .findFirst()
                .orElseThrow();
        House brick = MadeHouse.like(vinyl).clad(Cladding.BRICK_VENEER).house();
        assertThat(warnings(vinyl))
                .hasSize(vinyl.openingCount())
                .allMatch(warning -> warning.contains("no unit for full-flange fits"));
        assertThat(warnings(brick)).isEmpty();
    }
}
