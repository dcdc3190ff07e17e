package weatherlap.datasets.portfolio;

import java.util.Locale;
import weatherlap.datasets.table.Row;

/** The column that all three tables share. */
final class HouseId {
    static final String COLUMN = "house_id";

    private HouseId() {}

    /** Ids that differ in capital letters alone are sorted as one. */
    static String folded(String id) {
        return id.toLowerCase(Locale.ROOT);
    }

    static String folded(Row row) {
        return folded(of(row));
    }

    static String of(Row row) {
        return row.text(COLUMN);
    }
}
