package weatherlap.reports.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.Look;
import weatherlap.reports.owner.OwnerTerms;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.OpeningResult;

/**
 * What each window is asked for by each method: its share of the price of its house, as the numbers of the what-if have it.
 *
 * @param methods of the jobs, in their usual order
 */
record WindowSheet(OwnNumbers own, List<SheetLine> jobs, List<Method> methods) implements CellSheet.Filler {
    static final String SHEET = "Price by window";

    private static final int HEADER = 2;
    private static final int FIRST = HEADER + 1;
    private static final int PRICES = 9;

    private static final String USD = "$#,##0.00";
    private static final String TENTHS = "#,##0.0";

    @Override
    public String title() {
        return SHEET;
    }

    static WindowSheet of(OwnNumbers own, List<SheetLine> jobs) {
        List<Method> methods = Arrays.stream(Method.values())
                .filter(method -> jobs.stream().anyMatch(job -> job.method() == method))
                .toList();
        return new WindowSheet(own, jobs, methods);
    }

    /** First column of what the price of a window by a method begins from: its own cost, its material, its minutes by crew. */
    private int basis(Method method) {
        return PRICES
                + methods.size()
                + methods.indexOf(method) * (2 + own.crews().size());
    }

    /** What labor and material at each window of a job alone cost, as formulas of other sheets name the cells. */
    String ownCost(SheetLine job) {
        int column = basis(job.method());
        int first = FIRST + job.firstWindow();
        return CellSheet.range(SHEET, first, column, first + job.windows() - 1, column);
    }

    @Override
    public void fill(CellSheet sheet) {
        sheet.note(
                0,
                "A window’s share of the price of its house with all windows done by that method: a window done alone costs more."
                        + " Prices follow the sheet " + OwnNumbers.SHEET + ".");
        headings(sheet);
        for (SheetLine job : jobs) {
            if (job.line() == 0 || jobs.get(job.line() - 1).house() != job.house()) {
                for (int o = 0; o < job.windows(); o++) {
                    name(
                            sheet,
                            FIRST + job.firstWindow() + o,
                            job.choice().result().house(),
                            job.openings().get(o));
                }
            }
            prices(sheet, job);
        }
        int last = basis(methods.get(methods.size() - 1)) + 1 + own.crews().size();
        sheet.freeze(FIRST, 4);
        sheet.list(HEADER, HEADER + SheetLine.windows(jobs), last);
        sheet.asPage();
        sheet.fold(PRICES + methods.size(), last);
        sheet.widths(10, 26, 10, 10, 16, 14, 9, 9, 7, 13, 13, 13);
    }

    private void headings(CellSheet sheet) {
        List<String> fixed = List.of(
                "house_id", "house", "wall", "window", "room", "opens as", "width, in.", "height, in.", "story");
        for (int c = 0; c < fixed.size(); c++) {
            sheet.text(HEADER, c, fixed.get(c), Look.HEADER);
        }
        for (Method method : methods) {
            sheet.text(HEADER, PRICES + methods.indexOf(method), "price, " + method.label(), Look.HEADER);
            int basis = basis(method);
            sheet.text(HEADER, basis, method.label() + ": labor and material here alone", Look.HEADER);
            sheet.text(HEADER, basis + 1, method.label() + ": material here", Look.HEADER);
            for (int c = 0; c < own.crews().size(); c++) {
                sheet.text(
                        HEADER,
                        basis + 2 + c,
                        method.label() + ": minutes, crew of " + own.crews().get(c),
                        Look.HEADER);
            }
        }
        sheet.lines(HEADER, 4);
    }

    private static void name(CellSheet sheet, int row, House house, OpeningResult any) {
        sheet.text(row, 0, house.id(), Look.NUMBER);
        sheet.text(row, 1, house.label(), Look.NUMBER);
        sheet.text(row, 2, any.elevation().id(), Look.NUMBER);
        sheet.text(row, 3, any.opening().id(), Look.NUMBER);
        sheet.text(row, 4, InWords.of(any.opening().place().room()), Look.NUMBER);
        sheet.text(row, 5, InWords.of(any.opening().newOperation()), Look.NUMBER);
        sheet.number(row, 6, any.opening().frame().widthIn(), "# ??/??", Look.NUMBER);
        sheet.number(row, 7, any.opening().frame().heightIn(), "# ??/??", Look.NUMBER);
        sheet.number(row, 8, house.storeyOf(any.elevation(), any.opening()), "0", Look.NUMBER);
    }

    private void prices(CellSheet sheet, SheetLine job) {
        int basis = basis(job.method());
        int column = PRICES + methods.indexOf(job.method());
        String rate = "/60*" + own.rate(own.region(job.choice().result().house()));
        String price = JobSheet.cell(job, JobSheet.PRICE) + "*";
        String all = "/" + JobSheet.cell(job, JobSheet.WINDOWS);
        for (int o = 0; o < job.windows(); o++) {
            int row = FIRST + job.firstWindow() + o;
            String minutes =
                    CellSheet.range(row, basis + 2, row, basis + 1 + own.crews().size());
            sheet.formula(
                    row,
                    basis,
                    CellSheet.cell(row, basis + 1) + "+" + JobSheet.byCrew(minutes) + rate,
                    job.parts().openingUsd()[o],
                    USD,
                    Look.NUMBER);
            sheet.number(row, basis + 1, job.parts().openingMaterialUsd()[o], USD, Look.NUMBER);
            Set<Limit> closed = job.choice().closed().get(o).getOrDefault(job.method(), Set.of());
            if (closed.isEmpty()) {
                double asked = job.openings().get(o).priceUsd();
                sheet.formula(row, column, price + CellSheet.cell(row, basis) + all, asked, USD, Look.NUMBER);
            } else {
                String why = closed.stream().map(OwnerTerms::of).collect(Collectors.joining(", "));
                sheet.text(row, column, why, Look.NOTE);
            }
        }
        for (int c = 0; c < own.crews().size(); c++) {
            double[] alone = job.work(own.crews().get(c)).openingMinutes();
            for (int o = 0; o < job.windows(); o++) {
                sheet.number(FIRST + job.firstWindow() + o, basis + 2 + c, alone[o], TENTHS, Look.NUMBER);
            }
        }
    }
}
