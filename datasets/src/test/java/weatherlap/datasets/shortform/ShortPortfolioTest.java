package weatherlap.datasets.shortform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Portfolio;

/** The short table, and what becomes of it. */
class ShortPortfolioTest {
    private static final String HEAD = "house,wall faces,window,width,height,opens,frame,siding";

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private ShortPortfolio houses(String text) {
        Optional<ShortPortfolio> read = ShortPortfolio.read(Source.of("windows.csv", text), problems);
        assertThat(problems.errors()).isEmpty();
        return read.orElseThrow();
    }

    private Portfolio portfolio(ShortPortfolio houses, HouseDefaults defaults) throws IOException {
        for (Map.Entry<String, String> table : houses.texts(defaults).entrySet()) {
            Files.writeString(folder.resolve(table.getKey()), table.getValue());
        }
        Loaded<Portfolio> read = Portfolios.read(folder);
        return read.orElseThrow();
    }

    @Test
    void eightColumnsAreAPortfolio() throws IOException {
        ShortPortfolio houses = houses(
                HEAD + ",note_ladder\nA,S,1,35-1/2,59½,DH,alum,vinyl,\n"
                        + "B,NE,1,3',4',slider,wood,stucco,long\nA,W,2,24,36,awning,vinyl,vinyl,\nA,S,3,30,54,SH,alum,Vinyl,\n");
        Portfolio portfolio = portfolio(houses, HouseDefaults.bundled());
        assertThat(portfolio.houses()).extracting(House::id).containsExactly("A", "B");
        House first = portfolio.houses().get(0);
        assertThat(first.elevations()).extracting(e -> e.id()).containsExactly("S", "W");
        assertThat(first.barrier()).isEqualTo(Barrier.UNKNOWN);
        List<Opening> south = first.elevations().get(0).openings();
        assertThat(south).extracting(Opening::id).containsExactly("1", "3");
        assertThat(south.get(0).operation()).isEqualTo(Operation.DOUBLE_HUNG);
        assertThat(south.get(0).frame().widthIn()).isEqualTo(35.5);
        assertThat(south.get(0).place().leftIn()).isEqualTo(36);
        assertThat(south.get(1).place().leftIn()).isEqualTo(36 + 35.5 + 36);
        assertThat(first.elevations().get(0).widthFt()).isEqualTo((36 + 35.5 + 36 + 30 + 36) / 12);
        assertThat(portfolio
                        .houses()
                        .get(1)
                        .elevations()
                        .get(0)
                        .openings()
                        .get(0)
                        .job())
                .containsExactly(Map.entry("note_ladder", "long"));
        assertThat(houses.taken(HouseDefaults.bundled()))
                .extracting(ShortPortfolio.Taken::words)
                .contains("year_built 1975", "course_exposure_in 8", "barrier unknown", "gap_in 36")
                .doesNotHaveDuplicates();
    }

    /** Each row stands in the line of the short table that it comes from. */
    @Test
    void linesAreThoseOfTheShortTable() {
        Map<String, String> texts = houses("\n" + HEAD + "\n\nA,S,1,30,50,DH,wood,vinyl\n\nA,N,2,30,50,DH,wood,vinyl\n")
                .texts(HouseDefaults.bundled());
        assertThat(texts.get("houses.csv").split("\n", -1)[3]).startsWith("A,A,1975");
        assertThat(texts.get("elevations.csv").split("\n", -1)[5]).startsWith("A,N,0,");
        assertThat(texts.get("openings.csv").split("\n", -1)[3]).startsWith("A,S,1,");
        assertThat(texts.get("openings.csv").split("\n", -1)[5]).startsWith("A,N,2,");
    }

