package weatherlap.reports.spark;

import java.io.Serializable;
import java.util.List;
import weatherlap.analysis.tables.PortfolioSum;

/**
 * What came of some houses in a row.
 *
 * @param houses their ids
 * @param texts rows of CSV for each of the result files
 * @param sum over them
 * @param doubtful how many cells are doubtful but usable
 * @param problems of tables that cannot be read, in which case all else is empty
 */
record Part(List<String> houses, List<byte[]> texts, PortfolioSum sum, int doubtful, List<String> problems)
        implements Serializable {}
