package weatherlap.analysis.drivers;

import java.util.Optional;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.Swing;

/**
 * One row of {@code drivers.csv}.
 *
 * @param assumption a table, a group of its rows, table/row, or the key of a scalar or a choice
 * @param group whether it is several rows
 * @param indices empty where the row was not asked about by itself, its swing being small
 * @param lowValue at which the low end of the swing is found, with its unit; empty for a table
 * @param highValue likewise the high end
 * @param worth of knowing the value, mean USD a house; empty for a table and for the risk
 */
public record DriverRow(
        String assumption,
        boolean group,
        Outcome outcome,
        Optional<Index> indices,
        Swing swing,
        String lowValue,
        String highValue,
        Optional<Worth> worth) {}
