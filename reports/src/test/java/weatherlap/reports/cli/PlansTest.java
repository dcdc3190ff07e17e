package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;
import tech.tablesaw.io.csv.CsvReadOptions;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.house.House;

/** Where to depart from the default: the plans that tables and page give for the demo's houses agree with each other and with the limits. */
class PlansTest {
    @TempDir
    private static Path folder;

    /** By house: its rows of full-flange and insert. */
    private static final Map<String, List<Row>> HOUSES = new LinkedHashMap<>();

    /** By house and wall, likewise. */
    private static final Map<String, List<Row>> WALLS = new LinkedHashMap<>();

    /** By house, wall and opening, likewise. */
    private static final Map<String, List<Row>> OPENINGS = new LinkedHashMap<>();

    @BeforeAll
    static void compareTheDemo() {
        assertThat(Cli.run(
                                "compare",
                                "--out",
                                folder.resolve("report"),
                                "--draws",
                                32,
                                "--quiet",
                                "--set",
                                "risk_limit=0.5")
                        .status())
                .isZero();
        for (Row row : rows("houses.csv")) {
            HOUSES.computeIfAbsent(row.getString("house_id"), id -> new ArrayList<>())
                    .add(row);
        }
        for (Row row : rows("openings.csv")) {
            OPENINGS.computeIfAbsent(
                            row.getString("house_id") + "/" + row.getString("elevation_id") + "/"
                                    + row.getString("opening_id"),
                            id -> new ArrayList<>())
                    .add(row);
        }
        for (Row row : rows("elevations.csv")) {
            WALLS.computeIfAbsent(
                            row.getString("house_id") + "/" + row.getString("elevation_id"), id -> new ArrayList<>())
                    .add(row);
        }
    }

    private static List<Row> rows(String file) {
        Table table = Table.read()
                .csv(CsvReadOptions.builder(
                                folder.resolve("report").resolve(file).toFile())
                        .columnTypes(column -> ColumnType.STRING));
        List<Row> rows = new ArrayList<>();
        for (int r = 0; r < table.rowCount(); r++) {
            rows.add(table.row(r));
        }
        return rows;
    }

    @Test
    void aHouseIsDoneAsItsWallsAreAndAWallAsItsWindows() {
        HOUSES.forEach((house, methods) -> assertThat(chosen(methods)).isEqualTo(together(walls(house))));
        WALLS.forEach((wall, methods) -> {
            List<List<Row>> windows = OPENINGS.entrySet().stream()
                    .filter(opening -> opening.getKey().startsWith(wall + "/"))
                    .map(Map.Entry::getValue)
                    .toList();
            Set<String> planned = windows.stream()
                    .map(rows -> rows.get(0).getString("planned_method"))
                    .collect(Collectors.toSet());
            for (Row row : methods) {
                String method = row.getString("method");
                assertThat(row.getString("chosen"))
                        .isEqualTo(planned.contains(method) ? planned.size() > 1 ? "part" : "yes" : "no");
            }
        });
        assertThat(WALLS.values()).anyMatch(wall -> chosen(wall).contains("part"));
    }

    private static List<String> chosen(List<Row> methods) {
        return methods.stream().map(row -> row.getString("chosen")).toList();
    }

    private static List<String> together(List<List<Row>> walls) {
        List<List<String>> each = walls.stream().map(PlansTest::chosen).toList();
        List<String> together = new ArrayList<>();
        for (int m = 0; m < each.get(0).size(); m++) {
            int method = m;
            Set<String> words = each.stream().map(wall -> wall.get(method)).collect(Collectors.toSet());
            together.add(words.size() == 1 ? words.iterator().next() : "part");
        }
        return together;
    }

