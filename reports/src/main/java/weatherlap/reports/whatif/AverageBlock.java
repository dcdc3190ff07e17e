package weatherlap.reports.whatif;

import java.util.List;
import weatherlap.analysis.choice.EvenPrice;
import weatherlap.charts.kit.Tone;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.ColumnChart;
import weatherlap.reports.format.Look;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * What the average house comes to by each of the two methods: with the numbers that hold, in the run, and the change.
 *
 * @param top its first row
 * @param even the price at which both methods earn the shop the same, in the run
 */
record AverageBlock(JobSheet jobs, Contrast contrast, EvenPrice even, CellSheet sheet, int top) {
    private static final int NOW = 1;
    private static final int RUN = 3;
    private static final int CHANGE = 5;
    private static final int RIGHT = 8;

    private int heads() {
        return top + 1;
    }

    private int row(Measure measure) {
        return heads() + 1 + Measure.MEANS.indexOf(measure);
    }

    private int perDay() {
        return heads() + 1 + Measure.MEANS.size();
    }

    /** First row below it. */
    int end() {
        return perDay() + 2;
    }

    void fill() {
        for (int c = 0; c <= InputBlock.LAST; c++) {
            sheet.text(top, c, "", Look.HEADER);
            sheet.text(heads(), c, "", Look.HEADER);
        }
        sheet.text(top, 0, "The average house", Look.HEADER);
        sheet.text(top, NOW, "with your numbers", Look.HEADER);
        sheet.text(top, RUN, "as run", Look.HEADER);
        sheet.text(top, CHANGE, "change", Look.HEADER);
        sheet.lines(top, 2);
        for (Method method : contrast.both()) {
            method(method, contrast.both().indexOf(method));
        }
        sheet.text(perDay(), 0, "Gross profit a crew day", Look.BOLD);
        sheet.text(perDay() + 1, 0, "Add a window, to earn that of the other", Look.BOLD);
        charts();
    }

    private void method(Method method, int offset) {
        for (int block : List.of(NOW, RUN, CHANGE)) {
            sheet.text(heads(), block + offset, method.label(), Look.HEADER);
        }
        for (Measure measure : Measure.MEANS) {
            sheet.text(row(measure), 0, measure.name(), Look.BOLD);
            line(
                    row(measure),
                    offset,
                    mean(measure, offset),
                    asRun(method, measure),
                    measure.format(),
                    measure.change());
        }
        line(perDay(), offset, perDay(NOW + offset), asRunPerDay(method), Measure.USD, Measure.SIGNED_USD);
        line(
                perDay() + 1,
                offset,
                add(offset),
                even.raised() == method ? even.perWindowUsd() : 0,
                Measure.USD,
                Measure.SIGNED_USD);
    }

    private void line(int row, int offset, String formula, double asRun, String format, String change) {
        sheet.formula(row, NOW + offset, formula, asRun, format, Look.BOLD);
        sheet.number(row, RUN + offset, asRun, format, Look.NUMBER);
        String less = CellSheet.cell(row, NOW + offset) + "-" + CellSheet.cell(row, RUN + offset);
        sheet.formula(row, CHANGE + offset, less, 0, change, Look.NUMBER);
    }

    private String mean(Measure measure, int offset) {
        return "SUMIF(" + jobs.column(JobSheet.STANDS_FOR) + "," + CellSheet.cell(heads(), NOW + offset) + ","
                + jobs.column(measure.column()) + ")/" + houses();
    }

    private String perDay(int column) {
        String days = CellSheet.cell(row(Measure.DAYS), column);
        return "IF(" + days + "=0,0," + CellSheet.cell(row(Measure.PROFIT), column) + "/" + days + ")";
    }

    /** See {@link EvenPrice}; 0 for the method that earns more. */
    private String add(int offset) {
        int own = NOW + offset;
        int other = NOW + 1 - offset;
        return "MAX(0,(" + CellSheet.cell(perDay(), other) + "*" + CellSheet.cell(row(Measure.DAYS), own) + "-"
                + CellSheet.cell(row(Measure.PROFIT), own) + ")/(1-" + OwnNumbers.now(OwnNumbers.SERVICE) + "))*"
                + houses() + "/" + Math.max(1, SheetLine.windows(jobs.jobs()));
    }

    private int houses() {
        return (int) jobs.jobs().stream().mapToInt(SheetLine::house).distinct().count();
    }

    private double asRun(Method method, Measure measure) {
        return jobs.jobs().stream()
                        .filter(job -> job.isOfPair() && job.named() == method)
                        .mapToDouble(measure.asRun())
                        .sum()
                / houses();
    }

    private double asRunPerDay(Method method) {
        double days = asRun(method, Measure.DAYS);
        return days == 0 ? 0 : asRun(method, Measure.PROFIT) / days;
    }

    private void charts() {
        chart("What a crew day earns your shop", "gross profit, dollars", perDay(), 4);
        chart("What the family pays over the years", "price, leak repairs, lost glass, dollars", row(Measure.COST), 20);
    }

    private void chart(String title, String axis, int row, int at) {
        sheet.chart(
                new ColumnChart(
                        title,
                        axis,
                        Measure.USD,
                        List.of(series(RUN, Tone.RULE, row), series(NOW, Tone.FULL_FLANGE, row))),
                at,
                RIGHT,
                at + 15,
                RIGHT + 6);
    }

    private ColumnChart.Series series(int block, Tone tone, int row) {
        return new ColumnChart.Series(
                sheet.cells(top, block, top, block),
                tone.rgb(),
                sheet.cells(heads(), block, heads(), block + 1),
                sheet.cells(row, block, row, block + 1));
    }
}
