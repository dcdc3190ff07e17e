package weatherlap.analysis.exposure;

import weatherlap.analysis.columns.StudySchemas;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;
import weatherlap.sim.rain.DrivingRainRose;

/** The table that {@code exposure} writes. */
public final class ExposureTable {
    private ExposureTable() {}

    /** One row a bearing, in the order of the rose. */
    public static ResultTable of(DrivingRainRose rose) {
        TableBuilder table = new TableBuilder(StudySchemas.EXPOSURE);
        for (DrivingRainRose.Row row : rose.rows()) {
            table.row(
                    row.bearingDeg(),
                    row.isoLitresPerM2Year(),
                    row.ashraeLitresPerM2Year(),
                    row.worstSpellLitresPerM2(),
                    row.wetHours());
        }
        return table.build();
    }
}
