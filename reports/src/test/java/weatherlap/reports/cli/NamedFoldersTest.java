package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No file outside the folders that are named and a private temporary one is written or believed, and nothing said to be done that is not. */
class NamedFoldersTest {
    @TempDir
    private Path folder;

    @Test
    void noCommandLeavesAnythingInTheHomeOrTheTemporaryFolder() throws Exception {
        Path home = Files.createDirectory(folder.resolve("home"));
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        leaveFontsBehind(temporary);
        // what a library would read there and believe
        Path planted = Files.writeString(home.resolve(".pdfbox.cache"), "spoilt\n");
        Cli cli = OwnProcess.startMain(
                        EveryCommand.class,
                        Files.createDirectory(folder.resolve("logs")),
                        List.of("-XX:-UsePerfData", "-Duser.home=" + home, "-Djava.io.tmpdir=" + temporary),
                        Files.createDirectory(folder.resolve("work")))
                .ended();
        assertThat(cli.status()).as(cli.err()).isZero();
        assertThat(planted).hasContent("spoilt");
        assertThat(home.toFile().list()).containsExactly(".pdfbox.cache");
        assertThat(temporary).isEmptyDirectory();
        assertThat(folder.resolve("work").toFile().list())
                .containsExactlyInAnyOrder(
                        "house", "made", "report", "handout", "crew", "rain", "fitted", "callbacks", "shop");
    }

    /** As a run does that is killed when it has laid its fonts out. */
    private void leaveFontsBehind(Path temporary) throws Exception {
        OwnProcess killed = OwnProcess.start(
                folder,
                List.of("-XX:-UsePerfData", "-Djava.io.tmpdir=" + temporary),
                "handout",
                "--house",
                "G0014",
                "--out",
                "killed");
        while (killed.process().isAlive() && fontsIn(temporary) == 0) {
            TimeUnit.MILLISECONDS.sleep(1);
        }
        killed.kill();
        assertThat(fontsIn(temporary)).isPositive();
    }

    private static long fontsIn(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.toString().endsWith(".ttf")).count();
        } catch (IOException | UncheckedIOException e) {
            return 0; // it changes while it is looked through
        }
    }

    @Test
    void aResultThatCouldNotBePrintedIsNotSaidToBeDone() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "no device that is always full");
        Cli cli = redirected(">/dev/full", "explain", "--opening", "G0014/front/W1");
        assertThat(cli.status()).isEqualTo(1);
        assertThat(cli.err()).startsWith("could not print the whole result: ");
    }

    /** As under head, which closes the pipe when it has seen enough. */
    @Test
    void aReaderThatHasSeenEnoughIsNoFault() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no shell to make a pipe with");
        Cli cli = redirected("| head -c 1 >/dev/null; exit ${PIPESTATUS[0]}", "explain", "--opening", "G0014/front/W1");
        assertThat(cli).isEqualTo(new Cli(0, "", ""));
    }

    private Cli redirected(String where, Object... arguments) throws IOException, InterruptedException {
        return OwnProcess.startUnder(
                        List.of("/bin/bash", "-c", "\"$@\" " + where, "redirected"), folder, List.of(), arguments)
                .ended();
    }

    @Test
    void aTemporaryFolderThatIsNotThereIsNamed() throws Exception {
        Path temporary = folder.resolve("no-such-folder");
        Cli cli = OwnProcess.start(
                        folder,
                        List.of("-Djava.io.tmpdir=" + temporary),
                        "handout",
                        "--house",
                        "G0014",
                        "--out",
                        "sheet")
                .ended();
        assertThat(cli.status()).isEqualTo(1);
        assertThat(cli.err()).contains("cannot read or write: ", temporary.toString(), "nothing was written");
        assertThat(folder.resolve("sheet")).doesNotExist();
    }

    @Test
    void anArgumentThatBeginsLikeAMailAddressIsAnArgument() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "word of the day");
        Cli cli = Cli.run("check", "@" + secret);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("there is no folder").doesNotContain("word of the day");
    }

    @Test
    void theRootOfAFileSystemHoldsNoPortfolio() {
        Cli cli = Cli.run("compare", "/", "--out", folder.resolve("out"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("houses.csv: is missing from the folder");
        assertThat(folder).isEmptyDirectory();
    }
}
