package weatherlap.datasets.shortform;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Headings;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.typed.Bearings;
import weatherlap.sim.house.Cladding;

/** Fills the three tables house by house. */
final class FilledTables {
    private final HouseDefaults defaults;
    private final Map<Schema, TreeMap<Integer, Map<String, String>>> lines = new LinkedHashMap<>();
    private final Map<String, ShortPortfolio.Taken> taken = new LinkedHashMap<>();

    FilledTables(HouseDefaults defaults) {
        this.defaults = defaults;
        PortfolioTables.ALL.forEach(table -> lines.put(table, new TreeMap<>()));
    }

    void add(List<Row> rows) {
        Map<String, String> house = cells(PortfolioTables.HOUSES, rows, Map.of());
        house.putIfAbsent("label", house.get("house_id"));
        put(PortfolioTables.HOUSES, rows.get(0), house);
        ShortPortfolio.walls(rows).values().forEach(wall -> addWall(wall, house));
    }

    private void addWall(List<Row> rows, Map<String, String> house) {
        Map<String, String> wall = cells(PortfolioTables.ELEVATIONS, rows, house);
        wall.put("house_id", house.get("house_id"));
        wall.put("elevation_id", Bearings.name(Double.parseDouble(wall.get("bearing_deg"))));
        List<Map<String, String>> windows = new ArrayList<>();
        for (Row row : rows) {
            Map<String, String> window = cells(PortfolioTables.OPENINGS, List.of(row), house);
            window.put("house_id", house.get("house_id"));
            window.put("elevation_id", wall.get("elevation_id"));
            window.putAll(row.filled(Headings.NOTE));
            windows.add(window);
        }
        boolean placed = windows.stream().allMatch(window -> window.containsKey("left_in"));
        double gap = placed && wall.containsKey("width_ft")
                ? 0
                : Double.parseDouble(take("gap_in", house).orElseThrow());
        double sill = Double.parseDouble(sill(house, windows));
        boolean measured = rows.stream().anyMatch(row -> row.has("eave_height_ft"));
        new WallLayout(wall, windows, Integer.parseInt(house.get("storeys")), measured, gap, sill).lay();
        put(PortfolioTables.ELEVATIONS, rows.get(0), wall);
        for (int w = 0; w < windows.size(); w++) {
            put(PortfolioTables.OPENINGS, rows.get(w), windows.get(w));
        }
    }

    /** Counted once for each window of which it was not measured. */
    private String sill(Map<String, String> house, List<Map<String, String>> windows) {
        return windows.stream()
                .filter(window -> !window.containsKey("sill_height_in"))
                .map(window -> take("sill_height_in", house).orElseThrow())
                .reduce("0", (before, value) -> value);
    }

    /** The filled cells of one row: what the short table says, else what is taken. Places on the wall are left out. */
    private Map<String, String> cells(Schema schema, List<Row> rows, Map<String, String> house) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String column : schema.names()) {
            String called = ShortTable.called(column);
            rows.stream()
                    .map(row -> row.text(called))
                    .filter(text -> !text.isEmpty())
                    .findFirst()
                    .ifPresent(text -> cells.put(column, text));
        }
        for (String column : schema.names()) {
            if (!cells.containsKey(column) && !column.equals("sill_height_in") && !bare(column, house)) {
                take(column, house.isEmpty() ? cells : house).ifPresent(value -> cells.put(column, value));
            }
        }
        return cells;
    }

    /** Courses and panels are asked of siding alone. */
    private static boolean bare(String column, Map<String, String> house) {
        boolean ofSiding = column.equals("course_exposure_in") || column.equals("panel_length_in");
        return ofSiding
                && !Cladding.valueOf(house.get("cladding").toUpperCase(Locale.ROOT))
                        .inCourses();
    }

    private Optional<String> take(String column, Map<String, String> facts) {
        return defaults.of(column, facts).map(row -> {
            taken.put(
                    column,
                    taken.getOrDefault(column, new ShortPortfolio.Taken(column, List.of(), 0, row))
                            .plus(row.value()));
            return row.value();
        });
    }

    private void put(Schema schema, Row at, Map<String, String> cells) {
        lines.get(schema).put(at.line(), cells);
    }

    List<ShortPortfolio.Taken> taken() {
        return List.copyOf(taken.values());
    }

    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        lines.forEach((schema, rows) -> {
            List<String> columns = Stream.concat(
                            schema.names().stream(),
                            rows.values().stream()
                                    .flatMap(cells -> cells.keySet().stream())
                                    .filter(name -> name.startsWith(Headings.NOTE)))
                    .distinct()
                    .toList();
            StringBuilder text = new StringBuilder(CsvText.line(columns));
            int next = 2;
            for (Map.Entry<Integer, Map<String, String>> row : rows.entrySet()) {
                text.append("\n".repeat(Math.max(0, row.getKey() - next)));
                text.append(CsvText.line(columns.stream()
                        .map(name -> row.getValue().getOrDefault(name, ""))
                        .toList()));
                next = row.getKey() + 1;
            }
            texts.put(schema.file(), text.toString());
        });
        return texts;
    }
}
