package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.climate.ClimateCsv;
import weatherlap.datasets.climate.DemoClimate;

class ExposureCommandTest {
    private static final int HOURS = 8760;
    private static final String HEADER =
            "bearing_deg,airfield_index_l_per_m2_year,ashrae_index_l_per_m2_year,worst_spell_l_per_m2,wet_hours";

    @TempDir
    private Path folder;

    private Path town() throws IOException {
        return Files.writeString(
                folder.resolve("town.csv"),
                ClimateCsv.lines(DemoClimate.hourly()).limit(HOURS + 1).collect(Collectors.joining()));
    }

    @Test
    void withoutAFolderTheTableIsPrintedAndNothingIsWritten() throws IOException {
        Cli run = Cli.run("exposure", town());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("ISO 15927-3  ASHRAE 160").contains("rank correlation");
        assertThat(run.err())
                .contains("calendar years")
                .contains("without rain")
                .contains("calm")
                .contains("of the rain");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("town.csv"));
        }
    }

    @Test
    void theTableAndThePictureAreWritten() throws IOException {
        Path out = folder.resolve("out");
        Cli run = Cli.run("exposure", town(), "--out", out, "--quiet");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).isEmpty();
        List<String> lines = Files.readAllLines(out.resolve("exposure.csv"));
        assertThat(lines).hasSize(73).startsWith(HEADER);
        assertThat(lines.get(72)).startsWith("355,");
        assertThat(Files.readString(out.resolve("exposure.svg")))
                .startsWith("<?xml")
                .contains("ASHRAE 160");
        assertThat(Files.readString(out.resolve("run.json"))).contains("\"exposure\"", "climate/town.csv");
    }

    @Test
    void aFileThatIsNoWeatherIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("list.txt"), "milk\neggs\n");
        Cli run = Cli.run("exposure", file, "--out", folder.resolve("out"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("list.txt").contains("EPW");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void fixedWidthWeatherIsReadByItsContent() throws IOException {
        // ISD-Lite: year month day hour, then tenths of: temperature, dew point, pressure, direction, speed, sky, rain
        // in 1 h and in 6 h
        String text = Stream.iterate(0, t -> t + 1)
                .limit(48)
                .map(t -> String.format(
                        java.util.Locale.ROOT,
                        "2014 01 %02d %02d   100    50 10130   180    50     4    10 -9999%n",
                        1 + t / 24,
                        t % 24))
                .collect(Collectors.joining());
        Cli run = Cli.run("exposure", Files.writeString(folder.resolve("station"), text));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).contains("ISD-Lite").contains("warning: ");
    }

    @Test
    @DisplayName("validation: a year at an airport, by the command, against sums made apart from this code (6 digits)")
    void airport() throws IOException {
        Path out = folder.resolve("out");
        Cli run = Cli.run("exposure", "newark", "--out", out);
        assertThat(run.status()).as(run.err()).isZero();
        Map<Integer, double[]> rows = Files.readAllLines(out.resolve("exposure.csv")).stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .collect(Collectors.toMap(row -> (int) row[0], row -> row));
        double[] iso = {470.199, 499.447, 371.106, 257.607, 243.974, 283.788, 292.344, 361.879};
        double[] ashrae = {474.306, 507.943, 381.084, 266.248, 252.047, 302.961, 313.455, 375.588};
        double[] spell = {108.15, 146.02, 111.19, 47.93, 45.65, 61.58, 51.86, 42.89};
        for (int i = 0; i < iso.length; i++) {
            double[] row = rows.get(45 * i);
            assertThat(row[1]).isCloseTo(iso[i], within(5.5e-4));
            assertThat(row[2]).isCloseTo(ashrae[i], within(5.5e-4));
            assertThat(row[3]).isCloseTo(spell[i], within(5.5e-3));
        }
        // Its faults are told: the wind of 1048 mph, the wet hours without a direction, the hours that are missing.
        assertThat(run.err())
                .contains("CC0")
                .contains("468.659")
                .contains("rain: 1114.6 mm")
                .contains("23 of them lack a wind");
        assertThat(run.err()).contains("1 readings that cannot be").contains("without a row");
    }
}
