package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalibrateADayTest {
    @TempDir
    private Path folder;

    /** Tables that were tuned give the figure when they are asked again. */
    @Test
    void tunedTablesGiveTheFigureThatTheyWereTunedTo() throws IOException {
        Path mine = folder.resolve("mine");
        Cli run = Cli.run("calibrate", "--a-day", "insert=7", "--a-day", "full_flange=3", "--out", mine);
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("now 7.0 (", "now 3.0 (", "steps moved");
        assertThat(Files.readString(mine.resolve("assumptions/labour-steps.csv")))
                .contains(",own figure,\"own figure: full_flange=3.0, insert=7.0 windows a day on the standard job");
        Cli again = Cli.run(
                "calibrate",
                "--a-day",
                "insert=8",
                "--assumptions",
                mine.resolve("assumptions"),
                "--out",
                folder.resolve("again"));
        assertThat(again.out()).contains("the tables gave 7.0 windows a day by insert; now 8.0");
    }

    @Test
    void aHouseOfTheDemoStandsForTheJob() {
        Cli run = Cli.run("calibrate", "--a-day", "insert=6", "--like", "G0001", "--out", folder.resolve("mine"));
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("On house G0001 the tables gave");
    }

    @ParameterizedTest
    @ValueSource(strings = {"insert=60", "insert=0.5"})
    void whatTheTablesCannotReachIsRefused(String figure) {
        Path mine = folder.resolve("mine");
        Cli run = Cli.run("calibrate", "--a-day", figure, "--out", mine);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("reach from", "windows a day on the standard job (2 people");
        assertThat(mine).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"door=3", "insert=0", "insert=NaN", "insert=many", "insert"})
    void whatIsNoFigureIsRefused(String figure) {
        Cli run = Cli.run("calibrate", "--a-day", figure, "--out", folder.resolve("mine"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--a-day");
    }

    @Test
    void neitherRecordsNorFigureIsRefused() {
        assertThat(Cli.run("calibrate", "--out", folder.resolve("mine")).status())
                .isEqualTo(2);
        assertThat(Cli.run("calibrate", "jobs.csv", "--a-day", "insert=9", "--out", folder.resolve("mine"))
                        .err())
                .contains("--like");
    }
}
