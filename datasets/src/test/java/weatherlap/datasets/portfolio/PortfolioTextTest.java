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
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.house.SidingCondition;

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
        assertThat(mulled.setbackIn()).hasValue(1.375);
        assertThat(mulled.jambLap()).isEqualTo(Lap.REVERSED);
        assertThat(east.openings().get(0).units()).isEqualTo(1);
        assertThat(east.openings().get(0).setbackIn()).isEqualTo(OptionalDouble.empty());
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
}
