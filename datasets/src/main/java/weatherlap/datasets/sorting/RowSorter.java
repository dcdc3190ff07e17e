package weatherlap.datasets.sorting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Rows;
import weatherlap.datasets.table.Schema;

/**
 * Sorts the rows of a table that may be larger than memory: runs of bounded size are sorted and set aside, then merged. Rows of the same
 * key keep the order of the file.
 *
 * @param key by which a row is sorted
 * @param order of the keys
 * @param scratch takes the runs; a table of one run never gets there
 * @see "Knuth, The Art of Computer Programming, volume 3, section 5.4: external sorting"
 */
public record RowSorter(
        Schema schema, Function<Row, String> key, Comparator<String> order, Scratch scratch, Limits limits) {
    /**
     * How much is in memory at a time.
     *
     * @param runBytes of the rows of a run, about
     * @param mostMerged parts that are read at a time, 2 or more
     */
    public record Limits(long runBytes, int mostMerged) {
        public static final Limits USUAL = new Limits(4 << 20, 32);

        public Limits {
            if (mostMerged < 2) {
                throw new IllegalArgumentException("At least two parts are merged at a time, not " + mostMerged + ".");
            }
        }
    }

    /** The rows in order, once all of them are read. */
    public Rows sorted(Iterator<Row> rows) {
        List<Row> run = run(rows);
        if (!rows.hasNext()) {
            return Rows.of(run.iterator());
        }
        Deque<Scratch.Part> parts = new ArrayDeque<>();
        parts.add(RowPart.write(run.iterator(), scratch));
        while (rows.hasNext()) {
            parts.add(RowPart.write(run(rows).iterator(), scratch));
        }
        while (parts.size() > limits.mostMerged()) {
            try (Rows merged = merged(
                    Stream.generate(parts::remove).limit(limits.mostMerged()).toList())) {
                parts.add(RowPart.write(merged, scratch));
            }
        }
        return merged(List.copyOf(parts));
    }

    /** The next rows, as many as may be in memory, in order. */
    private List<Row> run(Iterator<Row> rows) {
        List<KeyedRow> run = new ArrayList<>();
        for (long bytes = 0; rows.hasNext() && bytes < limits.runBytes(); ) {
            Row row = rows.next();
            run.add(new KeyedRow(key.apply(row), row));
            bytes += row.bytes();
        }
        run.sort(KeyedRow.order(order));
        return run.stream().map(KeyedRow::row).toList();
    }

    private Rows merged(List<Scratch.Part> parts) {
        List<RowPart> sources =
                parts.stream().map(part -> RowPart.read(part, schema)).toList();
        return new MergedRows(sources, key, KeyedRow.order(order));
    }
}
