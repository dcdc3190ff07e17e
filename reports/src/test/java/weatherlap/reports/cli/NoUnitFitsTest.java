package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window too small for one method closes that method there; the portfolio runs. */
class NoUnitFitsTest {
    @TempDir
    private Path folder;

    @Test
    void oneTinyWindowStopsNothing() throws IOException {
        Path town = folder.resolve("town");
        assertThat(Cli.run("generate", "--houses", 1, "--seed", 7, "--out", town)
                        .status())
                .isZero();
        Path openings = town.resolve("openings.csv");
        List<String> lines = Files.readAllLines(openings);
        List<String> names = List.of(lines.get(0).split(","));
        String[] first = lines.get(1).split(",", -1);
        first[names.indexOf("frame_width_in")] = "8";
        first[names.indexOf("frame_height_in")] = "8";
        first[names.indexOf("existing_material")] = "aluminum";
        Arrays.fill(first, names.indexOf("width_top_in"), first.length, "");
        lines.set(1, String.join(",", first));
        Files.write(openings, lines);

        Cli check = Cli.run("check", town);
        assertThat(check.status()).isZero();
        assertThat(check.err())
                .contains("openings.csv:2:frame_width_in: no unit for the insert fits 8 x 8 inches and still shows"
                        + " glass; this window cannot be done that way");

        Path report = folder.resolve("report");
        assertThat(Cli.run("compare", town, "--draws", 16, "--quiet", "--out", report)
                        .status())
                .isZero();
        List<String> rows = Files.readAllLines(report.resolve("openings.csv"));
        assertThat(rows.get(1)).doesNotContain("no_unit_fits").endsWith(",full_flange");
        assertThat(rows.get(2)).contains(",no_unit_fits,").endsWith(",full_flange");
    }
}
