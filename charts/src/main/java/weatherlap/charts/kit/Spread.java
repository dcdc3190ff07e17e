package weatherlap.charts.kit;

import weatherlap.sim.Check;

/**
 * The middle of a quantity and the range that holds eight in ten of its values: the 10, 50 and 90 % points, in the unit of
 * the chart. All three are equal where nothing varies.
 */
public record Spread(double low, double middle, double high) {
    public Spread {
        Check.finite("low", low);
        Check.within("middle", middle, low, Double.MAX_VALUE);
        Check.within("high", high, middle, Double.MAX_VALUE);
    }
}
