package weatherlap.datasets.shortform;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.KeyCheck;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.sim.house.House;

/**
 * The houses of a short table.
 *
 * @param houses rows by house, in the order of the table
 */
public record ShortPortfolio(List<List<Row>> houses) {
    public ShortPortfolio {
        houses = List.copyOf(houses);
    }

    /** Reads it; empty where anything is wrong, which is reported. */
    public static Optional<ShortPortfolio> read(Source source, Problems problems) {
        int before = problems.errorCount();
        List<Row> all = rows(source, problems);
        if (problems.errorCount() > before) {
            return Optional.empty();
        }
        Map<String, List<Row>> byHouse = all.stream()
                .collect(Collectors.groupingBy(row -> row.text("house"), LinkedHashMap::new, Collectors.toList()));
        byHouse.values().forEach(rows -> check(rows, problems));
        return problems.errorCount() > before
                ? Optional.empty()
                : Optional.of(new ShortPortfolio(List.copyOf(byHouse.values())));
    }

    private static List<Row> rows(Source source, Problems problems) {
        List<Row> all = new ArrayList<>();
        KeyCheck keys = new KeyCheck(ShortTable.SCHEMA, problems);
        CsvRows.open(source, ShortTable.SCHEMA, problems).ifPresent(rows -> {
            try (rows) {
                rows.forEachRemaining(row -> {
                    keys.check(row);
                    all.add(row);
                });
                rows.checkWhole();
            }
        });
        return all;
    }

    /** At most so many of the houses, evenly spread over the table. */
    public ShortPortfolio some(int most) {
        int count = Math.min(most, houses.size());
        return new ShortPortfolio(IntStream.range(0, count)
                .mapToObj(h -> houses.get((int) ((long) h * houses.size() / count)))
                .toList());
    }

    /** The short table from which the tables of a folder were filled, if they were. */
    public static Optional<ShortPortfolio> in(Path folder) {
        Path table = folder.resolve(ShortTable.FILE);
        return Files.isRegularFile(table) && Files.isRegularFile(folder.resolve(SheetNames.FILE))
                ? Folder.file(table, new Problems()).flatMap(source -> read(source, new Problems()))
                : Optional.empty();
    }

    /** What holds for a house or a wall must not differ within it. */
    private static void check(List<Row> rows, Problems problems) {
        agree(rows, PortfolioTables.HOUSES, "house", problems);
        walls(rows).values().forEach(wall -> agree(wall, PortfolioTables.ELEVATIONS, "wall", problems));
    }

    private static void agree(List<Row> rows, Schema schema, String whose, Problems problems) {
        for (String name : schema.names()) {
            String column = ShortTable.called(name);
            Optional<Row> first = rows.stream().filter(row -> row.has(column)).findFirst();
            rows.stream()
                    .filter(row -> row.has(column)
                            && !row.text(column).equals(first.orElseThrow().text(column)))
                    .forEach(row -> row.error(
                            problems,
                            column,
                            Quoted.of(row.text(column)) + " differs from "
                                    + Quoted.of(first.orElseThrow().text(column)) + " in row "
                                    + first.orElseThrow().line() + " of the same " + whose
                                    + (column.equals("siding")
                                            ? "; give each part of the house a name of its own"
                                            : "")));
        }
    }

    /** Rows by the way their wall faces. */
    static Map<String, List<Row>> walls(List<Row> house) {
        return house.stream()
                .collect(Collectors.groupingBy(row -> row.text("wall_faces"), LinkedHashMap::new, Collectors.toList()));
    }

    /**
     * The text of the three tables, by file. A house and a wall stand in the line in which the short table first names them, a window in its
     * own, so that what is said of a line is said of that of the short table.
     */
    public Map<String, String> texts(HouseDefaults defaults) {
        return filled(defaults).texts();
    }

    /** The houses of those tables, in the order of the short table; each that was read is sound. */
    public List<House> houses(HouseDefaults defaults) {
        return Portfolios.read(Folder.of(texts(defaults))).orElseThrow().houses();
    }

    /** What was taken because the short table leaves it out. */
    public List<Taken> taken(HouseDefaults defaults) {
        return filled(defaults).taken();
    }

    private FilledTables filled(HouseDefaults defaults) {
        FilledTables filled = new FilledTables(defaults);
        houses.forEach(filled::add);
        return filled;
    }

    /** What was taken of the tables of a folder, in a sentence; empty: nothing. */
    public static Optional<String> saidOf(Path folder) {
        return in(folder)
                .map(houses -> houses.taken(HouseDefaults.bundled()))
                .filter(taken -> !taken.isEmpty())
                .map(taken -> "what the short table leaves out is taken as usual: "
                        + taken.stream().map(Taken::words).collect(Collectors.joining(", "))
                        + "; what you measure goes into a column of that name (for gap_in: width_ft, left_in)");
    }

    /**
     * One thing that was taken.
     *
     * @param column of the tables; gap_in: between windows
     * @param values that were taken, each once, in the order of the table
     * @param count of houses, walls or windows for which it was
     */
    public record Taken(String column, List<String> values, int count, HouseDefaults.Default first) {
        public Taken {
            values = List.copyOf(values);
        }

        Taken plus(String value) {
            List<String> more = new ArrayList<>(values);
            if (!more.contains(value)) {
                more.add(value);
            }
            return new Taken(column, more, count + 1, first);
        }

        /** Such as {@code year_built 1975}. */
        public String words() {
            return column + " " + String.join(" or ", values);
        }
    }
}
