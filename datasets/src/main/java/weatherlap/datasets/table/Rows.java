package weatherlap.datasets.table;

import java.util.Iterator;

/** Rows of one table one after another, from where they are read. */
public interface Rows extends Iterator<Row>, AutoCloseable {
    @Override
    void close();

    /** Rows in memory. */
    static Rows of(Iterator<Row> rows) {
        return new Rows() {
            @Override
            public boolean hasNext() {
                return rows.hasNext();
            }

            @Override
            public Row next() {
                return rows.next();
            }

            @Override
            public void close() {}
        };
    }
}
