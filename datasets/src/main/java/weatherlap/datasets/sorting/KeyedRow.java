package weatherlap.datasets.sorting;

import java.util.Comparator;
import weatherlap.datasets.table.Row;

/** A row and the text by which it is sorted. */
public record KeyedRow(String key, Row row) {
    /** By key; rows of one key as in the file. */
    public static Comparator<KeyedRow> order(Comparator<String> keys) {
        return Comparator.comparing(KeyedRow::key, keys)
                .thenComparingInt(keyed -> keyed.row().line());
    }
}
