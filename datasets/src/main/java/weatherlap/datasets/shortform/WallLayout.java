package weatherlap.datasets.shortform;

import java.util.List;
import java.util.Map;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.Units;

/**
 * Places on a wall for windows of which nobody measured the place: from left to right with gaps between, as many on each story, and a wall as
 * wide and as high as they need where it was not measured.
 *
 * @param wall its cells, filled up in place
 * @param windows theirs, likewise
 * @param eaveMeasured whether the eave stands where it stands, whatever the windows need
 * @param gapIn of wall beside and between windows
 * @param sillIn of the first story over grade
 */
record WallLayout(
        Map<String, String> wall,
        List<Map<String, String>> windows,
        int storeys,
        boolean eaveMeasured,
        double gapIn,
        double sillIn) {
    void lay() {
        int onEach = (windows.size() + storeys - 1) / storeys;
        double storeyIn = Units.feetToInches(number(wall, "eave_height_ft")) / storeys;
        double gap = gap(onEach);
        double right = gap;
        double widest = 0;
        double highest = 0;
        for (int w = 0; w < windows.size(); w++) {
            Map<String, String> window = windows.get(w);
            right = w % onEach == 0 ? gap : right;
            window.putIfAbsent("left_in", CsvText.cell(right));
            window.putIfAbsent("sill_height_in", CsvText.cell(sillIn + storeyIn * (w / onEach)));
            right = number(window, "left_in") + number(window, "frame_width_in") + gap;
            widest = Math.max(widest, right);
            highest = Math.max(highest, number(window, "sill_height_in") + number(window, "frame_height_in"));
        }
        wall.putIfAbsent("width_ft", CsvText.cell(Units.inchesToFeet(widest)));
        if (!eaveMeasured && highest > Units.feetToInches(number(wall, "eave_height_ft"))) {
            wall.put("eave_height_ft", CsvText.cell(Units.inchesToFeet(highest)));
        }
    }

    /** The gap asked for; on a wall that was measured, what is left over for each, if that is less. */
    private double gap(int onEach) {
        if (!wall.containsKey("width_ft")) {
            return gapIn;
        }
        double widest = 0;
        for (int first = 0; first < windows.size(); first += onEach) {
            widest = Math.max(
                    widest,
                    windows.subList(first, Math.min(windows.size(), first + onEach)).stream()
                            .mapToDouble(window -> number(window, "frame_width_in"))
                            .sum());
        }
        double left = Units.feetToInches(number(wall, "width_ft")) - widest;
        return Math.min(gapIn, Math.max(0, left / (onEach + 1)));
    }

    private static double number(Map<String, String> cells, String column) {
        return Double.parseDouble(cells.get(column));
    }
}
