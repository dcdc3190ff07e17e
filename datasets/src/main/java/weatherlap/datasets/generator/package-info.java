/**
 * Which houses might there be? Makes portfolios of a mix: a table of shares, each with its basis.
 *
 * <p>A house depends on the seed and its own number alone, so that the first sixty of a hundred are the sixty. Windows stand in rows by
 * storey with their heads in line, each in the middle of its bay; so none overlaps another, and none stands above the eave.
 */
package weatherlap.datasets.generator;
