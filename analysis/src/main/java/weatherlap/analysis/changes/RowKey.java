package weatherlap.analysis.changes;

import java.util.Comparator;
import weatherlap.sim.explain.Origin;

/**
 * A row of an assumption table.
 *
 * @param table file name, such as {@code labour-steps.csv}
 * @param row its key there
 */
public record RowKey(String table, String row) implements Comparable<RowKey> {
    private static final Comparator<RowKey> ORDER =
            Comparator.comparing(RowKey::table).thenComparing(RowKey::row);

    static RowKey of(Origin origin) {
        return new RowKey(origin.table(), origin.row());
    }

    @Override
    public int compareTo(RowKey other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return table + " " + row;
    }
}
