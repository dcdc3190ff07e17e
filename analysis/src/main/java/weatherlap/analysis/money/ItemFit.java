package weatherlap.analysis.money;

import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.ThreePoint;

/**
 * One item as the records have it.
 *
 * @param used packages over those that the tables foresee, waste in
 * @param paid for a package, over the table's mean price
 * @param estimated packages used over those that the shop estimated
 * @param whole whether only whole packages were recorded, of which half a one is taken off for what is left in the last
 */
public record ItemFit(Material item, Level used, Level paid, Level estimated, boolean whole) {
    /** Waste that makes the tables foresee what was used; none where less was used than ends up in the wall. */
    public double wasteFraction() {
        return waste(used.factor());
    }

    public double lowWaste() {
        return waste(used.low());
    }

    public double highWaste() {
        return waste(used.high());
    }

    private double waste(double factor) {
        return Math.max(0, (1 + item.wasteFraction()) * factor - 1);
    }

    /** Whether even without waste the tables foresee more than was used. */
    public boolean foreseenTooHigh() {
        return used.isSeen() && (1 + item.wasteFraction()) * used.high() < 1;
    }

    /** The price of a package, its mean and its range moved; the range drawn together as far as the records tell. */
    public ThreePoint price() {
        ThreePoint moved = item.price().times(paid.factor());
        double before = Math.sqrt(item.price().variance()) / item.price().mean();
        double closer = before == 0 ? 1 : Math.min(1, paid.error() / before);
        double mean = moved.mean();
        return new ThreePoint(
                mean - closer * (mean - moved.low()),
                mean + closer * (moved.likely() - mean),
                mean + closer * (moved.high() - mean));
    }

    boolean isSeen() {
        return used.isSeen() || paid.isSeen() || estimated.isSeen();
    }
}
