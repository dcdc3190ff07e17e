package weatherlap.datasets.portfolio;

import weatherlap.datasets.table.Folder;
import weatherlap.sim.house.House;

/**
 * The job that windows a day are quoted for: ten wood double hungs of 32 × 54 in. in a house of one story, sound frames, drywall
 * returns, vinyl siding, no lead.
 */
public final class StandardJob {
    private static final int YEAR = 2025;

    private StandardJob() {}

    public static House house() {
        return Portfolios.read(folder(), YEAR).orElseThrow().houses().get(0);
    }

    /** Its tables. */
    public static Folder folder() {
        return Folder.beside(StandardJob.class, "standard");
    }
}
