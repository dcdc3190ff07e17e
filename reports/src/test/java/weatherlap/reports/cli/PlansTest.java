package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;
import tech.tablesaw.io.csv.CsvReadOptions;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.House;

/** Where to depart from the default: the plans that tables and page give for the demo's houses agree with each other and with the limits. */
class PlansTest {
    @TempDir
    private static Path folder;

    /** By house: its rows of full-flange and insert. */
    private static final Map<String, List<Row>> HOUSES = new LinkedHashMap<>();

    /** By house and wall, likewise. */
    private static final Map<String, List<Row>> WALLS = new LinkedHashMap<>();

    @BeforeAll
    static void compareTheDemo() {
        assertThat(Cli.run("compare", "--out", folder.resolve("report"), "--draws", 32, "--quiet")
                        .status())
                .isZero();
        for (Row row : rows("houses.csv")) {
            HOUSES.computeIfAbsent(row.getString("house_id"), id -> new ArrayList<>())
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
    void aHouseIsDoneAsItsWallsAre() {
        HOUSES.forEach((house, methods) -> {
            boolean full = walls(house).stream().anyMatch(wall -> yes(wall.get(0), "chosen"));
            boolean insert = walls(house).stream().anyMatch(wall -> yes(wall.get(1), "chosen"));
            String both = full && insert ? "part" : "";
            assertThat(methods.get(0).getString("chosen")).isEqualTo(both.isEmpty() ? full ? "yes" : "no" : both);
            assertThat(methods.get(1).getString("chosen")).isEqualTo(both.isEmpty() ? insert ? "yes" : "no" : both);
        });
        assertThat(WALLS.values())
                .allSatisfy(wall -> assertThat(yes(wall.get(0), "chosen")).isNotEqualTo(yes(wall.get(1), "chosen")));
    }

    @Test
    void noMethodIsChosenWhereItIsClosed() {
        assertThat(WALLS.values()).allSatisfy(wall -> assertThat(wall).allSatisfy(row -> {
            if (yes(row, "chosen")) {
                assertThat(row.getString("closed")).isEmpty();
            }
        }));
    }

    @Test
    void aRottenFrameClosesTheInsertAtItsWall() {
        int rotten = 0;
        for (House house : DemoPortfolio.load().houses()) {
            for (var wall : house.elevations()) {
                if (wall.openings().stream().anyMatch(o -> o.frameCondition() == FrameCondition.ROTTEN)) {
                    Row insert = WALLS.get(house.id() + "/" + wall.id()).get(1);
                    assertThat(insert.getString("closed")).contains("rotten_frame");
                    rotten++;
                }
            }
        }
        assertThat(rotten).isPositive();
    }

    @Test
    void thePageHasThePlanOfEachHouse() throws IOException {
        String page = Files.readString(folder.resolve("report").resolve("report.html"));
        HOUSES.forEach((house, methods) -> {
            String plan =
                    yes(methods.get(0), "chosen") ? "full-flange" : yes(methods.get(1), "chosen") ? "insert" : "both: ";
            assertThat(page)
                    .containsPattern("\\(<bdi>" + Pattern.quote(house) + "</bdi>\\)</span></span> <span>" + plan);
        });
    }

    @Test
    void theAnswerCountsTheHousesThatDepart() throws IOException {
        String summary = Files.readString(folder.resolve("report").resolve("summary.json"));
        int chosen = summary.contains("\"default_method\" : \"full_flange\"") ? 0 : 1;
        String name = "plan_horizon_cost_usd_mean";
        long depart = HOUSES.values().stream()
                .filter(methods -> number(methods.get(1 - chosen), name) < number(methods.get(chosen), name))
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
