package weatherlap.reports.handout;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.WallRose;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.TableView;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.rain.DrivingRainRose;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * Rain on the walls of a house, in words. A litre on a square metre stands a millimetre deep, so that litres a square metre are read as
 * inches. How hard the design spell is, is said by the classes of BS 8104:1992: below 33, 56.5 and 100 L/m², and above.
 */
record RainOnHouse(HouseTakeoff takeoff, RainClimate climate) {
    private static final int STEP_DEG = 10;
    private static final double MM_PER_INCH = 25.4;
    private static final int MOST_WALLS = 6;
    private static final int LONGEST_WALL = 32;

    Figure rose() {
        return Figure.of(new WallRose(
                DrivingRainRose.of(climate, STEP_DEG).rows().stream()
                        .map(row -> new WallRose.Ray(row.bearingDeg(), row.isoLitresPerM2Year()))
                        .toList(),
                walls(takeoff).keySet().stream().map(Elevation::bearingDeg).toList()));
    }

    /** The walls in table order; on paper the wettest of them, where there are many. */
    TableView walls(Density density) {
        TableView.Builder table = TableView.of("Rain on each wall")
                .texts("wall", "in a long storm", "rain at its windows a year", "kept off by the eave");
        Map<Elevation, List<OpeningExposure>> walls = walls(takeoff);
        List<Elevation> shown = walls.keySet().stream()
                .sorted(Comparator.comparingDouble(wall -> -mean(walls.get(wall), OpeningExposure::litresPerM2Year)))
                .limit(density.bounded() ? MOST_WALLS : walls.size())
                .toList();
        walls.keySet().stream().filter(shown::contains).forEach(wall -> addWall(table, wall, walls.get(wall), density));
        int more = walls.size() - shown.size();
        if (more > 0) {
            table.row("and " + Numbers.count(more, "drier wall", "drier walls"), "", "", "");
        }
        return table.build();
    }

    private void addWall(TableView.Builder table, Elevation wall, List<OpeningExposure> openings, Density density) {
        double free = mean(openings, OpeningExposure::freeLitresPerM2Year);
        double arrives = mean(openings, OpeningExposure::litresPerM2Year);
        table.row(
                InWords.capital(density.cut(Phrases.wall(takeoff.house(), wall), LONGEST_WALL)),
                storm(mean(openings, OpeningExposure::spellLitresPerM2)),
                Numbers.plain(arrives / MM_PER_INCH, 1) + " inches",
                free > 0 ? Phrases.percent(1 - arrives / free) : "\u2013");
    }

    private static Map<Elevation, List<OpeningExposure>> walls(HouseTakeoff takeoff) {
        Map<Elevation, List<OpeningExposure>> walls = new LinkedHashMap<>();
        for (OpeningTakeoff opening : takeoff.openings()) {
            walls.computeIfAbsent(opening.elevation(), wall -> new java.util.ArrayList<>())
                    .add(opening.exposure());
        }
        return walls;
    }

    /** The classes of BS 8104:1992 for a spell, in plain words. */
    private static String storm(double litresPerM2) {
        return litresPerM2 < 33
                ? "sheltered"
                : litresPerM2 < 56.5 ? "moderate" : litresPerM2 < 100 ? "severe" : "very severe";
    }

    private static double mean(
            List<OpeningExposure> openings, java.util.function.ToDoubleFunction<OpeningExposure> value) {
        return openings.stream().mapToDouble(value).average().orElse(0);
    }
}
