package weatherlap.datasets.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;

/**
 * Validation: made houses against the shares of ResStock 3.2.0 (NREL), in percent. At least 1,100 houses an era: within 5 percentage points,
 * more than three standard errors of a half.
 */
class NationalMixTest {
    private static final List<House> HOUSES = new HouseGenerator(Mix.bundled(BundledMix.NATIONAL), 5)
            .houses(20_000)
            .toList();
    private static final double WITHIN_PERCENT = 5;

    private static double percent(int from, int to, Predicate<House> which) {
        List<House> era = HOUSES.stream()
                .filter(house -> house.yearBuilt() >= from && house.yearBuilt() <= to)
                .toList();
        assertThat(era).hasSizeGreaterThan(1100);
        return 100.0 * era.stream().filter(which).count() / era.size();
    }

    @ParameterizedTest(name = "{0} to {1}")
    @DisplayName("claddings, stories and metal frames by age")
    @CsvSource({
        "1900, 1939, 38.2, 34.4, 14.0, 7.3, 1.7, 37.8, 59.6, 16.0",
        "1940, 1959, 30.3, 28.7, 22.8, 12.1, 1.9, 72.1, 26.9, 20.1",
        "1960, 1979, 22.3, 27.1, 31.7, 14.7, 1.6, 74.4, 24.1, 27.5",
        "1980, 1999, 29.0, 31.5, 24.8, 12.1, 1.1, 58.9, 39.7, 33.2",
        "2000, 2009, 30.9, 20.8, 27.5, 17.2, 0.9, 53.5, 45.6, 34.6",
        "2010, 2019, 33.8, 18.8, 31.1, 12.9, 0.9, 50.2, 48.9, 13.4"
    })
    void byAge(
            int from,
            int to,
            double vinyl,
            double wood,
            double brick,
            double stucco,
            double aluminum,
            double one,
            double two,
            double metal) {
        assertCladding(from, to, Cladding.VINYL_SIDING, vinyl);
        assertCladding(from, to, Cladding.WOOD_LAP, wood);
        assertCladding(from, to, Cladding.BRICK_VENEER, brick);
        assertCladding(from, to, Cladding.STUCCO, stucco);
        assertCladding(from, to, Cladding.ALUMINUM_SIDING, aluminum);
        assertThat(percent(from, to, house -> house.storeys() == 1)).isCloseTo(one, within(WITHIN_PERCENT));
        assertThat(percent(from, to, house -> house.storeys() == 2)).isCloseTo(two, within(WITHIN_PERCENT));
        assertThat(percent(from, to, NationalMixTest::hasMetalFrames)).isCloseTo(metal, within(WITHIN_PERCENT));
    }

    private static void assertCladding(int from, int to, Cladding cladding, double percent) {
        assertThat(percent(from, to, house -> house.cladding() == cladding)).isCloseTo(percent, within(WITHIN_PERCENT));
    }

    private static boolean hasMetalFrames(House house) {
        FrameMaterial first = house.openings().findFirst().orElseThrow().frame().material();
        return first == FrameMaterial.ALUMINUM || first == FrameMaterial.STEEL;
    }

    @Test
    @DisplayName("fronts by bearing: N and S 18.5 % each, E and W 16.6, NE and SW 7.2, NW and SE 7.7")
    void fronts() {
        double[] expected = {18.5, 7.2, 16.6, 7.7, 18.5, 7.2, 16.6, 7.7};
        for (int eighth = 0; eighth < 8; eighth++) {
            int wanted = eighth;
            double share = percent(
                    1900,
                    2019,
                    house -> Math.floorMod(Math.round(house.elevations().get(0).bearingDeg() / 45), 8) == wanted);
            assertThat(share).isCloseTo(expected[eighth], within(1.2));
        }
    }
}
