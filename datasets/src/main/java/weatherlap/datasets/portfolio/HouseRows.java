package weatherlap.datasets.portfolio;

import java.util.List;
import weatherlap.datasets.table.Row;

/** The rows of one house: its own, those of its walls and those of their openings, each in the order of its table. */
record HouseRows(Row house, List<Row> elevations, List<Row> openings) {}
