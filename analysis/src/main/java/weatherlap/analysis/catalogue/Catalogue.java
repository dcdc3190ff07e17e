package weatherlap.analysis.catalogue;

import java.util.List;
import weatherlap.analysis.backtest.BacktestTables;
import weatherlap.analysis.breakeven.BreakEvenTable;
import weatherlap.analysis.breakeven.ChoiceTable;
import weatherlap.analysis.calibration.CalibrationTables;
import weatherlap.analysis.callbacks.SeenExpected;
import weatherlap.analysis.changes.ChangedRow;
import weatherlap.analysis.changes.HouseMove;
import weatherlap.analysis.changes.Parts;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.drivers.DriverTable;
import weatherlap.analysis.exposure.ExposureTable;
import weatherlap.analysis.leaks.HouseLeakTable;
import weatherlap.analysis.money.MoneyTables;
import weatherlap.analysis.prices.PriceList;
import weatherlap.analysis.rule.RuleTable;
import weatherlap.analysis.scenarios.ScenarioTables;
import weatherlap.analysis.season.SeasonTable;
import weatherlap.analysis.tables.ElevationTable;
import weatherlap.analysis.tables.HouseTable;
import weatherlap.analysis.tables.OpeningTable;
import weatherlap.analysis.tables.SegmentTable;

/** Every result table. */
public final class Catalogue {
    /** In the order of the README. */
    public static final List<Layout<?>> ALL = List.of(
            OpeningTable.LAYOUT,
            ElevationTable.LAYOUT,
            HouseTable.LAYOUT,
            HouseLeakTable.LAYOUT,
            SegmentTable.LAYOUT,
            RuleTable.LAYOUT,
            SeasonTable.LAYOUT,
            PriceList.LAYOUT,
            ExposureTable.LAYOUT,
            CalibrationTables.STEPS,
            CalibrationTables.JOBS,
            MoneyTables.ITEMS,
            MoneyTables.JOBS,
            SeenExpected.TABLE,
            BacktestTables.JOBS,
            BacktestTables.SCORES,
            BacktestTables.SEGMENTS,
            BacktestTables.CURVES,
            DriverTable.LAYOUT,
            BreakEvenTable.LAYOUT,
            ChoiceTable.LAYOUT,
            ChangedRow.LAYOUT,
            HouseMove.LAYOUT,
            Parts.LAYOUT,
            ScenarioTables.SETS,
            ScenarioTables.METHODS,
            ScenarioTables.FLIPS,
            ScenarioTables.KINDS,
            ScenarioTables.RULES);

    private Catalogue() {}
}
