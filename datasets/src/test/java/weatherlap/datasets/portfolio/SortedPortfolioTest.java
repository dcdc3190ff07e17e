package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.sorting.RowSorter.Limits;
import weatherlap.datasets.table.CountedScratch;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;

/** Tables in any order give the houses, and the messages, of tables in order. */
class SortedPortfolioTest {
    /** Runs of some fifty openings, merged three at a time. */
    private static final Limits TINY = new Limits(65_000, 3);

    private static final int THIS_YEAR = 2026;
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    private static final List<House> HOUSES =
            new HouseGenerator(Mix.bundled(BundledMix.NEW_YORK), 7).houses(120).toList();

    @TempDir
    private static Path temporary;

    private static Path town;

    private final CountedScratch scratch = new CountedScratch();

    @BeforeAll
    static void writeTown() throws IOException {
        town = temporary.resolve("town");
        Files.createDirectories(town);
        try (var houses = Files.newBufferedWriter(town.resolve("houses.csv"));
                var elevations = Files.newBufferedWriter(town.resolve("elevations.csv"));
                var openings = Files.newBufferedWriter(town.resolve("openings.csv"))) {
            PortfolioText.write(new Portfolio(HOUSES), houses, elevations, openings);
        }
    }

    @Test
    void tablesInOrderAreReadAsTheyStand() {
        assertThat(PortfolioScan.of(town).order()).isPresent();
        assertThat(PortfolioScan.of(town).houses()).isEqualTo(HOUSES.size());
        assertThat(houses(town, scratch)).isEqualTo(HOUSES);
        assertThat(scratch.begun()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void shuffledTablesGiveTheSameHousesInOrder(long seed) throws IOException {
        Path shuffled = Shuffled.write(town, temporary.resolve("shuffled" + seed), seed);
        assertThat(PortfolioScan.of(shuffled).order()).isEmpty();
        assertThat(houses(shuffled, scratch)).isEqualTo(HOUSES);
        assertThat(scratch.begun()).isGreaterThan(3 * TINY.mostMerged());
        assertThat(scratch.kept()).isZero();
    }

    @Test
    void oneUnsortedTableIsEnough() throws IOException {
        for (String file : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            Path folder = Shuffled.write(town, temporary.resolve("only-" + file), 5);
            for (String other : List.of("houses.csv", "elevations.csv", "openings.csv")) {
                if (!other.equals(file)) {
                    Files.writeString(folder.resolve(other), Files.readString(town.resolve(other)));
                }
            }
            assertThat(PortfolioScan.of(folder).order()).isEmpty();
            assertThat(houses(folder, scratch)).isEqualTo(HOUSES);
        }
    }

    @Test
    void marksLineEndsBlankLinesAndLineBreaksInCellsDoNotMatter() throws IOException {
        Path folder = Shuffled.write(town, temporary.resolve("awkward"), 4);
        for (String file : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            String text = Files.readString(folder.resolve(file)).replace("\n", "\r\n\r\n,,\r\n");
            Files.writeString(folder.resolve(file), "\uFEFF" + text);
        }
        String broken = HOUSES.get(3).label().replace(" ", "\r\n");
        Files.writeString(
                folder.resolve("houses.csv"),
                Files.readString(folder.resolve("houses.csv"))
                        .replace("," + HOUSES.get(3).label() + ",", ",\"" + broken + "\","));
        List<House> read = houses(folder, scratch);
        assertThat(read.get(3).label()).isEqualTo(broken.replace("\r", ""));
        assertThat(read).usingRecursiveComparison().ignoringFields("label").isEqualTo(HOUSES);
    }

    @Test
    void aPortfolioReadWholeKeepsTheOrderOfItsTable() throws IOException {
        Path shuffled = Shuffled.write(town, temporary.resolve("whole"), 6);
        List<String> ids = Files.readAllLines(shuffled.resolve("houses.csv")).stream()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf(',')))
                .toList();
        List<House> read = Portfolios.read(shuffled).orElseThrow().houses();
        assertThat(read).extracting(House::id).isEqualTo(ids);
        assertThat(read).containsExactlyInAnyOrderElementsOf(HOUSES);
    }

