package weatherlap.datasets.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reports rows that repeat the key of an earlier one, be it in other capital letters. */
public final class KeyCheck {
    private final Schema schema;
    private final Problems problems;
    private final List<String> needed;
    /** By key without capitals. */
    private final Map<String, Seen> first = new HashMap<>();

    private record Seen(int line, String key) {}

    public KeyCheck(Schema schema, Problems problems) {
        this.schema = schema;
        this.problems = problems;
        needed = new ArrayList<>();
        for (Column column : schema.columns()) {
            if (!column.mayBeEmpty() && schema.key().contains(column.name())) {
                needed.add(column.name());
            }
        }
    }

    /** Holds a row against those before it; one that lacks a part of its key is passed over. */
    public void check(Row row) {
        if (schema.key().isEmpty() || !hasKey(row)) {
            return;
        }
        String key = row.key(schema);
        Seen earlier = first.putIfAbsent(key.toLowerCase(Locale.ROOT), new Seen(row.line(), key));
        if (earlier == null) {
            return;
        }
        String column = schema.key().get(schema.key().size() - 1);
        if (key.equals(earlier.key())) {
            row.error(problems, column, Quoted.of(key) + " is already in row " + earlier.line());
        } else {
            row.error(
                    problems,
                    column,
                    Quoted.of(key) + " differs from " + Quoted.of(earlier.key()) + " in row " + earlier.line()
                            + " only in capital letters");
        }
    }

    private boolean hasKey(Row row) {
        for (String column : needed) {
            if (!row.has(column)) {
                return false;
            }
        }
        return true;
    }
}
