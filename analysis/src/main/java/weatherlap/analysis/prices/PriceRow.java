package weatherlap.analysis.prices;

import weatherlap.sim.method.Method;
import weatherlap.sim.run.Summary;

/**
 * What is asked for windows or houses that are alike.
 *
 * @param what window or house
 * @param story on which the windows are, or how many the houses have
 * @param size group
 * @param count of windows or houses
 * @param priceUsd over them: mean, and what one in ten, half and nine in ten are below; a window's is its share of the price of its house
 * @param onceUsd part of a house's price that one window would bear as well as all, mean
 */
public record PriceRow(
        String what, Method method, int story, SizeGroup size, int count, Summary priceUsd, double onceUsd) {
    public static final String WINDOW = "window";
    public static final String HOUSE = "house";
}
