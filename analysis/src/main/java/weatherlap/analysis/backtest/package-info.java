/**
 * Did the run foresee what happened? Hours, days, material, price and calls of finished jobs beside what the tables, the tables fitted to the
 * other jobs, and a plain average a window foresaw of them: {@link weatherlap.analysis.backtest.Score}, {@link
 * weatherlap.analysis.backtest.CalibrationCurve}, {@link weatherlap.analysis.backtest.SegmentBias}.
 */
package weatherlap.analysis.backtest;
