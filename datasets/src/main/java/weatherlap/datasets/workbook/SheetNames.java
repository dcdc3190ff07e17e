package weatherlap.datasets.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How messages name what stands in a workbook: {@code Windows!F17:frame_width_in} for {@code openings.csv:17:frame_width_in}.
 *
 * @param sheets by the file name of the table
 */
public record SheetNames(Map<String, Sheet> sheets) {
    /** Name of the file beside the tables. */
    public static final String FILE = ".weatherlap-sheets";

    private static final Pattern PLACE = Pattern.compile(
            "(?<![\\w/\\\\.-])([a-z][a-z-]*\\.(?:csv|toml))(?::(\\d{1,7}))?(?::([a-z][a-z0-9_]*))?(?=[:; ,]|$)");

    private static final Pattern MISSING =
            Pattern.compile("([a-z-]+\\.(?:csv|toml)): is missing from the folder \".*?\"");

    public SheetNames {
        sheets = Map.copyOf(sheets);
    }

    /**
     * One sheet.
     *
     * @param name as the workbook has it
     * @param letters of the columns, by their names; none: it is a table of its own, whose places are line and column
     * @param called what columns are called in it, where that is not their name
     * @param cells in which single names stand, where the sheet has a row for each; none: it is a table like others
     */
    public record Sheet(
            String name, Map<String, String> letters, Map<String, String> called, Map<String, String> cells) {
        public Sheet {
            letters = new LinkedHashMap<>(letters);
            called = new LinkedHashMap<>(called);
            cells = new LinkedHashMap<>(cells);
        }

        public Sheet(String name, Map<String, String> letters, Map<String, String> called) {
            this(name, letters, called, Map.of());
        }

        public Sheet(String name, Map<String, String> letters) {
            this(name, letters, Map.of());
        }

        private String place(String row, String column) {
            if (!cells.isEmpty()) {
                return name
                        + (column == null
                                ? ""
                                : (cells.containsKey(column) ? "!" + cells.get(column) : "") + ":" + column);
            }
            String own = column == null ? "" : ":" + called.getOrDefault(column, column);
            if (row == null) {
                return name + own;
            }
            return letters.isEmpty()
                    ? name + ":" + row + own
                    : name + "!" + letters.getOrDefault(called.getOrDefault(column, column), "") + row + own;
        }
    }

    /** The names as a text that {@link #in} finds in a folder of the tables, under the name {@link #FILE}. */
    public String text() {
        StringBuilder lines = new StringBuilder();
        sheets.forEach((file, sheet) -> {
            lines.append(file).append('\t').append(sheet.name()).append('\n');
            sheet.letters().forEach((column, letter) -> lines.append('\t')
                    .append(column.replace('\t', ' '))
                    .append('\t')
                    .append(letter)
                    .append('\n'));
            sheet.called().forEach((column, own) -> lines.append("\t\t")
                    .append(column)
                    .append('\t')
                    .append(own)
                    .append('\n'));
            sheet.cells().forEach((row, cell) -> lines.append("\t\t\t")
                    .append(row)
                    .append('\t')
                    .append(cell)
                    .append('\n'));
        });
        return lines.toString();
    }

    /** The names of a folder whose tables came from a workbook; none of any other. */
    public static SheetNames in(Path folder) {
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        if (Files.isRegularFile(folder.resolve(FILE))) {
            try {
                String file = "";
                for (String line : Files.readAllLines(folder.resolve(FILE))) {
                    String[] parts = line.split("\t", -1);
                    if (parts.length == 5) {
                        sheets.get(file).cells.put(parts[3], parts[4]);
                    } else if (parts.length == 4) {
                        sheets.get(file).called.put(parts[2], parts[3]);
                    } else if (parts.length == 3) {
                        sheets.get(file).letters.put(parts[1], parts[2]);
                    } else {
                        file = parts[0];
                        sheets.put(file, new Sheet(parts[1], Map.of()));
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return new SheetNames(sheets);
    }

    /** A line of a message with the places of these sheets in place of those of their tables. */
    public String said(String line) {
        Matcher missing = MISSING.matcher(line);
        if (missing.find() && !sheets.isEmpty()) {
            String sheet = SheetTable.ALL.stream()
                    .filter(table -> table.file().equals(missing.group(1)))
                    .map(SheetTable::sheet)
                    .findFirst()
                    .orElse(missing.group(1));
            return missing.replaceFirst(Matcher.quoteReplacement(sheet + ": the workbook has no sheet of this name"));
        }
        Matcher places = PLACE.matcher(line);
        return places.replaceAll(found -> Matcher.quoteReplacement(place(found)));
    }

    private String place(MatchResult found) {
        Sheet sheet = sheets.get(found.group(1));
        return sheet == null ? found.group() : sheet.place(found.group(2), found.group(3));
    }

    /** A, B, … Z, AA, … of a column, from 0. */
    public static String letters(int column) {
        return column < 0 ? "" : letters(column / 26 - 1) + (char) ('A' + column % 26);
    }
}
