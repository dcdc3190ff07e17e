package weatherlap.reports.whatif;

import java.util.List;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.Look;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * Numbers to change, what the average house and each house come to with them, and what this sheet does not know.
 *
 * @param answer of the report about the houses shown
 */
record WhatIfSheet(OwnNumbers own, JobSheet jobs, ShownAnswer answer) implements CellSheet.Filler {
    private static final double LINE = 115;

    @Override
    public String title() {
        return OwnNumbers.SHEET;
    }

    @Override
    public void fill(CellSheet sheet) {
        sheet.widths(42, 13, 13, 13, 13, 13, 13, 3);
        sheet.asPage();
        sheet.text(0, 0, "What if my numbers were different?", Look.TITLE);
        wide(
                sheet,
                1,
                "Change a yellow cell. All below follows at once, and so does the sheet " + WindowSheet.SHEET
                        + ". To get back, type what stands under “as run”.");
        new InputBlock(own, sheet).fill();
        AverageBlock average = new AverageBlock(jobs, answer.contrast(), answer.even(), sheet, own.end() + 1);
        average.fill();
        int row = average.end() + 1;
        for (String note : answer.notes()) {
            wide(sheet, row++, note);
        }
        houses(sheet, row + 1);
        sheet.freeze(OwnNumbers.HEADER, 0);
    }

    private static void wide(CellSheet sheet, int row, String text) {
        sheet.text(row, 0, InputBlock.LAST, text, Look.PLAIN, LINE);
    }

    /** A line a house; another method stands in the place of one that its cladding leaves no way for. */
    private void houses(CellSheet sheet, int header) {
        Contrast contrast = answer.contrast();
        String first = contrast.first().label();
        String second = contrast.second().label();
        List<String> heads = List.of(
                "Each house",
                "price, " + first,
                "price, " + second,
                "profit a crew day, " + first,
                "profit a crew day, " + second,
                "family’s cost, " + first,
                "family’s cost, " + second);
        for (int c = 0; c < heads.size(); c++) {
            sheet.text(header, c, heads.get(c), Look.HEADER);
        }
        sheet.lines(header, 3);
        for (SheetLine job : jobs.jobs()) {
            if (job.isOfPair()) {
                int row = header + 1 + job.house();
                int offset = contrast.both().indexOf(job.named());
                sheet.text(row, 0, job.choice().result().house().label(), Look.NUMBER);
                cell(sheet, row, 1 + offset, job, JobSheet.PRICE, job.result().priceUsd());
                cell(sheet, row, 3 + offset, job, JobSheet.PER_DAY, job.result().grossProfitPerCrewDayUsd());
                cell(
                        sheet,
                        row,
                        5 + offset,
                        job,
                        JobSheet.COST,
                        job.result().horizonCostUsd().mean());
                if (job.named() != job.method()) {
                    sheet.text(row, 8, standIn(job.method(), job.named()), Look.NUMBER);
                }
            }
        }
    }

    private static String standIn(Method there, Method named) {
        return InWords.capital(there.label()) + " in place of " + named.label() + ".";
    }

    private static void cell(CellSheet sheet, int row, int column, SheetLine job, int from, double asRun) {
        sheet.formula(row, column, JobSheet.cell(job, from), asRun, Measure.USD, Look.NUMBER);
    }
}
