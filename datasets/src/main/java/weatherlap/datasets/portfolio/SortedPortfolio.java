package weatherlap.datasets.portfolio;

import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.KeyCheck;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;

/**
 * A portfolio whose three tables stand in the order of {@code house_id}, capitals or not, by letters or as people count, read house by
 * house. Nothing is kept but the house at hand, so that its size does not matter.
 *
 * <p>After the first problem no more houses come, but the tables are read to their end, so that {@link #errors()} has every problem.
 */
public final class SortedPortfolio implements Iterator<House>, AutoCloseable {
    private static final String HOUSE = "house_id";

    /** The tables are not in that order, or a row belongs to no house: they have to be read whole. */
    public static final class OutOfOrder extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private final CsvRows houses;
    private final Walker elevations;
    private final Walker openings;
    private final HouseMaker maker;
    private final Problems problems;
    private final Ascending order = new Ascending();
    private House next;

    private SortedPortfolio(
            CsvRows houses, CsvRows elevations, CsvRows openings, FitCheck fit, int thisYear, Problems problems) {
        this.houses = houses;
        this.elevations = new Walker(PortfolioTables.ELEVATIONS, elevations, problems);
        this.openings = new Walker(PortfolioTables.OPENINGS, openings, problems);
        this.maker = new HouseMaker(thisYear, Optional.of(fit), problems);
        this.problems = problems;
        next = advance();
    }

    /**
     * Opens the three tables of a folder, which are held against the assumptions too.
     *
     * @throws OutOfOrder if the tables have to be read whole; also while houses are read
     */
    public static SortedPortfolio open(Path folder, Assumptions assumptions) {
        Problems problems = new Problems();
        List<CsvRows> open = new ArrayList<>();
        for (Schema schema : List.of(PortfolioTables.HOUSES, PortfolioTables.ELEVATIONS, PortfolioTables.OPENINGS)) {
            Folder.of(folder)
                    .find(schema.file(), problems)
                    .flatMap(source -> CsvRows.open(source, schema, problems))
                    .ifPresent(open::add);
        }
        if (open.size() < 3) {
            open.forEach(CsvRows::close);
            throw new OutOfOrder();
        }
        int thisYear = Year.now(ZoneOffset.UTC).getValue();
        return new SortedPortfolio(
                open.get(0), open.get(1), open.get(2), new FitCheck(assumptions), thisYear, problems);
    }

    @Override
    public boolean hasNext() {
        return next != null;
    }

    @Override
    public House next() {
        if (next == null) {
            throw new NoSuchElementException();
        }
        House house = next;
        next = advance();
        return house;
    }

    /** Every problem found; complete when there is no next house. */
    public List<Problem> errors() {
        return problems.errors();
    }

    /** What is doubtful but usable; likewise. */
    public List<Problem> warnings() {
        return problems.warnings();
    }

    @Override
    public void close() {
        houses.close();
        elevations.rows.close();
        openings.rows.close();
    }

    private House advance() {
        while (houses.hasNext()) {
            Row row = houses.next();
            if (!row.has(HOUSE) || !order.takes(folded(row))) {
                throw new OutOfOrder();
            }
            HouseRows rows = new HouseRows(row, elevations.of(row), openings.of(row));
            if (!rows.everyOpeningHasItsWall()) {
                throw new OutOfOrder();
            }
            Optional<House> house = maker.make(rows);
            if (house.isPresent() && !problems.hasErrors()) {
                return house.orElseThrow();
            }
        }
        if (!elevations.isAtEnd() || !openings.isAtEnd()) {
            throw new OutOfOrder();
        }
        return null;
    }

    private static String folded(Row row) {
        return row.text(HOUSE).toLowerCase(Locale.ROOT);
    }

    /** Rows of one table, taken house by house. */
    private static final class Walker {
        private final Schema schema;
        private final CsvRows rows;
        private final Problems problems;
        private Row next;

        Walker(Schema schema, CsvRows rows, Problems problems) {
            this.schema = schema;
            this.rows = rows;
            this.problems = problems;
            next = take();
        }

        private Row take() {
            return rows.hasNext() ? rows.next() : null;
        }

        /** The rows of a house, which must come next. */
        List<Row> of(Row house) {
            String id = folded(house);
            KeyCheck keys = new KeyCheck(schema, problems);
            List<Row> taken = new ArrayList<>();
            while (next != null && folded(next).equals(id)) {
                if (!next.text(HOUSE).equals(house.text(HOUSE))) {
                    throw new OutOfOrder();
                }
                keys.check(next);
                taken.add(next);
                next = take();
            }
            if (taken.isEmpty()) {
                throw new OutOfOrder();
            }
            return taken;
        }

        boolean isAtEnd() {
            return next == null;
        }
    }
}
