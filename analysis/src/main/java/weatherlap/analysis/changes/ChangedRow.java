package weatherlap.analysis.changes;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.analysis.columns.Layout;

/**
 * A row of the assumptions that is not what it was.
 *
 * @param change in words: each column that differs, before and after
 */
public record ChangedRow(RowKey key, String change) {
    /** {@code rows.csv}. */
    public static final Layout<ChangedRow> LAYOUT = Layout.<ChangedRow>of(
                    "rows.csv", "Rows", "One row of the assumptions that differs between two runs.")
            .text("table", "table", "file of the row", row -> row.key().table())
            .text("row", "row", "key of the row", row -> row.key().row())
            .text("change", "change", "columns that differ, each before -> after", ChangedRow::change)
            .build();

    private static final String NOTHING = "(nothing)";

    /** @param before cells by column; empty: there was no such row; after likewise */
    public static ChangedRow of(RowKey key, Optional<Map<String, String>> before, Optional<Map<String, String>> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return new ChangedRow(key, before.isEmpty() ? "is new" : "is gone");
        }
        Map<String, String> was = before.orElseThrow();
        Map<String, String> is = after.orElseThrow();
        Set<String> columns = new LinkedHashSet<>(was.keySet());
        columns.addAll(is.keySet());
        return new ChangedRow(
                key,
                columns.stream()
                        .filter(column -> !was.getOrDefault(column, NOTHING).equals(is.getOrDefault(column, NOTHING)))
                        .map(column -> column + " " + was.getOrDefault(column, NOTHING) + " -> "
                                + is.getOrDefault(column, NOTHING))
                        .collect(Collectors.joining("; ")));
    }
}
