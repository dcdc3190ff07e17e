package weatherlap.analysis.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.changes.Parts.Cost;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;

class PartsTest {
    private static final AssumptionTables BUNDLED = AssumptionTables.bundled();
    private static final Assumptions BEFORE = BUNDLED.assumptions();
    private static final Assumptions AFTER = BUNDLED.with(List.of("gross_margin=0.3", "horizon_years=10"))
            .orElseThrow()
            .assumptions();

    /** A cost in which the two changes meet, so that neither has its part alone. */
    private static final Function<Assumptions, Cost> PRODUCT = assumptions -> new Cost(
            assumptions.scenario().value(Scalar.GROSS_MARGIN)
                    * assumptions.scenario().value(Scalar.HORIZON_YEARS),
            1);

    @Test
    void everyRowOfTheTablesHasAKeyOfItsOwn() {
        AssumptionTables.SCHEMAS.forEach(
                schema -> BUNDLED.rows(schema.file()).keySet().forEach(row -> {
                    Assumptions without = new Exchange(BEFORE, BEFORE).taking(Set.of(new RowKey(schema.file(), row)));
                    assertThat(without).as(row).isEqualTo(BEFORE);
                }));
        int rows = AssumptionTables.SCHEMAS.stream()
                .mapToInt(schema -> BUNDLED.rows(schema.file()).size())
                .sum();
        Assumptions bare =
                new Assumptions(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), BEFORE.scenario());
        assertThat(new Exchange(BEFORE, bare).differing()).hasSize(rows);
    }

    @Test
    void differsInWhatWasChanged() {
        assertThat(new Exchange(BEFORE, AFTER).differing())
                .containsExactly(
                        new RowKey("scenario.toml", "gross_margin"), new RowKey("scenario.toml", "horizon_years"));
        assertThat(new Exchange(AFTER, AFTER).differing()).isEmpty();
    }

    @Test
    void takingAllRowsIsTheOtherSet() {
        Exchange exchange = new Exchange(BEFORE, AFTER);
        assertThat(exchange.taking(exchange.differing())).isEqualTo(AFTER);
        assertThat(exchange.taking(Set.of())).isEqualTo(BEFORE);
    }

    @Test
    void aRowThatIsGoneIsTakenAway() {
        Assumptions fewer =
                BEFORE.withSteps(BEFORE.steps().subList(1, BEFORE.steps().size()));
        Exchange exchange = new Exchange(BEFORE, fewer);
        assertThat(exchange.taking(exchange.differing()).steps()).isEqualTo(fewer.steps());
        Exchange back = new Exchange(fewer, BEFORE);
        assertThat(back.taking(back.differing()).steps()).containsExactlyInAnyOrderElementsOf(BEFORE.steps());
    }

    @Test
    void sharesSumToTheWholeThoughChangesMeet() {
        double margin = BEFORE.scenario().value(Scalar.GROSS_MARGIN);
        double years = BEFORE.scenario().value(Scalar.HORIZON_YEARS);
        Parts parts = Parts.of(new Exchange(BEFORE, AFTER), PRODUCT);
        assertThat(parts.before().firstUsd()).isCloseTo(margin * years, within(1e-12));
        assertThat(parts.after().firstUsd()).isCloseTo(3, within(1e-12));
        assertThat(parts.parts().get(0).alone().firstUsd()).isCloseTo((0.3 - margin) * years, within(1e-9));
        assertThat(parts.parts().get(0).share().firstUsd()).isCloseTo((0.3 - margin) * (years + 10) / 2, within(1e-9));
        assertThat(parts.parts().stream()
                        .mapToDouble(part -> part.share().firstUsd())
                        .sum())
                .isCloseTo(3 - margin * years, within(1e-9));
    }

    @Test
    void manyRowsGoTableByTable() {
        Assumptions dearer = BEFORE.withUnitPrices(
                BEFORE.unitPrices().stream().map(price -> price.times(2)).toList());
        Parts parts = Parts.of(new Exchange(BEFORE, dearer), PRODUCT);
        assertThat(parts.parts()).extracting(Parts.Part::name).containsExactly("units.csv");
    }
}
