package weatherlap.datasets.portfolio;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.explain.Basis;

/** Warns of what may be, but seldom is: each range, with what to check and what it rests on, is a row of {@code usual-values.csv}. */
final class UsualValues {
    private static final Schema SCHEMA = new Schema(
            "usual-values.csv",
            "what is usual of walls and windows; beyond it a cell is warned of",
            List.of(
                    Column.text("column", "whose cell is warned of"),
                    Column.text("of", "what is held against the range"),
                    Column.text("given", "such as operation=slider; empty: always")
                            .optional(),
                    Column.number("least", "as says has it", 0, 10_000, "one end of what is usual"),
                    Column.number("most", "as says has it", 0, 10_000, "the other end"),
                    Column.text("says", "what follows the number"),
                    Column.text("check", "what somebody should do"),
                    Column.word("basis", Basis.words(), "how far the row can be trusted"),
                    Column.text("source", "citation").optional()),
            List.of("of", "given"));

    /** By what is held against them, in the order of the table. */
    private static final Map<String, List<Range>> RANGES =
            rows().stream().map(Range::of).collect(Collectors.groupingBy(range -> range.of()));

    private static final double SHOWN_TO = 100;

    private UsualValues() {}

    /**
     * One row.
     *
     * @param column that must hold the word where the range is meant; empty: always
     */
    private record Range(Row row, String of, String column, String word, double least, double most) {
        static Range of(Row row) {
            String[] given = row.text("given").split("=", 2);
            return new Range(
                    row, row.text("of"), given[0], given[given.length - 1], row.number("least"), row.number("most"));
        }

        boolean isFor(Row cells) {
            return column.isEmpty() || cells.text(column).equals(word);
        }

        boolean isPassedBy(double value) {
            return value < least || value > most;
        }
    }

    private static List<Row> rows() {
        Problems problems = new Problems();
        Optional<List<Row>> rows = Folder.beside(UsualValues.class)
                .table(SCHEMA, problems)
                .map(table -> table.soundRows().toList());
        return Loaded.of(rows, problems).orElseThrow();
    }

    /** @param storeys of its house */
    static void checkWall(Row wall, int storeys, Problems problems) {
        warn(wall, "width_ft", wall.number("width_ft"), problems);
        warn(wall, "eave_ft_a_story", wall.number("eave_height_ft") / storeys, problems);
    }

    /** Whether the shape alone is warned of. */
    static boolean isOddlyShaped(Row opening) {
        return odd(opening, "height_over_width", heightOverWidth(opening)).isPresent();
    }

    private static double heightOverWidth(Row opening) {
        return opening.number("frame_height_in") * opening.whole("units", 1) / opening.number("frame_width_in");
    }

    static void checkOpening(Row opening, Problems problems) {
        warn(opening, "sill_height_in", opening.number("sill_height_in"), problems);
        if (opening.has("interior_sill_in")) {
            warn(opening, "interior_sill_in", opening.number("interior_sill_in"), problems);
        }
        double width = opening.number("frame_width_in") / opening.whole("units", 1);
        double height = opening.number("frame_height_in");
        boolean oddWidth = warn(opening, "unit_width_in", width, problems);
        boolean oddHeight = warn(opening, "frame_height_in", height, problems);
        if (!oddWidth && !oddHeight) {
            warn(opening, "height_over_width", heightOverWidth(opening), problems);
        }
    }

    /** Whether there was anything to warn of. */
    private static boolean warn(Row row, String of, double value, Problems problems) {
        Optional<Row> odd = odd(row, of, value);
        if (odd.isPresent()) {
            Row usual = odd.get();
            row.warning(
                    problems,
                    usual.text("column"),
                    CsvText.cell(Math.round(value * SHOWN_TO) / SHOWN_TO) + " " + usual.text("says") + " is unusual ("
                            + usual.text("least") + " to " + usual.text("most") + "); " + usual.text("check"));
        }
        return odd.isPresent();
    }

    /** The range that a value is out of, if it is. */
    private static Optional<Row> odd(Row row, String of, double value) {
        for (Range range : RANGES.getOrDefault(of, List.of())) {
            if (range.isFor(row)) {
                return range.isPassedBy(value) ? Optional.of(range.row()) : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
