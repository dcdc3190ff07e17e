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
    private final Map<String, Integer> lines = new HashMap<>();
    private final Map<String, String> spellings = new HashMap<>();

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
        String folded = key.toLowerCase(Locale.ROOT);
        Integer earlier = lines.putIfAbsent(folded, row.line());
        String spelling = spellings.putIfAbsent(folded, key);
        String column = schema.key().get(schema.key().size() - 1);
        if (earlier != null && key.equals(spelling)) {
            row.error(problems, column, Quoted.of(key) + " is already in row " + earlier);
        } else if (earlier != null) {
            row.error(
                    problems,
                    column,
                    Quoted.of(key) + " differs from " + Quoted.of(spelling) + " in row " + earlier
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
