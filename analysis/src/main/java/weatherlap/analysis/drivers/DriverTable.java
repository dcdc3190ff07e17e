package weatherlap.analysis.drivers;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.columns.StudySchemas;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;

/** {@code drivers.csv}. */
public final class DriverTable {
    private DriverTable() {}

    public static ResultTable of(DriverStudy study) {
        TableBuilder table = new TableBuilder(StudySchemas.DRIVERS);
        for (DriverRow row : study.rows()) {
            table.row(
                    row.assumption(),
                    row.outcome().key(),
                    index(row, Index::firstOrder),
                    index(row, Index::firstOrderError),
                    index(row, Index::total),
                    index(row, Index::totalError),
                    row.swing().low(),
                    row.swing().high(),
                    row.worth().isPresent()
                            ? OptionalDouble.of(row.worth().get().value())
                            : OptionalDouble.empty());
        }
        return table.build();
    }

    private static OptionalDouble index(DriverRow row, ToDoubleFunction<Index> part) {
        return row.indices().stream().mapToDouble(part).findFirst();
    }
}
