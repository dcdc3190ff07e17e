/**
 * What do the results say? Turns simulated columns into summary tables and decisions: the default method, where it stops
 * being the better one, and which assumptions move it.
 *
 * <p>As a library these types are stable, with those of the modules below that they need: {@link weatherlap.analysis.plan.HouseChoice},
 * {@link weatherlap.analysis.tables.HouseTable}, {@link weatherlap.analysis.tables.OpeningTable}, {@link
 * weatherlap.analysis.tables.ResultTable}, {@link weatherlap.datasets.assumptions.AssumptionTables}, {@link
 * weatherlap.datasets.portfolio.Portfolios}, {@link weatherlap.datasets.portfolio.DemoPortfolio}, {@link
 * weatherlap.datasets.climate.DemoClimate}, {@link weatherlap.datasets.table.Loaded}, {@link weatherlap.sim.rain.RainClimate}, {@link
 * weatherlap.sim.run.Simulator}. Of each the members that a test lists stay.
 */
package weatherlap.analysis;
