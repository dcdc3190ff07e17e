package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record of a run is enough to make it again, and to notice that something is not what it was. */
class RepeatTest {
    @TempDir
    private static Path folder;

    private static Path houses;
    private static Path report;

    @BeforeAll
    static void compareOnce() throws IOException {
        houses = SmallPortfolio.write(folder.resolve("houses"));
        report = folder.resolve("report");
        Cli cli = Cli.run(
                "compare", houses, "--out", report, "--draws", 16, "--seed", 11, "--set", "crew_size=3", "--quiet");
        assertThat(cli.status()).as(cli.err()).isZero();
    }

    private static Cli repeat(Path run, String name, Object portfolio) {
        return Cli.run("compare", portfolio, "--repeat", run, "--out", folder.resolve(name), "--threads", 1, "--quiet");
    }

    @Test
    void theSameToTheByteAlsoFromAFolderOfAnotherName() throws IOException {
        Path moved = SmallPortfolio.write(folder.resolve("moved"));
        Cli cli = repeat(report.resolve("run.json"), "again", moved);
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).containsPattern("the same to the byte: \\d\\d files\n$");
        for (var file : Outputs.files(report).entrySet()) {
            assertThat(folder.resolve("again").resolve(file.getKey())).hasSameBinaryContentAs(file.getValue());
        }
    }

    @Test
    void whatCameOutOtherwiseIsNamed() throws IOException {
        Path copy = copy("copy");
        Path run = copy.resolve("run.json");
        Files.writeString(run, Files.readString(run).replaceFirst("(\"houses.csv\" : \")[0-9a-f]{4}", "$10000"));
        Cli cli = repeat(run, "otherwise", houses);
        assertThat(cli.out()).endsWith("\ndiffers: houses.csv\n");
        assertThat(cli.status()).isEqualTo(1);
    }

    @Test
    void inputThatIsNotWhatTheRunReadIsRefused() throws IOException {
        Path changed = SmallPortfolio.write(folder.resolve("changed"));
        Files.writeString(
                changed.resolve("openings.csv"),
                Files.readString(changed.resolve("openings.csv")).replace(",36,54,", ",36,55,"));
        Path copy = copy("tables");
        Path wages = copy.resolve("assumptions/wages.csv");
        Files.writeString(wages, Files.readString(wages).replaceFirst("\n", "\r\n"));
        Cli cli = repeat(copy.resolve("run.json"), "refused", changed);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err().lines())
                .contains("portfolio/openings.csv: is not what the run read")
                .hasSizeLessThanOrEqualTo(2);
        assertThat(folder.resolve("refused")).doesNotExist();
    }

    @Test
    void aPortfolioThatIsNotNamedIsAskedFor() {
        Cli cli = Cli.run("compare", "--repeat", report.resolve("run.json"), "--out", folder.resolve("none"));
        assertThat(cli).isEqualTo(new Cli(2, "", "run.json: the run read the portfolio houses; name its folder\n"));
    }

    @Test
    void otherFilesAreNoRecords() throws IOException {
        Path other = Files.writeString(folder.resolve("other.json"), "{\"program\": \"other\"}");
        assertThat(repeat(other, "none", houses).err())
                .isEqualTo("other.json: is not a record that this program wrote; name the run.json of a report\n");
        assertThat(repeat(folder.resolve("nowhere.json"), "none", houses).status())
                .isEqualTo(2);
        assertThat(Cli.run("assumptions", "--out", folder.resolve("written")).status())
                .isZero();
        assertThat(repeat(folder.resolve("written/run.json"), "none", houses).err())
                .isEqualTo("run.json: records the command assumptions, not compare\n");
    }

    @Test
    void whatTheRecordHoldsIsNotGivenToo() {
        Cli cli = Cli.run(
                "compare",
                houses,
                "--repeat",
                report.resolve("run.json"),
                "--seed",
                4,
                "--out",
                folder.resolve("none"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).startsWith("--repeat takes");
    }

    private static Path copy(String name) throws IOException {
        Path copy = folder.resolve(name);
        for (var file : Outputs.files(report).entrySet()) {
            Path to = copy.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.copy(file.getValue(), to);
        }
        return copy;
    }
}