    @Test
    void oneHouseIsReadAlone() throws IOException {
        Path folder = Shuffled.write(town, temporary.resolve("one"), 8);
        House wanted = HOUSES.get(17);
        Files.writeString(folder.resolve("openings.csv"), "G9999,x,y\nG0001,x\n", StandardOpenOption.APPEND);
        assertThat(Portfolios.read(folder).errors()).hasSize(4);
        assertThat(Portfolios.readHouse(folder, wanted.id(), Optional.of(BUNDLED))
                        .orElseThrow()
                        .houses())
                .containsExactly(wanted);
        assertThat(Portfolios.readHouse(folder, "G0001", Optional.of(BUNDLED)).errors())
                .extracting(Problem::message)
                .containsExactly(
                        "has 2 cells where the header has "
                                + PortfolioTables.OPENINGS.names().size(),
                        "\"G0001/x\" is not in elevations.csv");
        assertThat(Portfolios.readHouse(folder, "nobody", Optional.of(BUNDLED))
                        .orElseThrow()
                        .houses())
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> messagesOfTinyRunsAreThoseOfTheCorpus() {
        return Stream.concat(
                Corpus.PORTFOLIO.tests(
                        "corpus/portfolio.txt", temporary.resolve("bad"), folder -> sorted(folder, Optional.empty())),
                Corpus.PORTFOLIO.tests(
                        "corpus/fit.txt", temporary.resolve("unfit"), folder -> sorted(folder, Optional.of(BUNDLED))));
    }

    private static Loaded<Portfolio> sorted(Path folder, Optional<Assumptions> assumptions) {
        CountedScratch scratch = new CountedScratch();
        PortfolioScan scan = PortfolioScan.of(folder);
        PortfolioScan inNoOrder = new PortfolioScan(scan.houses(), scan.names(), Optional.empty());
        try (SortedPortfolio portfolio =
                SortedPortfolio.open(Folder.of(folder), inNoOrder, assumptions, scratch, new Limits(1, 2), THIS_YEAR)) {
            List<House> houses = new ArrayList<>();
            portfolio.forEachRemaining(houses::add);
            return portfolio.loaded(new Portfolio(houses));
        } finally {
            assertThat(scratch.kept()).isZero();
        }
    }

    @Test
    void everyFaultOfShuffledTablesIsNamedByItsLine() throws IOException {
        Path folder = Shuffled.write(town, temporary.resolve("faulty"), 9);
        List<String> openings = new ArrayList<>(Files.readAllLines(folder.resolve("openings.csv")));
        openings.set(40, openings.get(40).replaceFirst("^G(\\d+),", "g$1,"));
        openings.set(500, openings.get(500).replaceFirst("^G\\d+,", ","));
        openings.set(700, openings.get(700).replaceFirst(",(\\w+),", ",nowhere,"));
        openings.add(openings.get(900));
        Files.write(folder.resolve("openings.csv"), openings);
        List<Problem> errors = sorted(folder, Optional.of(BUNDLED)).errors();
        assertThat(errors)
                .isEqualTo(Portfolios.read(folder, BUNDLED).errors())
                .isSortedAccordingTo(Comparator.comparingInt(Problem::row));
        assertThat(errors)
                .extracting(Problem::row)
                .containsOnlyOnce(41, 501, 701)
                .contains(openings.size());
        assertThat(errors)
                .extracting(Problem::message)
                .contains("\"%s\" is already in row 901"
                        .formatted(String.join(
                                "/", List.of(openings.get(900).split(",")).subList(0, 3))));
    }

    @Test
    void aFullDiskIsSaid() throws IOException {
        Path shuffled = Shuffled.write(town, temporary.resolve("full"), 10);
        assertThatThrownBy(() -> houses(shuffled, new CountedScratch(5)))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("No space left");
    }

    private static List<House> houses(Path folder, CountedScratch scratch) {
        List<House> houses = new ArrayList<>();
        try (SortedPortfolio portfolio = SortedPortfolio.open(
                Folder.of(folder), PortfolioScan.of(folder), Optional.of(BUNDLED), scratch, TINY, THIS_YEAR)) {
            portfolio.forEachRemaining(houses::add);
            assertThat(portfolio.errors()).isEmpty();
        }
        return houses;
    }
}
