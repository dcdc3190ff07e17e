package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.sensitivity.SobolIndices.Design;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.SobolIndices.Share;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Streams;

/** Shares of the variance of the demo's houses, which has a heavy tail, by table. */
class DemoDriversTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    private static DriverStudy study;

    @BeforeAll
    static void run() {
        RainClimate climate = RainClimate.of(DemoClimate.hourly(), BUNDLED.scenario());
        List<House> houses = DemoPortfolio.load().houses();
        study = DriverStudy.of(
                BUNDLED,
                new SimulatedPortfolio(SimulatedPortfolio.sample(houses, 30), scenario -> climate, 16, 1),
                new SimulatedPortfolio(houses.subList(0, 1), scenario -> climate, 16, 1),
                new DriverStudy.Effort(new Design(4, 30, new Streams(1)), 0, 50));
    }

    /** In theory the totals of groups that hold all factors sum to 1 or more, and to more by what they do together. */
    @Test
    void totalsOfAllTablesReachOneWithinTheirErrors() {
        for (Outcome outcome : Outcome.values()) {
            List<Share> totals = tables(outcome).stream().map(Index::total).toList();
            double sum = totals.stream().mapToDouble(Share::value).sum();
            double error = Math.sqrt(
                    totals.stream().mapToDouble(s -> s.error() * s.error()).sum());
            assertThat(sum).as(outcome.key()).isGreaterThan(1 - 2 * error).isLessThan(2);
            assertThat(error).as(outcome.key()).isLessThan(0.3);
        }
    }

    @Test
    void whatATableHasByItselfIsNoMoreThanWhatItHasInAll() {
        for (Outcome outcome : Outcome.values()) {
            assertThat(tables(outcome)).isNotEmpty().allSatisfy(table -> assertThat(
                            table.firstOrder().value() - table.total().value())
                    .as(table.group())
                    .isLessThanOrEqualTo(2
                            * Math.hypot(
                                    table.firstOrder().error(), table.total().error())));
        }
    }

    /** Whom a step costs more does not leak more: a table that has nothing to do with an outcome has nothing of its variance. */
    @Test
    void laborAndPricesHaveNoShareOfTheRisk() {
        assertThat(tables(Outcome.RISK_DIFFERENCE))
                .filteredOn(
                        table -> List.of("labour-steps", "materials", "units").contains(table.group()))
                .hasSize(3)
                .allSatisfy(table ->
                        assertThat(List.of(table.firstOrder(), table.total())).containsOnly(new Share(0, 0)));
    }

    @Test
    void choicesAndGroupsOfRowsHaveSwings() {
        assertThat(study.rows())
                .extracting(DriverRow::assumption)
                .contains("workmanship", "shelter", "pricing", "labour-steps/full_flange", "lap-faults/existing");
        DriverRow workmanship = study.rows().stream()
                .filter(row -> row.assumption().equals("workmanship") && row.outcome() == Outcome.RISK_DIFFERENCE)
                .findFirst()
                .orElseThrow();
        assertThat(List.of(workmanship.lowValue(), workmanship.highValue()))
                .containsExactlyInAnyOrder("careful", "hurried");
        assertThat(DriverWords.of(study)).anyMatch(line -> line.contains("workmanship moves it by $"));
    }

    private static List<Index> tables(Outcome outcome) {
        return study.indices().get(outcome.ordinal()).indices();
    }
}
