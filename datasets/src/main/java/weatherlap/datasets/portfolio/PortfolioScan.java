package weatherlap.datasets.portfolio;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;

/**
 * A first walk through the tables of a portfolio, for their {@code house_id} alone.
 *
 * @param houses rows of {@code houses.csv}
 * @param names those that messages may hint at; none where there are too many to choose from
 * @param order in which all three tables stand; empty: they are not all in one order, have no rows, or cannot be read to their end
 */
public record PortfolioScan(int houses, Set<String> names, Optional<Comparator<String>> order) {
    /** A message hints at a name among no more. */
    static final int MOST_NAMES = 1000;

    /** How far a walk came, and whether nothing kept it from going on. */
    private record Walk(int rows, boolean unhindered) {}

    public static PortfolioScan of(Path folder) {
        return of(Folder.of(folder));
    }

    static PortfolioScan of(Folder folder) {
        Ascending order = new Ascending();
        Set<String> names = new HashSet<>();
        Walk houses = walk(folder, PortfolioTables.HOUSES, id -> {
            order.take(HouseId.folded(id));
            collect(id, names);
            return true;
        });
        boolean inOrder = houses.rows() > 0
                && houses.unhindered()
                && rises(folder, PortfolioTables.ELEVATIONS, order)
                && rises(folder, PortfolioTables.OPENINGS, order);
        return new PortfolioScan(houses.rows(), fewEnough(names), inOrder ? order.order() : Optional.empty());
    }

    /** The {@link #names} alone, without a walk through walls and openings. */
    static Set<String> names(Folder folder) {
        Set<String> names = new HashSet<>();
        walk(folder, PortfolioTables.HOUSES, id -> {
            collect(id, names);
            return names.size() <= MOST_NAMES;
        });
        return fewEnough(names);
    }

    private static void collect(String id, Set<String> names) {
        if (names.size() <= MOST_NAMES && !id.isEmpty()) {
            names.add(id);
        }
    }

    private static Set<String> fewEnough(Set<String> names) {
        return names.size() > MOST_NAMES ? Set.of() : Set.copyOf(names);
    }

    private static boolean rises(Folder folder, Schema schema, Ascending order) {
        order.restart();
        Walk walk = walk(folder, schema, id -> {
            order.take(HouseId.folded(id));
            return order.order().isPresent();
        });
        return walk.rows() > 0 && walk.unhindered() && order.order().isPresent();
    }

    /** Hands over the ids of {@code houses.csv}, in its order, as long as the taker wants more. */
    public static void forEachHouse(Path folder, Predicate<String> taker) {
        walk(Folder.of(folder), PortfolioTables.HOUSES, id -> id.isEmpty() || taker.test(id));
    }

    private static Walk walk(Folder folder, Schema schema, Predicate<String> taker) {
        Problems unheard = new Problems();
        Schema ids = new Schema(
                schema.file(), schema.meaning(), List.of(Column.key(HouseId.COLUMN, "key of the house")), List.of());
        return folder.find(schema.file(), unheard)
                .flatMap(source -> CsvRows.open(source, ids, unheard))
                .map(rows -> walk(rows, taker))
                .orElse(new Walk(0, false));
    }

    private static Walk walk(CsvRows rows, Predicate<String> taker) {
        try (rows) {
            int count = 0;
            boolean more = true;
            while (more && rows.hasNext()) {
                more = taker.test(HouseId.of(rows.next()));
                count++;
            }
            return new Walk(count, !rows.isCutShort());
        }
    }
}
