package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.portfolio.Shuffled;

/** Many houses in tables of no order: little memory is enough, and one house costs no more than its rows. */
class LargePortfolioTest {
    private static final int HOUSES = 20_000;
    private static final String WANTED = "G1234";

    @TempDir
    private static Path folder;

    private static Path shuffled;

    /** The rows of one house of it. */
    private static Path alone;

    @BeforeAll
    static void writeTown() throws IOException {
        folder = folder.toRealPath();
        Path town = folder.resolve("town");
        assertThat(Cli.run("generate", "--houses", HOUSES, "--seed", 5, "--out", town)
                        .status())
                .isZero();
        shuffled = Shuffled.write(town, folder.resolve("shuffled"), 11);
        alone = Files.createDirectory(folder.resolve("alone"));
        for (String file : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            Files.write(
                    alone.resolve(file),
                    Files.readAllLines(town.resolve(file)).stream()
                            .filter(line -> line.startsWith("house_id,") || line.startsWith(WANTED + ","))
                            .toList());
        }
    }

    @Test
    void sortingNeedsLittleMemory() throws Exception {
        Path out = folder.resolve("sorted");
        Cli cli = OwnProcess.startMain(SortInLittleMemory.class, folder, List.of("-Xmx32m"), shuffled, out)
                .ended();
        assertThat(cli).isEqualTo(new Cli(0, HOUSES + " houses, 0 errors\n", ""));
        assertNothingBeside("sorted");
    }

    @Test
    void checkingNeedsLittleMemory() throws Exception {
        Cli cli =
                OwnProcess.start(folder, List.of("-Xmx64m"), "check", shuffled).ended();
        assertThat(cli.status()).as(cli.err()).isZero();
        assertThat(cli.out()).startsWith(Numbers.count(HOUSES, "house", "houses") + ", ");
    }

    @Test
    void killedWhileItSorts() throws Exception {
        OwnProcess run = OwnProcess.start(folder, List.of(), "compare", shuffled, "--out", folder.resolve("killed"));
        Path aside = folder.resolve(".killed.weatherlap-new/.scratch");
        while (run.process().isAlive() && !Files.exists(aside.resolve("3.part"))) {
            TimeUnit.MILLISECONDS.sleep(1);
        }
        run.kill();
        assertThat(aside).isDirectory();
        assertThat(folder.resolve("killed")).doesNotExist();
        assertThat(Cli.run("compare", alone, "--out", folder.resolve("killed"), "--draws", 8)
                        .status())
                .isZero();
        assertNothingBeside("killed");
        assertThat(Outputs.files(folder.resolve("killed")).keySet()).noneMatch(name -> name.contains("scratch"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"handout", "crewsheet --method insert", "crewsheet --method full_flange"})
    void aSheetOfOneHouseIsThatOfItsRowsAlone(String command) throws IOException {
        Map<String, Path> ofMany = Outputs.files(sheet(command, shuffled, "many"));
        Map<String, Path> ofOne = Outputs.files(sheet(command, alone, "one"));
        assertThat(ofMany.keySet()).isEqualTo(ofOne.keySet()).hasSize(3);
        for (String file : ofOne.keySet()) {
            if (!file.equals("run.json")) {
                assertThat(Outputs.text(ofMany.get(file)).replace("portfolio shuffled", "portfolio alone"))
                        .as(file)
                        .isEqualTo(Outputs.text(ofOne.get(file)));
            }
        }
    }

    private static Path sheet(String command, Path portfolio, String name) {
        Path out = folder.resolve(name + "-" + command.replaceAll("\\W+", "-"));
        Cli cli = Cli.run(Stream.concat(
                        Arrays.stream(command.split(" ")),
                        Stream.of(portfolio, "--house", WANTED, "--set", "draws=8", "--out", out))
                .toArray());
        assertThat(cli.status()).as(cli.err()).isZero();
        return out;
    }

    @Test
    void anOpeningIsExplainedFromItsHouseAlone() throws IOException {
        String opening = Files.readAllLines(alone.resolve("openings.csv"))
                .get(1)
                .replaceFirst("^([^,]*),([^,]*),([^,]*),.*", "$1/$2/$3");
        Cli ofOne = Cli.run("explain", alone, "--opening", opening, "--set", "draws=8");
        Cli ofMany = Cli.run("explain", shuffled, "--opening", opening, "--set", "draws=8");
        assertThat(ofOne.out()).isNotEmpty();
        assertThat(ofMany.out()).isEqualTo(ofOne.out());
        assertThat(ofMany.err()).contains("the rows of house " + WANTED + " are read and checked");
    }

    @Test
    void aHouseThatIsNotThereIsSaidAsOfAFewHouses() throws IOException {
        String first = Files.readAllLines(shuffled.resolve("houses.csv")).get(1).replaceFirst(",.*", "");
        assertThat(refused("handout", "--house", "G1234x"))
                .endsWith("there is no house \"G1234x\"; did you mean \"G1234\"?\n");
        assertThat(refused("handout", "--house", "zzzzzzzzzz"))
                .endsWith("there is no house \"zzzzzzzzzz\"; the first of " + HOUSES + " is " + first + "\n");
        assertThat(refused("handout"))
                .isEqualTo(
                        "--house ID is missing; there are " + HOUSES + " houses, the first of them is " + first + "\n");
        assertThat(refused("explain", "--opening", "nobody/x/y")).contains("; houses are [" + first + ", G");
        assertThat(refused("explain", "--opening", WANTED + "/x/y")).contains("; that house has [" + WANTED + "/");
    }

    private static String refused(Object... command) {
        Object[] all = Stream.concat(
                        Arrays.stream(command),
                        command[0].equals("handout")
                                ? Stream.of(shuffled, "--out", folder.resolve("refused"))
                                : Stream.of(shuffled))
                .toArray();
        Cli cli = Cli.run(all);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(folder.resolve("refused")).doesNotExist();
        return cli.err();
    }

    private static void assertNothingBeside(String name) {
        assertThat(folder.toFile().list()).noneMatch(file -> file.startsWith("." + name));
    }
}
