package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a family's wind is said only what its site file lets one say. */
class OwnWeatherTest {
    private static final String SITE =
            "place = \"Newark <b>NJ</b>\"\nstation = \"72502014734\"\nweather = [\"newark\"]\n";

    @TempDir
    private Path folder;

    private Path houses;

    @BeforeEach
    void made() {
        houses = folder.resolve("houses");
        run("generate", "--houses", 4, "--seed", 3, "--out", houses);
    }

    private static Cli run(Object... words) {
        Cli cli = Cli.run(words);
        assertThat(cli.status()).as(cli.err()).isZero();
        return cli;
    }

    /** The same houses, each wall facing the other way. */
    private Path turned() throws IOException {
        Path turned = Files.createDirectory(folder.resolve("turned"));
        for (String file : List.of("houses.csv", "openings.csv")) {
            Files.copy(houses.resolve(file), turned.resolve(file));
        }
        List<String> walls = Files.readAllLines(houses.resolve("elevations.csv"));
        int bearing = List.of(walls.get(0).split(",")).indexOf("bearing_deg");
        Files.write(
                turned.resolve("elevations.csv"),
                Stream.concat(Stream.of(walls.get(0)), walls.stream().skip(1).map(row -> turned(row, bearing)))
                        .toList());
        return turned;
    }

    private static String turned(String row, int bearing) {
        String[] cells = row.split(",", -1);
        cells[bearing] = Integer.toString((Integer.parseInt(cells[bearing]) + 180) % 360);
        return String.join(",", cells);
    }

    private String results(Path portfolio, String name, Object... more) throws IOException {
        Path out = folder.resolve(name);
        Object[] words = Stream.concat(
                        Stream.of("compare", portfolio, "--draws", 64, "--quiet", "--out", out), Stream.of(more))
                .toArray();
        run(words);
        return Files.readString(out.resolve("houses.csv"));
    }

    @Test
    void underWeatherThatIsNotTheirsTheWayHousesFaceDecidesNothing() throws IOException {
        Path turned = turned();
        assertThat(results(turned, "b")).isEqualTo(results(houses, "a"));
        assertThat(results(turned, "d", "--climate", "newark")).isEqualTo(results(houses, "c", "--climate", "newark"));
        String report = Files.readString(folder.resolve("a/report.html"));
        assertThat(report)
                .contains("Weather not yours: no record of these houses was given. That of Elder Cove (invented)");
        assertThat(folder.resolve("a/charts/leak-rose.svg")).doesNotExist();
        Path site = Files.writeString(folder.resolve("newark.toml"), SITE);
        assertThat(results(turned, "f", "--site", site)).isNotEqualTo(results(houses, "e", "--site", site));
        assertThat(folder.resolve("e/charts/leak-rose.svg")).exists();
        assertThat(Files.readString(folder.resolve("e/report.html")))
                .doesNotContain("not yours")
                .contains("Weather of Newark &lt;b&gt;NJ&lt;/b&gt;, 2013", "of the wet ones a wind");
    }

    @Test
    void theHandoutIsSilentOrNamesItsWeather() throws IOException {
        Path silent = folder.resolve("silent");
        run("handout", houses, "--house", "G0001", "--out", silent);
        assertThat(Files.readString(silent.resolve("handout.html")))
                .contains("No weather record of this place was given", "the same on all walls")
                .doesNotContain("class=\"rose\"", "Rain on each wall", "drives most");
        Files.writeString(houses.resolve("site.toml"), SITE);
        Path own = folder.resolve("own");
        run("handout", houses, "--house", "G0001", "--out", own);
        assertThat(Files.readString(own.resolve("handout.html")))
                .contains("class=\"rose\"", "Rain on each wall", "Weather: Newark &lt;b&gt;NJ&lt;/b&gt;, 2013.")
                .doesNotContain("No weather record");
        Path tried = folder.resolve("tried");
        run("handout", houses, "--house", "G0001", "--climate", "seattle", "--out", tried);
        assertThat(Files.readString(tried.resolve("handout.html")))
                .contains("No weather record of this place was given", "Seattle-Tacoma airport, Washington, 2014");
    }

    @Test
    void theCrewSheetSaysWhoseWeatherItRestsOn() throws IOException {
        Path out = folder.resolve("crew");
        run("crewsheet", houses, "--house", "G0001", "--method", "insert", "--out", out);
        assertThat(Files.readString(out.resolve("crewsheet.html"))).contains("Weather not yours");
    }

    @Test
    void aMadeTownHasItsOwnWeather() throws IOException {
        Path town = folder.resolve("town");
        run("generate", "--houses", 1, "--climate", "--out", town);
        results(town, "report");
        assertThat(Files.readString(folder.resolve("report/report.html")))
                .contains("Weather of Elder Cove (invented), 2011 to 2020")
                .doesNotContain("not yours");
    }

    @Test
    void badSitesAreRefusedByName() throws IOException {
        Path site = Files.writeString(
                folder.resolve("bad.toml"),
                "place = \"x\"\nstation = \"nowhere\"\nweather = [\"2019.csv\"]\ndesign_wind_mph = 900\nexposure = \"B\"\n");
        Cli cli = Cli.run("compare", houses, "--site", site, "--out", folder.resolve("out"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err().lines().collect(Collectors.toList()))
                .anyMatch(line -> line.startsWith("bad.toml:2:station: \"nowhere\""))
                .anyMatch(line -> line.startsWith("bad.toml:4:design_wind_mph: \"900\""));
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aStationListIsPrintedAndASiteFileBegun() throws IOException {
        Path out = folder.resolve("my-site");
        Cli cli = run("site", "--near", "40.7,-74.2", "--years", "2020-2021", "--out", out);
        assertThat(cli.out())
                .contains("2.0  72502014734  Newark Liberty International Ap, NJ")
                .contains("access/2020/72502014734.csv", "72502014734-2021.csv");
        assertThat(Files.readString(out.resolve("site.toml"))).contains("latitude = 40.7", "# design_wind_mph");
        Cli missing = Cli.run("compare", houses, "--site", out, "--out", folder.resolve("out"));
        assertThat(missing.status()).isEqualTo(2);
        assertThat(missing.err()).contains("download it from https://");
        assertThat(Cli.run("site", "--near", "Newark").err()).contains("Newark-Heath Airport, OH");
        assertThat(Cli.run("site", "--near", "Newark,NJ", "--years", "2020").status())
                .isEqualTo(2);
    }
}
