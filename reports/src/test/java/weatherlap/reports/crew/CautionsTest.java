package weatherlap.reports.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

class CautionsTest {
    @Test
    void asbestosIsForHousesThatMayHoldIt() {
        for (House house : DemoPortfolio.load().houses()) {
            Scenario scenario = AssumptionTables.bundled().assumptions().scenario();
            for (double year : new double[] {1950, 1990, 2020}) {
                List<String> lines = Cautions.of(
                        house, Set.of(Method.INSERT), List.of(), scenario.with(Scalar.ASBESTOS_UNTIL_YEAR, year));
                assertThat(lines.stream().anyMatch(line -> line.startsWith("Asbestos:")))
                        .isEqualTo(house.yearBuilt() < year);
            }
        }
    }

    /** The line follows the temperature that the leak model asks of tape. */
    @ParameterizedTest
    @CsvSource({"40,45,true", "40,35,false", "50,55,true", "50,45,false"})
    void theColdTapeLineGoesByWhatTheTapeNeeds(double outsideF, double tapeF, boolean said) {
        Scenario scenario = AssumptionTables.bundled()
                .assumptions()
                .scenario()
                .with(Scalar.TEMPERATURE_F, outsideF)
                .with(Scalar.TAPE_WARM_F, tapeF);
        List<String> lines =
                Cautions.of(DemoPortfolio.load().houses().get(0), Set.of(Method.FULL_FLANGE), List.of(), scenario);
        assertThat(lines.stream().anyMatch(line -> line.startsWith("Cold:"))).isEqualTo(said);
    }
}
