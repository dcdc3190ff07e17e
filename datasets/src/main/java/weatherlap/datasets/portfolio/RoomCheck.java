package weatherlap.datasets.portfolio;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;

/** Whether openings that share a room agree on what it is and how large. */
final class RoomCheck {
    private RoomCheck() {}

    /** @param openings of one house */
    static void check(List<Row> openings, Problems problems) {
        Map<String, Row> kinds = new HashMap<>();
        Map<String, Row> floors = new HashMap<>();
        for (Row row : openings) {
            String room = row.text("room_id");
            if (!room.isEmpty() && row.isSound()) {
                Row first = kinds.putIfAbsent(room, row);
                if (first != null && !first.text("room").equals(row.text("room"))) {
                    row.error(problems, "room", differs(row, first, "room"));
                }
                Row floor = row.has("floor_area_ft2") ? floors.putIfAbsent(room, row) : null;
                if (floor != null && floor.number("floor_area_ft2") != row.number("floor_area_ft2")) {
                    row.error(problems, "floor_area_ft2", differs(row, floor, "floor_area_ft2"));
                }
            }
        }
    }

    private static String differs(Row row, Row first, String column) {
        return Quoted.of(row.text(column)) + " differs from " + Quoted.of(first.text(column)) + " in row "
                + first.line() + " of the same room_id " + Quoted.of(row.text("room_id"));
    }
}
