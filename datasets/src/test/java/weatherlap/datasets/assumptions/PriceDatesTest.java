package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.sim.assumptions.Wage;

/** Prices carried from their year to another. The index of the test doubles from 2020 to 2024: invented, to be seen at once. */
class PriceDatesTest {
    private static final String INDEX = """
            price_group,year,price_index,basis,source
            units,2020,100,invented,
            units,2024,200,invented,
            materials,2020,100,invented,
            materials,2024,150,invented,
            wages,2020,100,invented,
            wages,2024,120,invented,
            """;

    /** The bundled tables, every price of 2020, with that index. */
    private static AssumptionTables of2020(String index) {
        Map<String, String> texts =
                new LinkedHashMap<>(AssumptionTables.bundled().texts());
        for (PriceGroup group : PriceGroup.values()) {
            texts.computeIfPresent(
                    group.table().file(),
                    (file, text) -> RowText.replace(text, group.table(), row -> Map.of("price_year", "2020")));
        }
        texts.put(PriceIndex.FILE, index);
        Problems problems = new Problems();
        AssumptionTables tables = AssumptionTables.read(texts, problems).orElseThrow();
        assertThat(problems.errors()).isEmpty();
        return tables;
    }

    private static Loaded<AssumptionTables> at(AssumptionTables tables, String... changes) {
        return tables.with(List.of(changes));
    }

    @Test
    void everyPriceIsMultipliedByTheRatioOfTheYears() {
        AssumptionTables before = of2020(INDEX);
        Loaded<AssumptionTables> loaded = at(before, "as_of=2024");
        AssumptionTables after = loaded.value().orElseThrow();
        assertThat(loaded.warnings()).isEmpty();
        var then = before.assumptions();
        var now = after.assumptions();
        for (int i = 0; i < then.unitPrices().size(); i++) {
            assertThat(now.unitPrices().get(i).baseUsd())
                    .isCloseTo(2 * then.unitPrices().get(i).baseUsd(), within(1e-4));
        }
        for (int i = 0; i < then.materials().size(); i++) {
            assertThat(now.materials().get(i).price().likely())
                    .isCloseTo(1.5 * then.materials().get(i).price().likely(), within(1e-4));
        }
        for (int i = 0; i < then.wages().size(); i++) {
            assertThat(now.wages().get(i).usdPerHour())
                    .isCloseTo(1.2 * then.wages().get(i).usdPerHour(), within(1e-4));
            assertThat(now.wages().get(i).burdenFraction())
                    .isEqualTo(then.wages().get(i).burdenFraction());
        }
        assertThat(now.steps()).isEqualTo(then.steps());
        assertThat(now.scenario()).isEqualTo(then.scenario());
        assertThat(PriceDates.of(after)).allMatch(years -> years.rows().firstKey() == 2024 && years.undated() == 0);
        assertThat(now.wages().get(0).origin().source()).startsWith("× 1.2 from 2020 by price-index.csv; before: US");
        assertThat(at(after, "as_of=2024").value()).contains(after);
    }

    @Test
    void whatIsSetByHandIsOfTheYearAskedFor() {
        AssumptionTables tables = at(of2020(INDEX), "wage.national.carpenter=40", "as_of=2024")
                .value()
                .orElseThrow();
        assertThat(tables.assumptions().wages().stream()
                        .filter(wage ->
                                wage.region().equals("national") && wage.role().equals("carpenter"))
                        .map(Wage::usdPerHour))
                .containsExactly(40.0);
    }

    @Test
    void aYearThatIsNotKnownIsRefusedAndARowOfOneToldOf() {
        assertThat(at(of2020(INDEX), "as_of=2026").errors())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .contains("--as-of", "units of 2020, 2024", "add rows of 2026");
        assertThat(at(of2020(INDEX), "as_of=soon").errors()).hasSize(1);
        String withoutUnits = INDEX.lines()
                .filter(line -> !line.startsWith("units,2020"))
                .reduce("", (all, line) -> all + line + "\n");
        Loaded<AssumptionTables> loaded = at(of2020(withoutUnits), "as_of=2024");
        assertThat(loaded.warnings())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .contains("units.csv", "18 rows stand as they are");
        assertThat(loaded.value().orElseThrow().assumptions().unitPrices())
                .isEqualTo(of2020(withoutUnits).assumptions().unitPrices());
    }

    @Test
    void withoutTheTableNothingIsCarried() {
        Map<String, String> texts =
                new LinkedHashMap<>(AssumptionTables.bundled().texts());
        texts.remove(PriceIndex.FILE);
        Optional<AssumptionTables> tables = AssumptionTables.read(texts, new Problems());
        assertThat(tables.orElseThrow().with(List.of("as_of=2024")).errors())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .contains("hold no price-index.csv");
    }

    @Test
    void pricesFarBehindTheNewestAreCalledOld() {
        assertThat(PriceDates.old(AssumptionTables.bundled())).isEmpty();
        Map<String, String> texts = new LinkedHashMap<>(of2020(INDEX).texts());
        texts.put("units.csv", AssumptionTables.bundled().texts().get("units.csv"));
        AssumptionTables mixed = AssumptionTables.read(texts, new Problems()).orElseThrow();
        assertThat(PriceDates.old(mixed))
                .hasSize(2)
                .allMatch(line -> line.contains("of 2020 or later, more than 3 years behind the newest"));
    }
}
