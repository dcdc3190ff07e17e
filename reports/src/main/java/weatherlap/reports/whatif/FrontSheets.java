package weatherlap.reports.whatif;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.prices.PriceList;
import weatherlap.analysis.tables.Comparison;
import weatherlap.datasets.shop.Terms;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.run.JobAlternatives;
import weatherlap.sim.run.Simulator;

/** The sheets that the workbook of a comparison begins with. */
public final class FrontSheets {
    private FrontSheets() {}

    /** What the what-if can be asked of a house. */
    public static JobAlternatives alternatives(Simulator simulator) {
        Assumptions assumptions = simulator.assumptions();
        return simulator.alternatives(OwnNumbers.crews(assumptions), OwnNumbers.years(assumptions));
    }

    /**
     * The answer, the what-if of the houses shown, their prices by window, and what the what-if begins from.
     *
     * @param heading of the report
     * @param scope what was compared, in a sentence or two
     * @param jobs of the houses shown, by the {@link #alternatives}
     * @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment
     */
    public static List<CellSheet.Filler> of(
            String heading,
            String scope,
            OwnerFigures figures,
            Optional<String> ownRecords,
            Comparison comparison,
            List<Map<Method, JobParts>> jobs,
            Assumptions assumptions,
            Terms terms) {
        OwnNumbers own = OwnNumbers.of(
                assumptions,
                comparison.results().houses().stream()
                        .map(result -> result.house())
                        .toList());
        WindowSheet windows = WindowSheet.of(own, SheetLine.of(comparison.shown(), jobs));
        JobSheet behind = new JobSheet(own, windows, JobAlternatives.worthOfADollarAYear(assumptions, own.years()));
        return List.of(
                new SummarySheet(
                        heading,
                        scope,
                        figures,
                        ownRecords,
                        PriceList.windowsBySize(comparison.shown(), terms::rounded)),
                new WhatIfSheet(
                        own, behind, ShownAnswer.of(comparison, own.pricing().serviceReserve())),
                windows,
                behind);
    }
}
