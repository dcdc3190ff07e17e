package weatherlap.reports.format;

/**
 * A chart over a rectangle of cells, counted from 0.
 *
 * @param bottom row below it
 * @param right column right of it
 */
public record PlacedChart(ColumnChart chart, int top, int left, int bottom, int right) {}
