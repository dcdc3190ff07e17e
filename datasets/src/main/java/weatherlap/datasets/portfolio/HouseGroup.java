package weatherlap.datasets.portfolio;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.datasets.table.KeyCheck;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.Each;

/** All rows whose {@code house_id} is the same but for capital letters: those of one house, if the tables are sound. */
record HouseGroup(List<Row> houses, List<Row> elevations, List<Row> openings) {
    /** Reports rows that repeat a key. */
    void checkKeys(Problems problems) {
        checkKeys(PortfolioTables.HOUSES, houses, problems);
        checkKeys(PortfolioTables.ELEVATIONS, elevations, problems);
        checkKeys(PortfolioTables.OPENINGS, openings, problems);
    }

    private static void checkKeys(Schema schema, List<Row> rows, Problems problems) {
        KeyCheck keys = new KeyCheck(schema, problems);
        rows.forEach(keys::check);
    }

    /**
     * Reports rows of a house or a wall that is not there.
     *
     * @param known names of other houses that may have been meant
     */
    void checkReferences(Set<String> known, Problems problems) {
        Set<String> ids = new HashSet<>(Each.of(houses, HouseId::of));
        Set<String> walls = new HashSet<>(Each.of(elevations, HouseGroup::wall));
        for (List<Row> rows : List.of(elevations, openings)) {
            for (Row row : Each.where(rows, row -> !ids.contains(HouseId.of(row)))) {
                report(row, HouseId.COLUMN, HouseId.of(row), "houses.csv", known, problems);
            }
        }
        for (Row row : openings) {
            if (ids.contains(HouseId.of(row)) && row.has("elevation_id") && !walls.contains(wall(row))) {
                report(row, "elevation_id", wall(row), "elevations.csv", of(walls, row), problems);
            }
        }
    }

    private static void report(Row row, String column, String name, String file, Set<String> known, Problems problems) {
        row.error(problems, column, Quoted.of(name) + " is not in " + file + Nearest.hint(name, known));
    }

    /** The walls of the house that a row names; none where there are too many to choose from. */
    private static Set<String> of(Set<String> walls, Row row) {
        return walls.size() > PortfolioScan.MOST_NAMES
                ? Set.of()
                : walls.stream()
                        .filter(wall -> wall.startsWith(HouseId.of(row) + "/"))
                        .collect(Collectors.toSet());
    }

    private static String wall(Row row) {
        return HouseId.of(row) + "/" + row.text("elevation_id");
    }

    /** The rows of each house, which is taken from the first row of its name. */
    List<HouseRows> split() {
        Map<String, Row> first = new LinkedHashMap<>();
        houses.forEach(row -> first.putIfAbsent(HouseId.of(row), row));
        return Each.of(List.copyOf(first.values()), row -> new HouseRows(row, of(row, elevations), of(row, openings)));
    }

    private static List<Row> of(Row house, List<Row> rows) {
        return Each.where(rows, row -> HouseId.of(row).equals(HouseId.of(house)));
    }
}
