package weatherlap.datasets.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Where each column of the schema, and each note, stands in the file. */
final class Header {
    /** Columns that are not read are named, up to so many. */
    private static final int NAMED = 8;

    private final Schema schema;
    private final Separator separator;
    private final HashMap<String, Integer> places;
    private final int[] fromFile;
    private final List<String> names;
    private final int width;
    private final boolean complete;
    private boolean asTyped;

    private Header(Schema schema, Separator separator, List<String> names, boolean complete) {
        this.schema = schema;
        this.separator = separator;
        this.places = schema.places();
        this.fromFile = schema.names().stream().mapToInt(names::indexOf).toArray();
        this.names = names;
        this.width = names.size();
        this.complete = complete;
        asTyped = separator != Separator.COMMA
                || names.stream().anyMatch(name -> !schema.names().contains(name))
                || !schema.names().stream().filter(names::contains).toList().equals(names);
    }

    /** Reads a header row and reports what is wrong with it; empty where no column is known at all. */
    static Optional<Header> of(String[] cells, int line, Separator separator, Schema schema, Problems problems) {
        for (String cell : cells) {
            if (CsvText.content(cell).isEmpty()) {
                problems.error(schema.file(), line, "", "has a stray quote: " + Quoted.of(cell));
                return Optional.empty();
            }
        }
        Headings headings = Headings.of(schema);
        List<String> names = Arrays.stream(cells)
                .map(cell -> headings.name(CsvText.content(cell).orElseThrow().strip()))
                .toList();
        List<String> known = schema.names();
        if (names.stream().noneMatch(known::contains)) {
            problems.error(
                    schema.file(),
                    line,
                    "",
                    "is not the header row of this table; expected: " + String.join(",", known));
            return Optional.empty();
        }
        checkNames(names, line, headings, schema, problems);
        boolean complete = complete(names, line, schema, problems);
        List<String> notes = names.stream()
                .filter(name -> name.startsWith(Headings.NOTE) && !known.contains(name))
                .distinct()
                .toList();
        return Optional.of(new Header(schema.withNotes(notes), separator, names, complete));
    }

    private static void checkNames(List<String> names, int line, Headings headings, Schema schema, Problems problems) {
        Set<String> seen = new HashSet<>();
        List<String> ignored = new ArrayList<>();
        for (String name : names) {
            boolean keeps = schema.names().contains(name) || name.startsWith(Headings.NOTE);
            Optional<String> meant = keeps ? Optional.empty() : meant(name, names, headings, schema);
            if (!seen.add(name) && keeps) {
                problems.error(schema.file(), line, name, "is in the header twice");
            } else if (name.isEmpty()) {
                problems.error(schema.file(), line, "", "a column has no name");
            } else if (meant.isPresent()) {
                problems.error(
                        schema.file(),
                        line,
                        Quoted.bare(name),
                        "is not a column of this table; did you mean " + Quoted.of(meant.get()) + "?");
            } else if (!keeps && !ignored.contains(Quoted.of(name))) {
                ignored.add(Quoted.of(name));
            }
        }
        if (!ignored.isEmpty()) {
            problems.warning(schema.file(), line, "", passedOver(ignored));
        }
    }

    /** A column that a heading may be a slip of; or, where it is missing and must not be, may be a part of. */
    private static Optional<String> meant(String name, List<String> names, Headings headings, Schema schema) {
        return headings.misspelt(name, names)
                .or(() -> Nearest.to(
                        name,
                        schema.columns().stream()
                                .filter(column -> !column.mayBeEmpty() && !names.contains(column.name()))
                                .map(Column::name)
                                .toList()));
    }

    private static String passedOver(List<String> ignored) {
        boolean one = ignored.size() == 1;
        return (one ? "the column " : "the columns ")
                + ignored.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (ignored.size() > NAMED ? " and " + (ignored.size() - NAMED) + " more" : "")
                + (one ? " does not belong to this table and was" : " do not belong to this table and were")
                + " not read";
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

    List<String> names() {
        return names;
    }

    /** The columns, notes among them. */
    Schema schema() {
        return schema;
    }

    /** Whether anything until now does not stand as tables have it, so that a copy would have to be read as it was typed. */
    boolean isAsTyped() {
        return asTyped;
    }

    /** The text of one cell of a record; empty where there is none. */
    String text(String[] cells, String column) {
        return CsvText.content(raw(cells, places.get(column))).orElse("").strip();
    }

    /** What the file has in a column of the schema; empty where it has nothing. */
    private String raw(String[] cells, int column) {
        int place = fromFile[column];
        return place < 0 || place >= cells.length ? "" : cells[place];
    }

    /** Holds the cells of one record against their columns. */
    Row row(String[] cells, int line, Problems problems) {
        boolean fits = cells.length == width;
        if (!fits) {
            problems.error(schema.file(), line, "", raggedness(cells));
        }
        String[] ordered = new String[fromFile.length];
        boolean sound = complete && fits;
        List<Column> columns = schema.columns();
        for (int c = 0; c < ordered.length; c++) {
            Column column = columns.get(c);
            String raw = raw(cells, c);
            String usual = column.usual(raw);
            if (usual != null) {
                ordered[c] = usual;
                continue;
            }
            Optional<String> content = content(raw, column);
            String typed = content.orElse("").strip();
            ordered[c] = fits ? plain(typed, column) : typed;
            asTyped |= !ordered[c].equals(typed);
            if (fits && fromFile[c] >= 0) {
                String fault =
                        content.isEmpty() ? "has a stray quote: " + Quoted.of(raw) : column.fault(typed, ordered[c]);
                if (!fault.isEmpty()) {
                    problems.error(schema.file(), line, column.name(), fault);
                    sound = false;
                }
            }
        }
        return new Row(schema.file(), line, places, ordered, sound);
    }

    /** A length that ends in a mark of inches needs no quotes around it. */
    private static Optional<String> content(String raw, Column column) {
        Optional<String> content = CsvText.content(raw);
        return content.isEmpty() && column.isLength() && !raw.strip().startsWith("\"") ? Optional.of(raw) : content;
    }

    /** Between semicolons a comma may be the mark of decimals, and is left to be refused. */
    private String plain(String typed, Column column) {
        return separator == Separator.SEMICOLON && typed.indexOf(',') >= 0 ? typed : column.plain(typed);
    }

    private String raggedness(String[] cells) {
        boolean open = CsvText.content(cells[cells.length - 1]).isEmpty();
        return "has " + cells.length + (cells.length == 1 ? " cell" : " cells") + " where the header has " + width
                + (open ? "; a quote in it is never closed" : "");
    }
}
