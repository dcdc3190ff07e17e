/** What a run foresaw beside what happened, as tables, a page and a sheet. */
package weatherlap.reports.backtest;
