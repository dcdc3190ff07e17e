package weatherlap.reports.whatif;

import java.util.List;
import java.util.Optional;
import weatherlap.analysis.prices.PriceList;
import weatherlap.analysis.tables.Comparison;
import weatherlap.datasets.shop.Terms;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.sim.run.JobAlternatives;
import weatherlap.sim.run.Simulator;

/** The sheets that the workbook of a comparison begins with. */
public final class FrontSheets {
    private FrontSheets() {}

    /**
     * The answer, the what-if of the houses shown, their prices by window, and what the what-if begins from.
     *
     * @param heading of the report
     * @param scope what was compared, in a sentence or two
     * @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment
     */
    public static List<CellSheet.Filler> of(
            String heading,
            String scope,
            OwnerFigures figures,
            Optional<String> ownRecords,
            Comparison comparison,
            Simulator simulator,
            Terms terms) {
        OwnNumbers own = OwnNumbers.of(
                simulator.assumptions(),
                comparison.results().houses().stream()
                        .map(result -> result.house())
                        .toList());
        JobAlternatives alternatives = simulator.alternatives(own.crews(), own.years());
        JobSheet jobs =
                new JobSheet(own, SheetLine.of(comparison.shown(), alternatives), alternatives.worthOfADollarAYear());
        return List.of(
                new SummarySheet(
                        heading,
                        scope,
                        figures,
                        ownRecords,
                        PriceList.windowsBySize(comparison.shown(), terms::rounded)),
                new WhatIfSheet(
                        own, jobs, ShownAnswer.of(comparison, own.pricing().serviceReserve())),
                new WindowSheet(own, jobs.jobs()),
                jobs);
    }
}
