package weatherlap.datasets.portfolio;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weatherlap.datasets.table.Row;

/** The rows of one house: its own, those of its walls and those of their openings, each in the order of its table. */
record HouseRows(Row house, List<Row> elevations, List<Row> openings) {
    boolean everyOpeningHasItsWall() {
        Set<String> walls = new HashSet<>();
        elevations.forEach(row -> walls.add(row.text("elevation_id")));
        return openings.stream().allMatch(row -> walls.contains(row.text("elevation_id")));
    }
}
