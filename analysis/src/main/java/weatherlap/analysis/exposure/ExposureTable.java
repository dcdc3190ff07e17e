package weatherlap.analysis.exposure;

import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.rain.DrivingRainRose;

/** The table that {@code exposure} writes: driving rain at each bearing. */
public final class ExposureTable {
    public static final Layout<DrivingRainRose.Row> LAYOUT = Layout.<DrivingRainRose.Row>of(
                    "exposure.csv", "Exposure", "One bearing of a wall.")
            .bearing(DrivingRainRose.Row::bearingDeg)
            .number(
                    "airfield_index_l_per_m2_year",
                    "airfield index",
                    "L/m² year",
                    4,
                    "driving rain in open country at 10 m, ISO 15927-3",
                    DrivingRainRose.Row::isoLitresPerM2Year)
            .number(
                    "ashrae_index_l_per_m2_year",
                    "ASHRAE index",
                    "L/m² year",
                    4,
                    "rain deposited by ASHRAE 160 with F_E = F_D = 1",
                    DrivingRainRose.Row::ashraeLitresPerM2Year)
            .number(
                    "worst_spell_l_per_m2",
                    "worst spell",
                    "L/m²",
                    4,
                    "largest spell on file, ISO 15927-3",
                    DrivingRainRose.Row::worstSpellLitresPerM2)
            .whole(
                    "wet_hours",
                    "wet hours",
                    "hours on file in which rain is driven on the wall",
                    DrivingRainRose.Row::wetHours)
            .build();

    private ExposureTable() {}

    /** One row a bearing, in the order of the rose. */
    public static ResultTable of(DrivingRainRose rose) {
        return ResultTable.of(LAYOUT, rose.rows());
    }
}
