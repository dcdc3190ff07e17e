package weatherlap.reports.format;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What pages call the tables that a run read, where they came from a workbook: its name and the sheet. Tables of folders go by their own names.
 *
 * @param tables what a table is called, by its file name
 * @param headings what its columns are called, by file name and column, of a table that goes by headings of its own; others are not in it
 * @param cells where its rows begin, by file name and key
 */
public record SourceNames(
        Map<String, String> tables, Map<String, Map<String, String>> headings, Map<String, Map<String, String>> cells) {
    /** Every table came from a folder. */
    public static final SourceNames PLAIN = new SourceNames(Map.of(), Map.of(), Map.of());

    private static final String LEFT_OUT = "; what it leaves out is as usual";

    public SourceNames {
        tables = Map.copyOf(tables);
        headings = Map.copyOf(headings);
        cells = Map.copyOf(cells);
    }

    /** {@code labour-steps.csv}, or {@code shop.xlsx, sheet Labor steps}. */
    public String table(String file) {
        return tables.getOrDefault(file, file);
    }

    /** The key of a row and the cell in which it stands, where that is known: {@code unload (A2)}. */
    public String row(String file, String key) {
        String cell = cells.getOrDefault(file, Map.of()).get(key);
        return cell == null ? key : key + " (" + cell + ")";
    }

    /** A row and its table: {@code labour-steps.csv:unload}, or {@code shop.xlsx, sheet Labor steps, unload (A2)}. */
    public String rowOfTable(String file, String key) {
        return tables.containsKey(file) ? table(file) + ", " + row(file, key) : file + ":" + key;
    }

    /** Columns of several tables, {@code openings.csv: room, operation; houses.csv: region}, by what they are called. */
    public String columns(String listed) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (String part : listed.split("; ")) {
            String[] table = part.split(": ", 2);
            boolean known = table.length == 2 && tables.containsKey(table[0]);
            parts.merge(
                    known ? table(table[0]) + ": " : "",
                    known ? columns(table[0], table[1]) : part,
                    (before, more) -> before + (before.isEmpty() || more.isEmpty() ? "" : known ? ", " : "; ") + more);
        }
        String rest = Arrays.stream(listed.split("; ")).anyMatch(part -> headings.containsKey(part.split(": ")[0]))
                ? LEFT_OUT
                : "";
        return parts.entrySet().stream()
                        .map(part -> part.getKey() + part.getValue())
                        .collect(Collectors.joining("; "))
                + rest;
    }

    private String columns(String file, String names) {
        Map<String, String> own = headings.get(file);
        return own == null
                ? names
                : Arrays.stream(names.split(", "))
                        .filter(own::containsKey)
                        .map(own::get)
                        .distinct()
                        .collect(Collectors.joining(", "));
    }
}
