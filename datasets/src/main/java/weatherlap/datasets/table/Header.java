package weatherlap.datasets.table;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where each column of the schema stands in the file. */
final class Header {
    private final Map<String, Integer> places;
    private final int[] fromFile;
    private final int width;
    private final boolean complete;

    private Header(Map<String, Integer> places, int[] fromFile, int width, boolean complete) {
        this.places = places;
        this.fromFile = fromFile;
        this.width = width;
        this.complete = complete;
    }

    /** Reads a header row and reports what is wrong with it; empty where no column is known at all. */
    static Optional<Header> of(String[] cells, int line, Schema schema, Problems problems) {
        for (String cell : cells) {
            if (Quotes.content(cell).isEmpty()) {
                problems.error(schema.file(), line, "", "has a stray quote: " + Quoted.of(cell));
                return Optional.empty();
            }
        }
        List<String> names = Arrays.stream(cells)
                .map(cell -> Quotes.content(cell).orElseThrow().strip())
                .toList();
        List<String> known = schema.names();
        if (names.stream().noneMatch(known::contains)) {
            problems.error(
                    schema.file(),
                    line,
                    "",
                    "is not the header row of this table" + delimiter(names.get(0)) + "; expected: "
                            + String.join(",", known));
            return Optional.empty();
        }
        checkNames(names, line, schema, problems);
        boolean complete = complete(names, line, schema, problems);
        int[] fromFile = known.stream().mapToInt(names::indexOf).toArray();
        return Optional.of(new Header(schema.places(), fromFile, names.size(), complete));
    }

    private static void checkNames(List<String> names, int line, Schema schema, Problems problems) {
        List<String> known = schema.names();
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                problems.error(schema.file(), line, name, "stands twice in the header");
            } else if (name.isEmpty()) {
                problems.error(schema.file(), line, "", "a column has no name");
            } else if (!known.contains(name)) {
                String unseen = Nearest.hint(name, known);
                problems.error(schema.file(), line, Quoted.bare(name), "is not a column of this table" + unseen);
            }
        }
    }

    /** Whether every column that must not be empty is there. */
    private static boolean complete(List<String> names, int line, Schema schema, Problems problems) {
        boolean complete = true;
        for (Column column : schema.columns()) {
            if (!column.mayBeEmpty() && !names.contains(column.name())) {
                problems.error(
                        schema.file(),
                        line,
                        column.name(),
                        "this column is missing (expected: " + column.type().expected() + ")");
                complete = false;
            }
        }
        return complete;
    }

    private static String delimiter(String first) {
        for (String other : List.of(";", "\t", "|")) {
            if (first.contains(other)) {
                return ": columns are separated by " + Quoted.of(other) + " instead of a comma";
            }
        }
        return "";
    }

    /** The text of one cell of a record; empty where there is none. */
    String text(String[] cells, String column) {
        return Quotes.content(raw(cells, places.get(column))).orElse("").strip();
    }

    /** What the file has in a column of the schema; empty where it has nothing. */
    private String raw(String[] cells, int column) {
        int place = fromFile[column];
        return place < 0 || place >= cells.length ? "" : cells[place];
    }

    /** Holds the cells of one record against their columns. */
    Row row(String[] cells, int line, Schema schema, Problems problems) {
        boolean fits = cells.length == width;
        if (!fits) {
            problems.error(schema.file(), line, "", raggedness(cells));
        }
        String[] ordered = new String[fromFile.length];
        boolean sound = complete && fits;
        for (int c = 0; c < ordered.length; c++) {
            String raw = raw(cells, c);
            Optional<String> content = Quotes.content(raw);
            ordered[c] = content.orElse("").strip();
            if (fits && fromFile[c] >= 0) {
                Column column = schema.columns().get(c);
                String fault = content.isEmpty() ? "has a stray quote: " + Quoted.of(raw) : column.fault(ordered[c]);
                if (!fault.isEmpty()) {
                    problems.error(schema.file(), line, column.name(), fault);
                    sound = false;
                }
            }
        }
        return new Row(schema.file(), line, places, ordered, sound);
    }

    private String raggedness(String[] cells) {
        boolean open = Quotes.content(cells[cells.length - 1]).isEmpty();
        return "has " + cells.length + (cells.length == 1 ? " cell" : " cells") + " where the header has " + width
                + (open ? "; a quote in it is never closed" : "");
    }
}
