package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Sighting;

class PortfolioTextTest {
    private static final Folder GOOD = Folder.beside(Corpus.class, "portfolio");

    @TempDir
    Path temporary;

    @Test
    void cellsBecomeTheDomain() {
        House house = Portfolios.read(GOOD, 2026).orElseThrow().houses().get(0);
        assertThat(house.label()).isEqualTo("the tall one");
        assertThat(house.region()).isEmpty();
        assertThat(house.leadTest()).isEqualTo(LeadTest.UNKNOWN);
        Elevation east = house.elevations().get(1);
        assertThat(east.sidingCondition()).isEqualTo(SidingCondition.UNKNOWN);
        assertThat(east.obstructionM()).hasValue(25);
        Opening mulled = house.elevations().get(0).openings().get(1);
        assertThat(mulled.units()).isEqualTo(2);
        assertThat(mulled.newOperation()).isEqualTo(Operation.DOUBLE_HUNG);
        assertThat(mulled.inside().setbackIn()).hasValue(1.375);
        assertThat(mulled.laps().jamb()).isEqualTo(Lap.REVERSED);
        assertThat(east.openings().get(0).units()).isEqualTo(1);
        assertThat(east.openings().get(0).inside().setbackIn()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void whatIsWrittenReadsBackAsTheSameHouses() throws IOException {
        Portfolio portfolio = Portfolios.read(GOOD, 2026).orElseThrow();
        List<StringBuilder> texts = List.of(new StringBuilder(), new StringBuilder(), new StringBuilder());
        PortfolioText.write(portfolio, texts.get(0), texts.get(1), texts.get(2));
        Files.writeString(temporary.resolve("houses.csv"), texts.get(0));
        Files.writeString(temporary.resolve("elevations.csv"), texts.get(1));
        Files.writeString(temporary.resolve("openings.csv"), texts.get(2));
        assertThat(Portfolios.read(temporary).orElseThrow()).isEqualTo(portfolio);
    }

    /** With the word, with an empty cell and without the column. */
    @Test
    void whatNobodyLookedAtIsUnknown() throws IOException {
        Portfolio word =
                readUnseen(",barrier", ",unknown", ",frame_condition,head_lap,jamb_lap,sill_lap,stain", ",unknown");
        Portfolio empty = readUnseen(",barrier", ",", ",frame_condition,head_lap,jamb_lap,sill_lap,stain", ",");
        Portfolio absent = readUnseen("", "", "", "");
        Opening opening = word.houses().get(0).elevations().get(0).openings().get(0);
        assertThat(opening.frame().condition()).isEqualTo(FrameCondition.UNKNOWN);
        assertThat(opening.laps().stain()).isEqualTo(Sighting.UNKNOWN);
        assertThat(empty).isEqualTo(word);
        assertThat(absent).isEqualTo(word);
    }

    @Test
    void aLapOfABarrierThatIsNotThereIsWarnedOf() throws IOException {
        readUnseen(",barrier", ",none", ",frame_condition,head_lap,jamb_lap,sill_lap,stain", ",unknown");
        assertThat(Portfolios.read(temporary).warnings()).isEmpty();
        Path openings = temporary.resolve("openings.csv");
        Files.writeString(
                openings,
                Files.readString(openings)
                        .replace(
                                "unknown,unknown,unknown,unknown,unknown", "unknown,missing,unknown,reversed,unknown"));
        assertThat(Portfolios.read(temporary).warnings())
                .extracting(Problem::toString)
                .containsExactly("openings.csv:2:sill_lap: \"reversed\" does not go with the barrier \"none\" of"
                        + " houses.csv:2:barrier; the program goes by a barrier of unknown kind");
    }

    /** One house with one window; the cell stands once in its row of houses and five times in that of openings. */
    private Portfolio readUnseen(String houseColumn, String houseCell, String openingColumns, String cell)
            throws IOException {
        Files.writeString(
                temporary.resolve("houses.csv"),
                "house_id,label,year_built,terrain,cladding,storeys" + houseColumn
                        + "\nH1,brick,1988,farmland,brick_veneer,1" + houseCell + "\n");
        Files.writeString(temporary.resolve("elevations.csv"), """
                house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in
                H1,south,180,40,9,16
                """);
        Files.writeString(
                temporary.resolve("openings.csv"),
                "house_id,elevation_id,opening_id,room,operation,frame_width_in,frame_height_in,left_in,sill_height_in,"
                        + "existing_material,interior_return,return_layers" + openingColumns
                        + "\nH1,south,W1,living,picture,60,48,90,30,wood,plaster,1" + cell.repeat(5) + "\n");
        return Portfolios.read(temporary).orElseThrow();
    }
}