    /** One rotten frame closes the insert at its window and leaves the rest of the wall open. */
    @Test
    void aRottenFrameClosesTheInsertAtItsWindow() {
        int rotten = 0;
        for (House house : DemoPortfolio.load().houses()) {
            for (var wall : house.elevations()) {
                for (var opening : wall.openings()) {
                    if (opening.frame().rotten()) {
                        String key = house.id() + "/" + wall.id();
                        List<Row> methods = WALLS.get(key);
                        assertThat(methods.get(methods.size() - 1).getString("closed"))
                                .contains("rotten_frame");
                        assertThat(OPENINGS.get(key + "/" + opening.id()).get(1).getString("planned_method"))
                                .isNotEqualTo("insert");
                        rotten++;
                    }
                }
            }
        }
        assertThat(rotten).isPositive();
    }

    /** What no plan keeps is said; where one does, the family's plan keeps it. */
    @Test
    void theFamilysPlanKeepsTheRiskLimitWhereAnyDoes() {
        double limit = 0.5;
        assertThat(HOUSES.values()).allSatisfy(methods -> {
            double risk = number(methods.get(0), "family_plan_leak_probability");
            assertThat(yes(methods.get(0), "keeps_risk_limit")).isEqualTo(risk <= limit);
        });
        assertThat(HOUSES.values()).anyMatch(methods -> yes(methods.get(0), "keeps_risk_limit"));
        assertThat(HOUSES.values()).anyMatch(methods -> !yes(methods.get(0), "keeps_risk_limit"));
    }

    /** Gross profit, crew days and the one divided by the other, in one table. */
    @Test
    void profitAndDaysReconcileOnThePage() throws IOException {
        String page = Files.readString(folder.resolve("report").resolve("report.html"));
        List<Double> profit = figures(page, "gross profit: price less labor");
        List<Double> days = figures(page, "crew days");
        List<Double> perDay = figures(page, "gross profit a crew day");
        for (int method = 0; method < 2; method++) {
            double rounding = 0.51 * days.get(method) + 0.0051 * perDay.get(method) + 0.51;
            assertThat(perDay.get(method) * days.get(method)).isCloseTo(profit.get(method), within(rounding));
        }
    }

    /** The two numbers of the first row of the page whose name begins so. */
    private static List<Double> figures(String page, String name) {
        Matcher row = Pattern.compile(
                        ">" + name + "[^<]*<(?:[^>]*>){1,6}?\\$?([0-9][^<]*)</td>\\s*<td[^>]*>\\$?([0-9][^<]*)</td>")
                .matcher(page);
        assertThat(row.find()).as(name).isTrue();
        return Stream.of(row.group(1), row.group(2))
                .map(text -> Double.parseDouble(text.replaceAll("[^0-9.]", "")))
                .toList();
    }

    @Test
    void thePageHasThePlanOfEachHouse() throws IOException {
        String page = Files.readString(folder.resolve("report").resolve("report.html"));
        HOUSES.forEach((house, methods) -> {
            String plan = methods.stream()
                    .filter(method -> yes(method, "chosen"))
                    .map(method -> method.getString("method").replace('_', '-'))
                    .findFirst()
                    .orElse("mixed: ");
            assertThat(page)
                    .containsPattern("\\(<bdi>" + Pattern.quote(house)
                            + "</bdi>\\)</span></span>(?: <span class=\"gains\">[^<]*</span>)? <span class=\"plan\">"
                            + plan);
        });
    }

    @Test
    void theAnswerCountsTheHousesThatDepart() throws IOException {
        String summary = Files.readString(folder.resolve("report").resolve("summary.json"));
        boolean first = summary.contains("\"default_method\" : \"full_flange\"");
        String name = "plan_horizon_cost_usd_mean";
        long depart = HOUSES.values().stream()
                .filter(methods -> {
                    double insert = number(methods.get(methods.size() - 1), name);
                    double other = number(methods.get(0), name);
                    return first ? insert < other : other < insert;
                })
                .count();
        assertThat(depart).isPositive();
        assertThat(summary).contains("\"houses_that_depart\" : " + depart + ",");
    }

    private static List<List<Row>> walls(String house) {
        return WALLS.entrySet().stream()
                .filter(wall -> wall.getKey().startsWith(house + "/"))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static double number(Row row, String column) {
        return Double.parseDouble(row.getString(column));
    }

    private static boolean yes(Row row, String column) {
        return row.getString(column).equals("yes");
    }
}
