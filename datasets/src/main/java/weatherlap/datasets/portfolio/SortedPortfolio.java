package weatherlap.datasets.portfolio;

import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import weatherlap.datasets.sorting.RowSorter;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;

/**
 * A portfolio read house by house in the order of {@code house_id}, capitals or not. Tables that stand in that order, by letters or as
 * people count, are read as they stand; others are sorted first, as people count. Nothing is kept but the house at hand and what the
 * sorting sets aside.
 *
 * <p>After the first problem no more houses come, but the tables are read to their end, so that {@link #errors()} has every problem.
 */
public final class SortedPortfolio implements Iterator<House>, AutoCloseable {
    /** A house, and the line of {@code houses.csv} on which it begins. */
    record Placed(int line, House house) {}

    private final PortfolioRows rows;
    private final Set<String> names;
    private final boolean hasNames;
    private final HouseMaker maker;
    private final Problems problems;
    private final Queue<Placed> ready = new ArrayDeque<>();

    /** @param names of houses that messages may hint at */
    SortedPortfolio(PortfolioRows rows, Set<String> names, HouseMaker maker, Problems problems) {
        this.rows = rows;
        this.names = names;
        this.hasNames = rows.hasHouse();
        this.maker = maker;
        this.problems = problems;
        advance();
    }

    /**
     * Opens the three tables of a folder.
     *
     * @param assumptions against which the houses are held; empty: they are held against none
     * @param scratch takes what tables in no order are sorted with
     */
    public static SortedPortfolio open(
            Path folder, PortfolioScan scan, Optional<Assumptions> assumptions, Scratch scratch) {
        return open(Folder.of(folder), scan, assumptions, scratch, RowSorter.Limits.USUAL, thisYear());
    }

    static SortedPortfolio open(
            Folder folder,
            PortfolioScan scan,
            Optional<Assumptions> assumptions,
            Scratch scratch,
            RowSorter.Limits limits,
            int thisYear) {
        Problems problems = new Problems();
        PortfolioRows rows = scan.order()
                .map(order -> PortfolioRows.standing(folder, order, problems))
                .orElseGet(() -> PortfolioRows.sorted(folder, scratch, limits, problems));
        HouseMaker maker = new HouseMaker(thisYear, scan.houses() > 1, assumptions.map(FitCheck::new), problems);
        return new SortedPortfolio(rows, scan.names(), maker, problems);
    }

    static int thisYear() {
        return Year.now(ZoneOffset.UTC).getValue();
    }

    @Override
    public boolean hasNext() {
        return !ready.isEmpty();
    }

    @Override
    public House next() {
        return nextPlaced().house();
    }

    Placed nextPlaced() {
        if (ready.isEmpty()) {
            throw new NoSuchElementException();
        }
        Placed house = ready.remove();
        advance();
        return house;
    }

    /** Every problem found, by file and row; complete when there is no next house. */
    public List<Problem> errors() {
        return byRow(problems.errors());
    }

    /** What is doubtful but usable; likewise. */
    public List<Problem> warnings() {
        return byRow(problems.warnings());
    }

    /** What came of the reading, once there is no next house: a value made of the houses, or every error. */
    public <T> Loaded<T> loaded(T value) {
        return new Loaded<>(errors().isEmpty() ? Optional.of(value) : Optional.empty(), errors(), warnings());
    }

    private static List<Problem> byRow(List<Problem> found) {
        return found.stream()
                .sorted(Comparator.comparingInt((Problem problem) -> file(problem))
                        .thenComparingInt(Problem::row))
                .toList();
    }

    private static int file(Problem problem) {
        int place = PortfolioTables.FILES.indexOf(problem.file());
        return place < 0 ? PortfolioTables.FILES.size() : place;
    }

    @Override
    public void close() {
        rows.close();
    }

    private void advance() {
        while (ready.isEmpty() && rows.hasNext()) {
            HouseGroup group = rows.next();
            group.checkKeys(problems);
            if (rows.areComplete()) {
                if (hasNames) {
                    group.checkReferences(names, problems);
                }
                group.split().forEach(own -> maker.make(own)
                        .ifPresent(house -> ready.add(new Placed(own.house().line(), house))));
            }
            if (problems.hasErrors()) {
                ready.clear();
            }
        }
    }
}
