package weatherlap.datasets.portfolio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Rows;

/** Sorted rows of one table, taken a house at a time; rows without a {@code house_id} belong to none and are passed over. */
final class HouseByHouse implements AutoCloseable {
    private final Rows rows;
    private Row next;

    HouseByHouse(Rows rows) {
        this.rows = rows;
        next = advance();
    }

    private Row advance() {
        while (rows.hasNext()) {
            Row row = rows.next();
            if (row.has(HouseId.COLUMN)) {
                return row;
            }
        }
        return null;
    }

    /** The house that comes next, folded; empty at the end. */
    Optional<String> next() {
        return Optional.ofNullable(next).map(HouseId::folded);
    }

    /** The rows of a house; none where another comes next. */
    List<Row> take(String folded) {
        List<Row> taken = new ArrayList<>();
        while (next != null && HouseId.folded(next).equals(folded)) {
            taken.add(next);
            next = advance();
        }
        return taken;
    }

    @Override
    public void close() {
        rows.close();
    }
}
