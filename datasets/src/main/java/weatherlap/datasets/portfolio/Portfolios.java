package weatherlap.datasets.portfolio;

import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;

/** Reads a portfolio folder whole. */
public final class Portfolios {
    private Portfolios() {}

    /** The portfolio of a folder, or every problem in it. */
    public static Loaded<Portfolio> read(Path folder) {
        return read(Folder.of(folder), Year.now(ZoneOffset.UTC).getValue());
    }

    /** The same, held against assumptions too: regions have wages, units fit into their openings and show glass. */
    public static Loaded<Portfolio> read(Path folder, Assumptions assumptions) {
        return read(Folder.of(folder), Year.now(ZoneOffset.UTC).getValue(), Optional.of(new FitCheck(assumptions)));
    }

    /** @param thisYear no house is built after it */
    public static Loaded<Portfolio> read(Folder folder, int thisYear) {
        return read(folder, thisYear, Optional.empty());
    }

    private static Loaded<Portfolio> read(Folder folder, int thisYear, Optional<FitCheck> fit) {
        Problems problems = new Problems();
        Optional<TextTable> houses = folder.table(PortfolioTables.HOUSES, problems);
        Optional<TextTable> elevations = folder.table(PortfolioTables.ELEVATIONS, problems);
        Optional<TextTable> openings = folder.table(PortfolioTables.OPENINGS, problems);
        if (houses.isEmpty() || elevations.isEmpty() || openings.isEmpty()) {
            return Loaded.of(Optional.empty(), problems);
        }
        checkKeys(houses.get(), elevations.get(), openings.get(), problems);
        return Loaded.of(
                Optional.of(new Portfolio(houses(
                        houses.get(), elevations.get(), openings.get(), new HouseMaker(thisYear, fit, problems)))),
                problems);
    }

    private static List<House> houses(TextTable houses, TextTable elevations, TextTable openings, HouseMaker maker) {
        Function<String, List<Row>> walls = elevations.rowsBy("house_id");
        Function<String, List<Row>> windows = openings.rowsBy("house_id");
        List<House> made = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        houses.rows()
                .filter(row -> row.has("house_id") && seen.add(row.text("house_id")))
                .forEach(row -> {
                    String id = row.text("house_id");
                    maker.make(new HouseRows(row, walls.apply(id), windows.apply(id)))
                            .ifPresent(made::add);
                });
        return made;
    }

    private static void checkKeys(TextTable houses, TextTable elevations, TextTable openings, Problems problems) {
        Function<Row, String> house = row -> row.text("house_id");
        Function<Row, String> wall = row -> row.text("house_id") + "/" + row.text("elevation_id");
        Map<String, Integer> houseLines = lines(houses, house);
        Map<String, Integer> wallLines = lines(elevations, wall);
        elevations.rows().forEach(row -> checkHouse(row, houseLines, problems));
        openings.rows().forEach(row -> {
            if (checkHouse(row, houseLines, problems)
                    && row.has("elevation_id")
                    && !wallLines.containsKey(wall.apply(row))) {
                row.error(
                        problems,
                        "elevation_id",
                        Quoted.of(wall.apply(row)) + " is not in elevations.csv"
                                + Nearest.hint(wall.apply(row), siblings(wallLines, row.text("house_id"))));
            }
        });
    }

    /** Whether the house that a row names is there; an empty name is reported elsewhere. */
    private static boolean checkHouse(Row row, Map<String, Integer> houses, Problems problems) {
        String id = row.text("house_id");
        if (id.isEmpty() || houses.isEmpty() || houses.containsKey(id)) {
            return houses.containsKey(id);
        }
        String hint = houses.size() <= 1000 ? Nearest.hint(id, houses.keySet()) : "";
        row.error(problems, "house_id", Quoted.of(id) + " is not in houses.csv" + hint);
        return false;
    }

    private static List<String> siblings(Map<String, Integer> walls, String house) {
        return walls.size() > 10_000
                ? List.of()
                : walls.keySet().stream()
                        .filter(key -> key.startsWith(house + "/"))
                        .toList();
    }

    private static Map<String, Integer> lines(TextTable table, Function<Row, String> key) {
        Map<String, Integer> lines = new HashMap<>();
        table.rows().filter(row -> row.has("house_id")).forEach(row -> lines.putIfAbsent(key.apply(row), row.line()));
        return lines;
    }
}
