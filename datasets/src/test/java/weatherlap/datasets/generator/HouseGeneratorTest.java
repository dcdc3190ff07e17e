package weatherlap.datasets.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.house.Room;

class HouseGeneratorTest {
    private static final Mix MIX = Mix.bundled(BundledMix.NEW_YORK);
    private static final List<House> HOUSES =
            new HouseGenerator(MIX, 7).houses(600).toList();

    @TempDir
    Path temporary;

    @Test
    void everyHouseReadsBackWithoutAProblem() throws IOException {
        Portfolio portfolio = new Portfolio(HOUSES.subList(0, 200));
        try (var houses = Files.newBufferedWriter(temporary.resolve("houses.csv"));
                var elevations = Files.newBufferedWriter(temporary.resolve("elevations.csv"));
                var openings = Files.newBufferedWriter(temporary.resolve("openings.csv"))) {
            PortfolioText.write(portfolio, houses, elevations, openings);
        }
        Loaded<Portfolio> loaded = Portfolios.read(Folder.of(temporary), 2026);
        assertThat(loaded.errors()).isEmpty();
        assertThat(loaded.warnings()).isEmpty();
        assertThat(loaded.orElseThrow()).isEqualTo(portfolio);
    }

    @Test
    void theFirstSixtyOfAHundredAreTheSixty() {
        HouseGenerator generator = new HouseGenerator(MIX, 7);
        assertThat(generator.houses(60).toList()).isEqualTo(HOUSES.subList(0, 60));
        assertThat(generator.house(60)).isEqualTo(HOUSES.get(59));
        assertThat(new HouseGenerator(MIX, 8).house(60)).isNotEqualTo(HOUSES.get(59));
    }

    @Test
    void everyHouseHasABedroomAndBedroomWindowsOpen() {
        assertThat(HOUSES).allSatisfy(house -> assertThat(house.openings())
                .filteredOn(opening -> opening.place().room() == Room.BEDROOM)
                .isNotEmpty()
                .noneMatch(opening -> opening.operation() == Operation.PICTURE));
    }

    @Test
    void wallsStandAtRightAnglesWithWholeBearings() {
        assertThat(HOUSES).allSatisfy(house -> {
            double front = house.elevations().get(0).bearingDeg();
            assertThat(house.elevations())
                    .extracting(Elevation::bearingDeg)
                    .containsExactly(front, (front + 90) % 360, (front + 180) % 360, (front + 270) % 360);
        });
    }

    @Test
    void windowsOfAStoreyHaveTheirHeadsInLine() {
        assertThat(HOUSES.subList(0, 100)).allSatisfy(house -> {
            long heads = house.elevations().stream()
                    .flatMap(wall -> wall.openings().stream())
                    .map(Opening::headHeightIn)
                    .distinct()
                    .count();
            assertThat(heads).isLessThanOrEqualTo(house.storeys());
        });
    }

    /** Mean of 600 houses with a standard deviation near 5: the error of the mean is 0.2. */
    @Test
    void aHouseHasAboutTwelveWindows() {
        assertThat(HOUSES.stream().collect(Collectors.averagingInt(House::openingCount)))
                .isBetween(11.0, 14.5);
    }

    /** ResStock's .425 of 1960 to 1979; about 180 houses of 600, so the standard error is 0.037: four of them. */
    @Test
    void sharesFollowTheMix() {
        List<House> sixties = HOUSES.stream()
                .filter(house -> house.yearBuilt() >= 1960 && house.yearBuilt() <= 1979)
                .toList();
        double vinyl = sixties.stream()
                        .filter(house -> house.cladding() == Cladding.VINYL_SIDING)
                        .count()
                / (double) sixties.size();
        assertThat(vinyl).isBetween(0.425 - 0.15, 0.425 + 0.15);
    }

    @Test
    void theDemoIsMadeOfTheGeneratorAndEightHousesByHand() {
        List<House> demo = DemoPortfolio.load().houses();
        assertThat(demo.subList(0, 52))
                .isEqualTo(new HouseGenerator(MIX, 2026).houses(52).toList());
        assertThat(demo.subList(52, demo.size()))
                .extracting(House::id)
                .containsExactly("porch", "gable", "narrow", "rot", "brick", "view", "crooked", "stucco");
    }

    @Test
    void theDemoHasNeitherErrorsNorWarnings() {
        Loaded<Portfolio> demo = Portfolios.read(DemoPortfolio.folder(), 2025);
        assertThat(demo.errors()).isEmpty();
        assertThat(demo.warnings()).isEmpty();
    }
}
