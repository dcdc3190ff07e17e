package weatherlap.analysis.unmeasured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.shortform.HouseDefaults;
import weatherlap.datasets.shortform.ShortPortfolio;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.Simulator;

/** What defaults are worth, against houses written out with the value that a default has at its end. */
class SwingStudyTest {
    private static final String HEAD = "house,wall faces,window,width,height,opens,frame,siding";
    private static final String ROWS = "\nA,S,1,35.5,59.5,DH,alum,vinyl%1$s\nA,W,2,30,50,slider,alum,vinyl%1$s\n"
            + "B,N,1,36,60,DH,wood,clapboard%1$s\n";
    private static final Assumptions ASSUMPTIONS = AssumptionTables.bundled().assumptions();
    private static final Simulator SIMULATOR = new Simulator(
            ASSUMPTIONS, RainClimate.of(DemoClimate.hourly(), ASSUMPTIONS.scenario()), Sampling.STRATIFIED, 64, 1);

    private static ShortPortfolio houses(String column, String value) {
        String text = column.isEmpty() ? HEAD + ROWS.formatted("") : HEAD + "," + column + ROWS.formatted("," + value);
        return ShortPortfolio.read(Source.of("windows.csv", text), new Problems())
                .orElseThrow();
    }

    private static double savedUsd(ShortPortfolio houses) {
        return houses.houses(HouseDefaults.bundled()).stream()
                .mapToDouble(house ->
                        -HouseChoice.of(SIMULATOR.simulateForPlans(house), 0.5).differenceUsd())
                .average()
                .orElseThrow();
    }

    @Test
    void anEndIsTheRunOfHousesThatHaveIt() {
        SwingStudy study = SwingStudy.of(houses("", ""), SIMULATOR);
        assertThat(study.houses()).isEqualTo(2);
        assertThat(study.swings())
                .extracting(swing -> swing.taken().column())
                .contains("barrier", "year_built", "storeys", "gap_in")
                .doesNotHaveDuplicates();
        assertThat(study.swings())
                .isSortedAccordingTo(
                        Comparator.comparingDouble(DefaultSwing::usd).reversed());
        DefaultSwing age = study.swings().stream()
                .filter(swing -> swing.taken().column().equals("year_built"))
                .findFirst()
                .orElseThrow();
        assertThat(age.takenUsd()).isCloseTo(savedUsd(houses("", "")), within(1e-9));
        assertThat(age.leastUsd()).isCloseTo(savedUsd(houses("year_built", "1940")), within(1e-9));
        assertThat(age.mostUsd()).isCloseTo(savedUsd(houses("year_built", "2005")), within(1e-9));
        assertThat(age.usd()).isPositive();
    }

    @Test
    void manyHousesAreSweptEvenly() {
        ShortPortfolio three = houses("", "");
        assertThat(three.some(1).houses()).containsExactly(three.houses().get(0));
        assertThat(three.some(5).houses()).isEqualTo(three.houses());
    }

    @Test
    void whatIsMeasuredHasNoSwing() {
        assertThat(SwingStudy.of(houses("year_built", "1950"), SIMULATOR).swings())
                .noneMatch(swing -> swing.taken().column().equals("year_built"));
    }
}
