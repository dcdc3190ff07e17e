package weatherlap.reports.handout;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.drawing.WallRose;
import weatherlap.charts.kit.Captioned;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.TableView;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/**
 * Rain on the walls of a house, in words. A litre on a square metre stands a millimetre deep, so that litres a square metre are read as
 * inches. How hard the design spell is, is said by the classes of BS 8104:1992: below 33, 56.5 and 100 L/m², and above.
 */
record RainOnHouse(HouseTakeoff takeoff, RainClimate climate, FamilyWords words) {
    private static final String INVENTED = " (invented)";
    private static final int STEP_DEG = 10;
    private static final double MM_PER_INCH = 25.4;
    private static final int MOST_WALLS = 6;
    private static final int LONGEST_PLACE = 140;
    private static final int LONGEST_WALL = 32;

    Figure rose() {
        List<WallRose.Ray> rays = IntStream.range(0, 360 / STEP_DEG)
                .mapToObj(i -> i * STEP_DEG)
                .map(deg -> new WallRose.Ray(deg, climate.isoLitresPerM2Year(deg)))
                .toList();
        Phrases phrases = new Phrases(words);
        WallRose rose = new WallRose(
                rays,
                walls(takeoff).keySet().stream().map(Elevation::bearingDeg).toList(),
                DoubleStream.of(0, 90, 180, 270).mapToObj(phrases::letters).toList());
        return Figure.of(new Captioned(rose, words.of("rain.rose"), told(rays, phrases)));
    }

    private String told(List<WallRose.Ray> rays, Phrases phrases) {
        WallRose.Ray most = rays.stream()
                .max(Comparator.comparingDouble(WallRose.Ray::litresPerM2Year))
                .orElseThrow();
        WallRose.Ray least = rays.stream()
                .min(Comparator.comparingDouble(WallRose.Ray::litresPerM2Year))
                .orElseThrow();
        return most.litresPerM2Year() <= 0
                ? words.of("rain.none")
                : words.of(
                        "rain.most",
                        phrases.direction(most.bearingDeg()),
                        phrases.direction(least.bearingDeg()),
                        Phrases.percent(least.litresPerM2Year() / most.litresPerM2Year()));
    }

    /** Whose weather it is. */
    static String weather(RainClimate climate, Density density, FamilyWords words) {
        String name = climate.name();
        String shown = name.endsWith(INVENTED)
                ? words.of("rain.weather.invented", name.substring(0, name.length() - INVENTED.length()))
                : density.cut(name, LONGEST_PLACE);
        return words.of(climate.anyBearing() ? "rain.weather.elsewhere" : "rain.weather", shown);
    }

    /** The walls in table order; on paper the wettest of them, where there are many. */
    TableView walls(Density density) {
        TableView.Builder table = TableView.of(words.of("rain.caption"))
                .texts(words.of("rain.wall"), words.of("rain.storm"), words.of("rain.year"), words.of("rain.eave"));
        Map<Elevation, List<OpeningExposure>> walls = walls(takeoff);
        List<Elevation> shown = walls.keySet().stream()
                .sorted(Comparator.comparingDouble(wall -> -mean(walls.get(wall), OpeningExposure::litresPerM2Year)))
                .limit(density.bounded() ? MOST_WALLS : walls.size())
                .toList();
        walls.keySet().stream().filter(shown::contains).forEach(wall -> addWall(table, wall, walls.get(wall), density));
        int more = walls.size() - shown.size();
        if (more > 0) {
            table.row(words.count(more, "rain.drier"), "", "", "");
        }
        return table.build();
    }

    private void addWall(TableView.Builder table, Elevation wall, List<OpeningExposure> openings, Density density) {
        double free = mean(openings, OpeningExposure::freeLitresPerM2Year);
        double arrives = mean(openings, OpeningExposure::litresPerM2Year);
        table.row(
                InWords.capital(density.cut(new Phrases(words).wall(takeoff.house(), wall), LONGEST_WALL)),
                storm(mean(openings, OpeningExposure::spellLitresPerM2)),
                words.of("rain.inches", Numbers.plain(arrives / MM_PER_INCH, 1)),
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
    private String storm(double litresPerM2) {
        return words.of("storm."
                + (litresPerM2 < 33
                        ? "sheltered"
                        : litresPerM2 < 56.5 ? "moderate" : litresPerM2 < 100 ? "severe" : "very_severe"));
    }

    private static double mean(
            List<OpeningExposure> openings, java.util.function.ToDoubleFunction<OpeningExposure> value) {
        return openings.stream().mapToDouble(value).average().orElse(0);
    }
}
