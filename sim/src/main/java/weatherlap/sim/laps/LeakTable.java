package weatherlap.sim.laps;

import weatherlap.sim.Check;

/**
 * The {@link DamageCurve} of one first line, tabulated over ln x so that a draw costs one look-up: damage within the horizon, and
 * the discounted damage within the warranty and within the horizon, between knots on a straight line. At the first knot and below it
 * nothing is kept; above the last a single year does damage even past a sound line, or the water exceeds any that a wall can see.
 *
 * <p>Values lie at most 1e-3 off the curve for spreads from 0.5 to 2 (a test holds it there).
 */
final class LeakTable {
    /** Numbers a knot: each value, and by how much it is greater at the next knot. */
    static final int COLUMNS = 6;

    /** Within a knot: damage within the horizon. */
    static final int HORIZON = 0;

    /** Within a knot: discounted damage within the horizon. */
    static final int DISCOUNTED = 2;

    /** Within a knot: discounted damage within the warranty. */
    static final int WARRANTY = 4;

    private static final int INTERVALS = 1024;
    private static final double SMALLEST_LITRES = 1e-4;
    private static final double LARGEST_LITRES = 1e4;

    final double lowest;
    final double knotsPerLog;
    final double[] values;

    /** Position up to which every value is 0. */
    final double lastDry;

    LeakTable(LineOfDefence line, Fragility fragility, int horizonYears, int warrantyYears, double discountRate) {
        Check.within("horizon", horizonYears, 1, 1000);
        lowest = Math.log(Math.max(SMALLEST_LITRES, fragility.dryingLitres()));
        knotsPerLog = INTERVALS / (Math.log(LARGEST_LITRES) - lowest);
        values = new double[(INTERVALS + 2) * COLUMNS];
        double[] worth = worth(Math.max(horizonYears, warrantyYears), discountRate);
        DamageCurve curve = new DamageCurve(line, fragility, Math.max(horizonYears, warrantyYears));
        for (int knot = 1; knot < INTERVALS + 2; knot++) {
            double[] damaged = curve.byYear(Math.exp(lowest + Math.min(knot, INTERVALS) / knotsPerLog));
            set(knot, HORIZON, damaged[horizonYears]);
            set(knot, DISCOUNTED, discounted(damaged, horizonYears, worth));
            set(knot, WARRANTY, discounted(damaged, warrantyYears, worth));
        }
        int dry = 0;
        while (dry < INTERVALS && isDry(dry + 1)) {
            dry++;
        }
        lastDry = dry;
    }

    private boolean isDry(int knot) {
        int at = knot * COLUMNS;
        return values[at + HORIZON] == 0 && values[at + DISCOUNTED] == 0 && values[at + WARRANTY] == 0;
    }

    private void set(int knot, int column, double value) {
        int at = knot * COLUMNS + column;
        values[at] = value;
        values[at - COLUMNS + 1] = value - values[at - COLUMNS];
    }

    /** Damage in year t costs as much today as 1/(1 + i)^(t − 1/2) of it. */
    static double discounted(double[] damagedByYear, int years, double discountRate) {
        return discounted(damagedByYear, years, worth(years, discountRate));
    }

    /** By year, from 1. */
    private static double[] worth(int years, double discountRate) {
        double[] worth = new double[years + 1];
        for (int year = 1; year <= years; year++) {
            worth[year] = Math.pow(1 + discountRate, 0.5 - year);
        }
        return worth;
    }

    private static double discounted(double[] damagedByYear, int years, double[] worth) {
        double total = 0;
        for (int year = 1; year <= years; year++) {
            total += (damagedByYear[year] - damagedByYear[year - 1]) * worth[year];
        }
        return total;
    }

    /** Last position that may be looked up. */
    static double lastPosition() {
        return INTERVALS;
    }

    private double at(double litresPerYear, int column) {
        double position = (Math.log(litresPerYear) - lowest) * knotsPerLog;
        position = Math.min(Math.max(position, 0), lastPosition());
        int knot = (int) position;
        int at = knot * COLUMNS + column;
        return values[at] + (position - knot) * values[at + 1];
    }

    /** Chance that a standing fault with x litres a year does damage within the horizon. */
    double horizon(double litresPerYear) {
        return at(litresPerYear, HORIZON);
    }

    /** Mean discounted number of first damages within the warranty, 0 to 1. */
    double warranty(double litresPerYear) {
        return at(litresPerYear, WARRANTY);
    }

    /** The same within the horizon. */
    double discounted(double litresPerYear) {
        return at(litresPerYear, DISCOUNTED);
    }
}
