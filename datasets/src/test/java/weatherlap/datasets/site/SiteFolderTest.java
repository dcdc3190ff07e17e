package weatherlap.datasets.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.climate.Climate;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.wind.DesignWind;
import weatherlap.sim.wind.ExposureCategory;

class SiteFolderTest {
    private static final String NEWARK = "place = \"Newark NJ\"\nstation = \"72502014734\"\n";

    @TempDir
    private Path folder;

    private Loaded<SiteFolder> site(String text) throws IOException {
        Files.writeString(folder.resolve("site.toml"), text);
        return SiteFolder.read(folder);
    }

    private String fault(String text) throws IOException {
        return messages(site(text));
    }

    private String weatherFault(String text) throws IOException {
        return messages(site(text).orElseThrow().weather());
    }

    private static String messages(Loaded<?> loaded) {
        return String.join("\n", loaded.errors().stream().map(Problem::toString).toList());
    }

    /** Hours of one day in NOAA's table. */
    private void day(String file, int year, String latitude, String longitude) throws IOException {
        StringBuilder rows = new StringBuilder("STATION,DATE,LATITUDE,LONGITUDE,WND,TMP,AA1\n");
        IntStream.range(0, 24)
                .forEach(hour -> rows.append(
                        "72502014734,%d-07-01T%02d:51:00,%s,%s,\"120,1,N,0060,1\",\"+0200,1\",\"01,0045,9,1\"%n"
                                .formatted(year, hour, latitude, longitude)));
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, rows);
    }

    @Test
    void everythingASiteMaySay() throws IOException {
        Site site = site(NEWARK + "latitude = 40.7\nlongitude = -74.2\nweather = [\"newark\"]\n"
                        + "design_wind_mph = 115\nexposure = \"b\"\n")
                .orElseThrow()
                .site();
        assertThat(site.place()).isEqualTo("Newark NJ");
        assertThat(site.location()).contains(new Location(40.7, -74.2));
        assertThat(site.wind()).contains(new DesignWind(115, ExposureCategory.B));
        assertThat(site(NEWARK).orElseThrow().site().location()).contains(new Location(40.683, -74.169));
    }

    @Test
    void whatIsWrittenReadsBackButForTheWeatherToFetch() throws IOException {
        Stations stations = Stations.bundled();
        PlaceSearch place = PlaceSearch.of("Newark NJ", stations).orElseThrow();
        Station station = stations.of("72502014734").orElseThrow();
        SiteFolder written = site(SiteText.write(place, station, IntStream.rangeClosed(2014, 2015)))
                .orElseThrow();
        assertThat(written.site().weather())
                .containsExactly("weather/72502014734-2014.csv", "weather/72502014734-2015.csv");
        assertThat(written.site().wind()).isEmpty();
        assertThat(messages(written.weather()))
                .contains("weather/72502014734-2014.csv: is missing")
                .contains("https://www.ncei.noaa.gov/data/global-hourly/access/2015/72502014734.csv");
    }

    @Test
    void whatCannotBeIsNamed() throws IOException {
        assertThat(fault("place = \"x\"\nstation = \"123\"\n"))
                .contains("site.toml:2:station: \"123\" is not one of the 2010");
        assertThat(fault(NEWARK + "design_wind_mph = 0\nexposure = \"B\"\n"))
                .contains(":3:design_wind_mph: \"0\"", "70 to 250");
        assertThat(fault(NEWARK + "design_wind_mph = 900\nexposure = \"B\"\n")).contains("\"900\"");
        assertThat(fault(NEWARK + "design_wind_mph = 110\nexposure = \"E\"\n")).contains("B, C, D");
        assertThat(fault(NEWARK + "design_wind_mph = 110\n")).contains("go together");
        assertThat(fault(NEWARK + "latitude = 91\nlongitude = 4\n")).contains("latitude: \"91\"");
        assertThat(fault(NEWARK + "latitude = 40\n")).contains("go together");
        assertThat(fault(NEWARK + "wether = [\"a.csv\"]\n")).contains("is not known", "weather");
        assertThat(fault(NEWARK + "weather = []\n")).contains("must list files");
        assertThat(fault(NEWARK + "weather = [\"a.csv\", \"a.csv\"]\n")).contains("more than once");
        assertThat(fault("station = \"72502014734\"\n")).contains("place: must name the place");
        assertThat(fault("place = [")).contains("is not TOML");
    }

    /** TOML names characters by numbers that no file of text may hold. */
    @Test
    void charactersThatNoPageOrPathCanHoldAreNamed() throws IOException {
        assertThat(fault("place = \"a\\uFFFE\"\n"))
                .contains("site.toml:1:place: holds a character that no page can show");
        assertThat(weatherFault("place = \"x\"\nweather = [\"a\\u0000b\"]\n"))
                .contains("a\\u0000b: is not a file name");
    }

    @Test
    void aYearThatIsMissingIsNamed() throws IOException {
        String weather = NEWARK + "weather = [\"weather/2019.csv\", \"weather/2021.csv\"]\n";
        assertThat(weatherFault(weather))
                .contains("weather/2021.csv: is missing")
                .contains("access/2021/72502014734.csv");
        day("weather/2019.csv", 2019, "40.683", "-74.169");
        day("weather/2021.csv", 2021, "40.683", "-74.169");
        assertThat(weatherFault(weather)).contains("is a date wrong?");
    }

    @Test
    void weatherOfAnotherContinentIsRefused() throws IOException {
        String weather = NEWARK + "weather = [\"weather/2019.csv\"]\n";
        day("weather/2019.csv", 2019, "51.48", "-0.45");
        assertThat(weatherFault(weather)).contains("51.48,-0.45", "miles from Newark NJ");
        assertThat(weatherFault(NEWARK + "weather = [\"seattle\"]\n"))
                .contains("47.45,-122.31", "miles from Newark NJ");
        day("weather/2019.csv", 2019, "40.683", "-74.169");
        assertThat(weatherFault(weather)).isEmpty();
    }

    @Test
    void hoursInUtcAreBroughtToLocalStandardTime() throws IOException {
        day("weather/2019.csv", 2019, "40.683", "-74.169");
        Climate climate = site(NEWARK + "weather = [\"weather/2019.csv\"]\n")
                .orElseThrow()
                .weather()
                .orElseThrow();
        assertThat(climate.weather().start()).isEqualTo(LocalDateTime.of(2019, 6, 30, 19, 0));
        assertThat(climate.measuredAt()).isEqualTo(List.of(new Location(40.683, -74.169)));
    }

    @Test
    void noFileOutsideItsFolderIsRead() throws IOException {
        Files.writeString(folder.resolveSibling("outside.csv"), "time,rain_mm\n");
        assertThatThrownBy(() -> site(NEWARK + "weather = [\"../outside.csv\"]\n")
                        .orElseThrow()
                        .weather()
                        .orElseThrow())
                .hasMessageContaining("out of its folder");
    }
}
