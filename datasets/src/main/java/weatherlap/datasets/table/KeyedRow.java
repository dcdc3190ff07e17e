package weatherlap.datasets.table;

import java.util.Comparator;

/** A row and the text by which it is sorted. */
record KeyedRow(String key, Row row) {
    /** By key; rows of one key as in the file. */
    static Comparator<KeyedRow> order(Comparator<String> keys) {
        return Comparator.comparing(KeyedRow::key, keys)
                .thenComparingInt(keyed -> keyed.row().line());
    }
}