    @Test
    void whatIsMeasuredIsNotTaken() throws IOException {
        ShortPortfolio houses = houses(HEAD + ",year_built,width_ft,left_in,storeys,eave_height_ft\n"
                + "A,S,1,30,50,DH,wood,vinyl,1999,40,100,2,20\nA,S,2,30,50,DH,wood,vinyl,,,200,,\n");
        House house = portfolio(houses, HouseDefaults.bundled()).houses().get(0);
        assertThat(house.yearBuilt()).isEqualTo(1999);
        assertThat(house.storeys()).isEqualTo(2);
        assertThat(house.elevations().get(0).widthFt()).isEqualTo(40);
        assertThat(houses.taken(HouseDefaults.bundled()))
                .extracting(ShortPortfolio.Taken::column)
                .contains("sill_height_in")
                .doesNotContain("year_built", "storeys", "gap_in", "eave_height_ft");
    }

    /** However many windows of whatever size, on however many stories: no two in one place, none past its wall. */
    @Test
    void everyWindowFindsItsPlace() throws IOException {
        for (int storeys = 1; storeys <= 4; storeys++) {
            for (String width : List.of("", "100")) {
                int stories = storeys;
                String rows = IntStream.rangeClosed(1, 17)
                        .mapToObj(w -> "A," + (w % 3 == 0 ? "S" : "212.5") + "," + w + "," + (20 + 5 * w) + ","
                                + (24 + 3 * w) + ",DH,wood,vinyl," + stories + "," + width + "\n")
                        .reduce("", String::concat);
                House house = portfolio(houses(HEAD + ",storeys,width_ft\n" + rows), HouseDefaults.bundled())
                        .houses()
                        .get(0);
                assertThat(house.openingCount()).isEqualTo(17);
            }
        }
    }

    @Test
    void aHouseAgreesWithItself() {
        assertThat(ShortPortfolio.read(
                        Source.of(
                                "windows.csv",
                                HEAD + ",year_built\nA,S,1,30,50,DH,wood,vinyl,1950\nA,N,2,30,50,DH,wood,brick,1960\n"
                                        + "A,S,2,30,50,DH,wood,vinyl,\n"),
                        problems))
                .isEmpty();
        assertThat(problems.errors().stream().map(Problem::toString))
                .containsExactly("windows.csv:4:window: \"A/2\" is already in row 3");
        Problems others = new Problems();
        ShortPortfolio.read(
                Source.of(
                        "windows.csv",
                        HEAD + ",year_built\nA,S,1,30,50,DH,wood,vinyl,1950\nA,N,2,30,50,DH,wood,brick,1960\n"),
                others);
        assertThat(others.errors().stream().map(Problem::toString))
                .containsExactly(
                        "windows.csv:3:year_built: \"1960\" differs from \"1950\" in row 2 of the same house",
                        "windows.csv:3:siding: \"brick_veneer\" differs from \"vinyl_siding\" in row 2 of the same house;"
                                + " give each part of the house a name of its own");
    }

    /** Every default is what its column may hold, at both ends too. */
    @Test
    void defaultsAreAllowed() {
        Column gap = Column.positive("gap_in", "inches", 1000, "");
        HouseDefaults.bundled().rows().forEach(row -> assertThat(
                        Stream.of(row.value(), row.least(), row.most()).map(value -> PortfolioTables.ALL.stream()
                                .flatMap(table -> table.columns().stream())
                                .filter(column -> column.name().equals(row.column()))
                                .findFirst()
                                .orElse(gap)
                                .type()
                                .fault(value)))
                .as(row.toString())
                .containsOnly(""));
    }

    /** At every end of every default the houses are houses. */
    @Test
    void everyEndIsAPortfolio() throws IOException {
        ShortPortfolio houses = houses(HEAD + "\nA,S,1,30,70,DH,wood,vinyl\nA,S,2,30,50,DH,wood,vinyl\n"
                + "B,S,2,30,50,DH,wood,brick\nC,E,2,30,50,DH,wood,clapboard\nD,E,2,30,50,DH,wood,fiber cement\n");
        for (ShortPortfolio.Taken taken : houses.taken(HouseDefaults.bundled())) {
            for (HouseDefaults.End end : HouseDefaults.End.values()) {
                assertThat(portfolio(houses, HouseDefaults.bundled().with(taken.column(), end))
                                .houses())
                        .hasSize(4);
            }
        }
    }
}
