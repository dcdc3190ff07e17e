package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every number that the comparison of the bundled demo writes. */
class NumbersTest {
    @TempDir
    private static Path folder;

    private static Path report;

    @BeforeAll
    static void compareTheDemo() {
        report = folder.resolve("report");
        Cli cli = Cli.run("compare", "--out", report, "--draws", 10, "--quiet");
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
    }

    @Test
    void noneIsInfiniteOrNoNumberOrInMachineForm() throws IOException {
        for (Map.Entry<String, Path> file : Outputs.files(report).entrySet()) {
            String text = Outputs.text(file.getValue());
            assertThat(text)
                    .as(file.getKey())
                    .doesNotContainPattern("\\bNaN\\b|\\bInfinity\\b|\u221E|\u2212?\\bnull\\b|OptionalDouble");
            if (file.getKey().endsWith(".csv") && !file.getKey().startsWith("assumptions/")) {
                assertThat(Outputs.rows(file.getValue())).as(file.getKey()).allSatisfy(row -> assertThat(row)
                        .noneMatch(cell -> cell.matches("-?\\d+(\\.\\d+)?[eE][+-]?\\d+|-0(\\.0*)?")));
            }
        }
    }

    /** Each part is rounded once to 0.01 ft², so n of them and their sum differ by 0.005 (n + 1) at most. */
    @Test
    void glassOfAHouseIsTheSumOfItsOpeningsAsShown() throws IOException {
        Map<String, List<Map<String, String>>> openings = by(rows("openings.csv"), "house_id", "method");
        for (Map<String, String> house : rows("houses.csv")) {
            List<Map<String, String>> own = openings.get(house.get("house_id") + "/" + house.get("method"));
            assertThat(own).hasSize(Integer.parseInt(house.get("openings")));
            assertThat(number("glass_lost_ft2").apply(house))
                    .as(house.get("house_id"))
                    .isCloseTo(sum(own, "glass_lost_ft2"), within(0.005 * (own.size() + 1) + 1e-9));
        }
    }

    @Test
    void anOpeningLosesWhatItShowedLessWhatItShows() throws IOException {
        for (Map<String, String> opening : rows("openings.csv")) {
            double lost = number("glass_existing_ft2").apply(opening)
                    - number("glass_ft2").apply(opening);
            assertThat(number("glass_lost_ft2").apply(opening)).isCloseTo(lost, within(0.015 + 1e-9));
        }
    }

    /** Shared work is counted once for a wall and once for a house, so a whole is never less than its parts. */
    @Test
    void labourOfAWallIsNoLessThanThatOfItsOpenings() throws IOException {
        Map<String, List<Map<String, String>>> openings =
                by(rows("openings.csv"), "house_id", "elevation_id", "method");
        Map<String, List<Map<String, String>>> walls = by(rows("elevations.csv"), "house_id", "method");
        for (Map<String, String> wall : rows("elevations.csv")) {
            List<Map<String, String>> own =
                    openings.get(wall.get("house_id") + "/" + wall.get("elevation_id") + "/" + wall.get("method"));
            assertThat(own).hasSize(Integer.parseInt(wall.get("openings")));
            assertThat(number("labour_minutes_mean").apply(wall))
                    .isGreaterThanOrEqualTo(sum(own, "labour_minutes_mean") - 0.05 * (own.size() + 1) - 1e-9);
        }
        for (Map<String, String> house : rows("houses.csv")) {
            List<Map<String, String>> own = walls.get(house.get("house_id") + "/" + house.get("method"));
            assertThat(60 * number("labour_hours_mean").apply(house))
                    .isGreaterThanOrEqualTo(sum(own, "labour_minutes_mean") - 0.3 - 0.05 * own.size() - 1e-9);
        }
    }

    @Test
    void quantilesAreInOrderAndSharesAreShares() throws IOException {
        for (Map<String, String> house : rows("houses.csv")) {
            for (String name : List.of("labour_hours", "material_usd", "cost_usd", "horizon_cost_usd")) {
                assertThat(number(name + "_p10").apply(house))
                        .isLessThanOrEqualTo(number(name + "_p50").apply(house));
                assertThat(number(name + "_p50").apply(house))
                        .isLessThanOrEqualTo(number(name + "_p90").apply(house));
            }
            assertThat(number("leak_probability").apply(house)).isBetween(0.0, 1.0);
            assertThat(number("leak_score").apply(house))
                    .isCloseTo(100 * number("leak_probability").apply(house), within(0.055 + 1e-9));
        }
        by(rows("houses.csv"), "house_id").forEach((id, methods) -> {
            assertThat(methods)
                    .hasSizeGreaterThan(1)
                    .extracting(row -> row.get("preferred"))
                    .containsOnly("yes", "no");
            assertThat(methods).filteredOn("preferred", "yes").hasSize(1);
            assertThat(sum(methods, "preferred_probability")).isCloseTo(1, within(0.0005 * methods.size() + 1e-9));
        });
    }

    /** Money and lengths are shown with the decimals of the catalogue: cents, and thousandths of an inch for an order. */
    @Test
    void moneyIsInCents() throws IOException {
        for (Map<String, String> house : rows("houses.csv")) {
            house.forEach((name, cell) -> {
                if (name.contains("_usd")) {
                    assertThat(cell).as(name).matches("-?\\d+\\.\\d\\d");
                }
            });
        }
    }

    private static Function<Map<String, String>, Double> number(String name) {
        return row -> Double.parseDouble(row.get(name));
    }

    private static double sum(List<Map<String, String>> rows, String name) {
        return rows.stream().map(number(name)).mapToDouble(Double::doubleValue).sum();
    }

    private static List<Map<String, String>> rows(String table) throws IOException {
        List<List<String>> cells = Outputs.rows(report.resolve(table));
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> row : cells.subList(1, cells.size())) {
            Map<String, String> named = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                named.put(cells.get(0).get(i), row.get(i));
            }
            rows.add(named);
        }
        return rows;
    }

    private static Map<String, List<Map<String, String>>> by(List<Map<String, String>> rows, String... key) {
        Map<String, List<Map<String, String>>> groups = new HashMap<>();
        for (Map<String, String> row : rows) {
            String name = String.join("/", List.of(key).stream().map(row::get).toList());
            groups.computeIfAbsent(name, none -> new ArrayList<>()).add(row);
        }
        return groups;
    }
}
