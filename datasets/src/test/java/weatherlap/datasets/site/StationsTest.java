package weatherlap.datasets.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.Problem;

class StationsTest {
    private static final Stations STATIONS = Stations.bundled();

    /**
     * Validation: ten city centers (coordinates from memory), the station and its distance by the straight chord through the earth, reckoned
     * apart from this code in a script of its own.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Newark, 40.7357, -74.1724, 72502014734, 3.646",
        "Seattle, 47.6062, -122.3321, 72793524234, 4.235",
        "Boise, 43.6150, -116.2023, 72681024131, 3.841",
        "Miami, 25.7617, -80.1918, 72202012839, 7.999",
        "Portland, 43.6591, -70.2568, 72606014764, 2.639",
        "Denver, 39.7392, -104.9903, 72469523036, 12.861",
        "Anchorage, 61.2181, -149.9003, 70273526409, 1.448",
        "Honolulu, 21.3069, -157.8583, 91182022521, 5.327",
        "Minneapolis, 44.9778, -93.2650, 72658014922, 6.624",
        "San Antonio, 29.4241, -98.4936, 72252312970, 6.022"
    })
    void nearest(String city, double latitude, double longitude, String station, double miles) {
        Location place = new Location(latitude, longitude);
        Station nearest = STATIONS.nearest(place, 1).get(0);
        assertThat(nearest.id()).isEqualTo(station);
        assertThat(nearest.location().milesTo(place)).isCloseTo(miles, within(0.001));
    }

    /** Validation. A quarter of the way round a sphere of the earth's mean radius is 6,218.4 miles, over the date line too. */
    @Test
    void distancesAreThoseOnASphere() {
        assertThat(new Location(0, 0).milesTo(new Location(90, 0))).isCloseTo(6218.4, within(0.1));
        assertThat(new Location(0, 179).milesTo(new Location(0, -179))).isCloseTo(138.2, within(0.1));
    }

    @Test
    void everyStationIsRead() {
        assertThat(STATIONS.all()).hasSize(2010);
    }

    @Test
    void aPlaceIsFoundByNameAndStateOrByNumbers() {
        PlaceSearch newark = PlaceSearch.of("newark, nj", STATIONS).orElseThrow();
        assertThat(newark.standIn().orElseThrow().id()).isEqualTo("72502014734");
        PlaceSearch numbers = PlaceSearch.of(" 40.7, -74.2 ", STATIONS).orElseThrow();
        assertThat(numbers.location()).isEqualTo(new Location(40.7, -74.2));
        assertThat(numbers.standIn()).isEmpty();
    }

    @Test
    void aPlaceOfWhichThereAreSeveralIsNotGuessed() {
        assertThat(problem("Newark"))
                .contains("Newark Liberty International Ap, NJ", "Newark-Heath Airport, OH", "state");
        assertThat(problem("Drizzlewick NJ")).contains("is not in the name of any weather station");
        assertThat(problem("95,10")).contains("is not a latitude");
        assertThat(problem("")).contains("is not in the name of any weather station");
    }

    private static String problem(String asked) {
        return PlaceSearch.of(asked, STATIONS).errors().stream()
                .map(Problem::toString)
                .reduce("", String::concat);
    }
}
