package weatherlap.analysis.drivers;

import java.util.Optional;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.Swing;

/**
 * One row of {@code drivers.csv}.
 *
 * @param assumption a table, or table/row, or the key of a scalar
 * @param group whether it is a whole table
 * @param indices empty where the row was not asked about by itself, its swing being small
 * @param worth of knowing the value, mean USD a house; empty for a table and for the risk
 */
public record DriverRow(
        String assumption,
        boolean group,
        Outcome outcome,
        Optional<Index> indices,
        Swing swing,
        Optional<Worth> worth) {}
