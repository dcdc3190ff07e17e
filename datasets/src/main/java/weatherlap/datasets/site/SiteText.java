package weatherlap.datasets.site;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Characters;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Toml;
import weatherlap.sim.wind.DesignWind;
import weatherlap.sim.wind.ExposureCategory;

/** Reads and writes {@code site.toml}. */
public final class SiteText {
    /** Name of the file. */
    public static final String FILE = "site.toml";

    private static final int LONGEST_PLACE = 200;
    private static final List<String> KEYS =
            List.of("place", "latitude", "longitude", "station", "weather", "design_wind_mph", "exposure");

    private final Toml toml;
    private final Problems problems;

    private SiteText(Toml toml, Problems problems) {
        this.toml = toml;
        this.problems = problems;
    }

    /** The site, or every problem in its text. */
    static Optional<Site> read(Toml toml, Problems problems) {
        int before = problems.errorCount();
        SiteText text = new SiteText(toml, problems);
        Optional<Site> site = toml.tree(problems).map(text::site);
        return problems.errorCount() > before ? Optional.empty() : site;
    }

    /** What is wrong is reported; a site is made all the same, to find more. */
    private Site site(JsonNode tree) {
        for (Iterator<String> names = tree.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!KEYS.contains(name)) {
                error(name, "is not known" + Nearest.hint(name, KEYS));
            }
        }
        String place = word(tree, "place").orElse("");
        if (place.isBlank() || place.length() > LONGEST_PLACE) {
            error("place", "must name the place, in at most " + LONGEST_PLACE + " characters");
            place = "?";
        }
        return new Site(place.strip(), location(tree), station(tree), weather(tree), wind(tree));
    }

    private Optional<Location> location(JsonNode tree) {
        OptionalDouble latitude = number(tree, "latitude", "degrees", -90, 90);
        OptionalDouble longitude = number(tree, "longitude", "degrees", -180, 180);
        if (tree.has("latitude") != tree.has("longitude")) {
            error("latitude", "and longitude go together");
        }
        return latitude.isPresent() && longitude.isPresent()
                ? Optional.of(new Location(latitude.getAsDouble(), longitude.getAsDouble()))
                : Optional.empty();
    }

    private Optional<Station> station(JsonNode tree) {
        Optional<String> id = word(tree, "station");
        Optional<Station> station = id.flatMap(Stations.bundled()::of);
        if (id.isPresent() && station.isEmpty()) {
            error(
                    "station",
                    Quoted.of(id.get()) + " is not one of the "
                            + Stations.bundled().all().size()
                            + " stations in the program; weatherlap site --near lists those near a place");
        }
        return station;
    }

    private List<String> weather(JsonNode tree) {
        JsonNode files = tree.path("weather");
        if (files.isMissingNode()) {
            return List.of();
        }
        boolean words = files.isArray()
                && !files.isEmpty()
                && IntStream.range(0, files.size())
                        .allMatch(i -> files.get(i).isTextual()
                                && !files.get(i).textValue().isBlank());
        if (!words) {
            error("weather", "must list files, as in [\"weather/2023.csv\"]");
            return List.of();
        }
        List<String> named = new ArrayList<>();
        files.forEach(file -> named.add(file.textValue()));
        named.stream()
                .filter(file -> named.indexOf(file) != named.lastIndexOf(file))
                .distinct()
                .forEach(file -> error("weather", "names " + Quoted.of(file) + " more than once"));
        return named;
    }

    private Optional<DesignWind> wind(JsonNode tree) {
        OptionalDouble speed = number(tree, "design_wind_mph", "mph", DesignWind.LEAST_MPH, DesignWind.MOST_MPH);
        Optional<ExposureCategory> exposure = exposure(tree);
        if (tree.has("design_wind_mph") != tree.has("exposure")) {
            error("design_wind_mph", "and exposure go together");
        }
        return speed.isPresent() && exposure.isPresent()
                ? Optional.of(new DesignWind(speed.getAsDouble(), exposure.get()))
                : Optional.empty();
    }

    private Optional<ExposureCategory> exposure(JsonNode tree) {
        Optional<String> word = word(tree, "exposure").map(w -> w.toUpperCase(Locale.ROOT));
        for (ExposureCategory category : ExposureCategory.values()) {
            if (word.equals(Optional.of(category.name()))) {
                return Optional.of(category);
            }
        }
        word.ifPresent(w -> error("exposure", Quoted.of(w) + " is not one of B, C, D (ASCE 7)"));
        return Optional.empty();
    }

    private Optional<String> word(JsonNode tree, String name) {
        JsonNode node = tree.path(name);
        if (!node.isMissingNode() && !node.isTextual()) {
            error(name, "must be text in quotes");
        }
        if (node.isTextual() && !Characters.shown(node.textValue()).equals(node.textValue())) {
            error(name, "holds a character that no page can show");
        }
        return node.isTextual() ? Optional.of(node.textValue()) : Optional.empty();
    }

    private OptionalDouble number(JsonNode tree, String name, String unit, double low, double high) {
        JsonNode node = tree.path(name);
        CellType.Number type = new CellType.Number(unit, low, false, high, false);
        if (node.isNumber() && node.doubleValue() >= low && node.doubleValue() <= high) {
            return OptionalDouble.of(node.doubleValue());
        }
        if (!node.isMissingNode()) {
            error(name, Quoted.of(node.asText()) + " is impossible (expected: " + type.expected() + ")");
        }
        return OptionalDouble.empty();
    }

    private void error(String name, String message) {
        problems.error(toml.file(), toml.line(name), Quoted.bare(name), message);
    }

    /** The site of an invented town and its weather. */
    public static String write(String place, String weather) {
        return "place = " + Toml.quote(place) + "\nweather = [" + Toml.quote(weather) + "]\n";
    }

    /**
     * A site file to fill in further.
     *
     * @param years of which the station's hourly files are asked for
     */
    public static String write(PlaceSearch place, Station station, IntStream years) {
        List<String> files = years.mapToObj(year -> "    " + Toml.quote(station.fileName(year)) + ",")
                .toList();
        return String.join(
                "\n",
                "# Where the houses stand. Weather files are looked for from the folder of this file.",
                "place = " + Toml.quote(place.asked()),
                "latitude = " + place.location().latitudeDeg(),
                "longitude = " + place.location().longitudeDeg(),
                "# " + station.title(),
                "station = " + Toml.quote(station.id()),
                "weather = [",
                String.join("\n", files),
                "]",
                "",
                "# The wind that a window must stand: ask the building department for the design wind speed of houses",
                "# (ASCE 7, mph) and the exposure category (B among houses or trees, C in open country, D by open water).",
                "# design_wind_mph = 115",
                "# exposure = \"B\"",
                "");
    }
}
