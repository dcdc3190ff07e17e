package weatherlap.datasets.portfolio;

import weatherlap.datasets.table.Folder;
import weatherlap.sim.house.Portfolio;

/** The portfolio that comes with the program: houses of Drizzlewick, a town that does not exist. */
public final class DemoPortfolio {
    /** No house of the demo is younger, so that it stays good in every later year. */
    private static final int YEAR = 2025;

    private DemoPortfolio() {}

    public static Portfolio load() {
        return Portfolios.read(folder(), YEAR).orElseThrow();
    }

    /** Its tables. */
    public static Folder folder() {
        return Folder.beside(DemoPortfolio.class, "demo");
    }
}
