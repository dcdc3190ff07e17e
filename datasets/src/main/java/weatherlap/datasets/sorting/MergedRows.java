package weatherlap.datasets.sorting;

import java.util.Comparator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.function.Function;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Rows;

/** Several sorted sequences of rows as one. */
public final class MergedRows implements Rows {
    private final List<? extends Rows> sources;
    private final Function<Row, String> key;
    private final PriorityQueue<Head> heads;

    /** The next row of a source. */
    private record Head(KeyedRow next, Rows rest) {}

    public MergedRows(List<? extends Rows> sources, Function<Row, String> key, Comparator<KeyedRow> order) {
        this.sources = List.copyOf(sources);
        this.key = key;
        heads = new PriorityQueue<>(Comparator.comparing(Head::next, order));
        sources.forEach(this::take);
    }

    private void take(Rows source) {
        if (source.hasNext()) {
            Row row = source.next();
            heads.add(new Head(new KeyedRow(key.apply(row), row), source));
        }
    }

    @Override
    public boolean hasNext() {
        return !heads.isEmpty();
    }

    @Override
    public Row next() {
        if (heads.isEmpty()) {
            throw new NoSuchElementException();
        }
        Head head = heads.remove();
        take(head.rest());
        return head.next().row();
    }

    @Override
    public void close() {
        heads.clear();
        sources.forEach(Rows::close);
    }
}
