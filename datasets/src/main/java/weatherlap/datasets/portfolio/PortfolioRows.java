package weatherlap.datasets.portfolio;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import weatherlap.datasets.sorting.RowSorter;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Rows;
import weatherlap.datasets.table.Schema;

/** The three tables of a portfolio side by side, a house at a time, in the order of {@code house_id}. */
final class PortfolioRows implements Iterator<HouseGroup>, AutoCloseable {
    private final Comparator<String> order;
    private final List<HouseByHouse> tables = new ArrayList<>();
    private boolean complete = true;

    private PortfolioRows(Comparator<String> order) {
        this.order = order;
    }

    /** Tables that stand in an order. */
    static PortfolioRows standing(Folder folder, Comparator<String> order, Problems problems) {
        return of(order, schema -> folder.find(schema.file(), problems)
                .flatMap(source -> CsvRows.open(source, schema, problems)));
    }

    /** Tables in any order. */
    static PortfolioRows sorted(Folder folder, Scratch scratch, RowSorter.Limits limits, Problems problems) {
        Comparator<String> order = Ascending.BY_COUNT;
        return of(order, schema -> folder.find(schema.file(), problems)
                .flatMap(source -> CsvRows.open(source, schema, problems))
                .flatMap(rows -> sorted(rows, new RowSorter(rows.schema(), HouseId::folded, order, scratch, limits))));
    }

    private static Optional<Rows> sorted(CsvRows rows, RowSorter sorter) {
        try (rows) {
            Rows sorted = sorter.sorted(rows);
            if (rows.checkWhole()) {
                return Optional.of(sorted);
            }
            sorted.close();
            return Optional.empty();
        }
    }

    /** The rows of one house alone, whatever the capitals of its id; tables in any order. */
    static PortfolioRows ofOne(Folder folder, String id, Problems problems) {
        Predicate<String> wanted = text -> HouseId.folded(text).equals(HouseId.folded(id));
        return of(Ascending.BY_COUNT, schema -> folder.find(schema.file(), problems)
                .flatMap(source -> CsvRows.openThose(source, schema, HouseId.COLUMN, wanted, problems)));
    }

    /** @param open empty for a table that cannot be read to its end */
    private static PortfolioRows of(Comparator<String> order, Function<Schema, Optional<? extends Rows>> open) {
        PortfolioRows rows = new PortfolioRows(order);
        try {
            for (Schema schema : PortfolioTables.ALL) {
                Optional<? extends Rows> table = open.apply(schema);
                rows.complete = rows.complete && table.isPresent();
                rows.tables.add(
                        new HouseByHouse(table.isPresent() ? table.get() : Rows.of(Collections.emptyIterator())));
            }
            return rows;
        } catch (RuntimeException e) {
            rows.close();
            throw e;
        }
    }

    /** Whether all three tables can be read to their end, so that what is in none of them is nowhere. */
    boolean areComplete() {
        return complete;
    }

    /** Whether {@code houses.csv} has another house. */
    boolean hasHouse() {
        return tables.get(0).next().isPresent();
    }

    @Override
    public boolean hasNext() {
        return nextId().isPresent();
    }

    @Override
    public HouseGroup next() {
        String id = nextId().orElseThrow(NoSuchElementException::new);
        return new HouseGroup(
                tables.get(0).take(id), tables.get(1).take(id), tables.get(2).take(id));
    }

    private Optional<String> nextId() {
        Optional<String> first = Optional.empty();
        for (HouseByHouse table : tables) {
            Optional<String> next = table.next();
            if (first.isEmpty() || next.isPresent() && order.compare(next.get(), first.get()) < 0) {
                first = next;
            }
        }
        return first;
    }

    @Override
    public void close() {
        tables.forEach(HouseByHouse::close);
    }
}
