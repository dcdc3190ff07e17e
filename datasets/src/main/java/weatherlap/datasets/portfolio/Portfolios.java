package weatherlap.datasets.portfolio;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.portfolio.SortedPortfolio.Placed;
import weatherlap.datasets.sorting.RowSorter.Limits;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;

/** Reads a portfolio folder whole, or one house of it. */
public final class Portfolios {
    private Portfolios() {}

    /** The portfolio of a folder in the order of {@code houses.csv}, or every problem in it. */
    public static Loaded<Portfolio> read(Path folder) {
        return read(Folder.of(folder));
    }

    /** The same, held against assumptions too: regions have wages, units fit into their openings and show glass. */
    public static Loaded<Portfolio> read(Path folder, Assumptions assumptions) {
        return read(Folder.of(folder), SortedPortfolio.thisYear(), Optional.of(assumptions));
    }

    /** The same of tables wherever they are. */
    public static Loaded<Portfolio> read(Folder folder) {
        return read(folder, SortedPortfolio.thisYear());
    }

    /** The same from wherever the three tables lie. */
    public static Loaded<Portfolio> read(Folder folder, Assumptions assumptions) {
        return read(folder, SortedPortfolio.thisYear(), Optional.of(assumptions));
    }

    /** @param thisYear no house is built after it */
    public static Loaded<Portfolio> read(Folder folder, int thisYear) {
        return read(folder, thisYear, Optional.empty());
    }

    private static Loaded<Portfolio> read(Folder folder, int thisYear, Optional<Assumptions> assumptions) {
        PortfolioScan scan = PortfolioScan.of(folder);
        return whole(SortedPortfolio.open(folder, scan, assumptions, Scratch.inMemory(), Limits.USUAL, thisYear));
    }

    /**
     * The portfolio of one house, or of none where no row of {@code houses.csv} has its id. Rows of other houses are passed over, and not
     * checked.
     *
     * @param assumptions against which the house is held; empty: it is held against none
     */
    public static Loaded<Portfolio> readHouse(Path folder, String id, Optional<Assumptions> assumptions) {
        Problems problems = new Problems();
        HouseMaker maker = new HouseMaker(SortedPortfolio.thisYear(), false, assumptions.map(FitCheck::new), problems);
        Folder tables = Folder.of(folder);
        PortfolioRows rows = PortfolioRows.ofOne(tables, id, problems);
        return whole(new SortedPortfolio(rows, PortfolioScan.names(tables), maker, problems));
    }

    /** Whether houses that were read go together with assumptions, as {@link #read(Path, Assumptions)} asks of their rows. */
    public static boolean fit(List<House> houses, Assumptions assumptions) {
        FitCheck fit = new FitCheck(assumptions);
        return houses.stream().allMatch(fit::fits);
    }

    private static Loaded<Portfolio> whole(SortedPortfolio houses) {
        try (houses) {
            List<Placed> placed = new ArrayList<>();
            while (houses.hasNext()) {
                placed.add(houses.nextPlaced());
            }
            placed.sort(Comparator.comparingInt(Placed::line));
            return houses.loaded(
                    new Portfolio(placed.stream().map(Placed::house).toList()));
        }
    }
}
