package weatherlap.reports.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.prices.PriceRow;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.ColumnChart;
import weatherlap.reports.format.Look;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.reports.owner.OwnerWords;
import weatherlap.reports.page.Block;
import weatherlap.sim.method.Method;

/**
 * The first answer, as the first page of the report gives it, with two charts of cells.
 *
 * @param prices of windows by size and method
 * @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment
 */
record SummarySheet(
        String heading, String scope, OwnerFigures figures, Optional<String> ownRecords, List<PriceRow> prices)
        implements CellSheet.Filler {
    private static final String SHEET = "Summary";
    private static final int LAST = 5;
    private static final int NUMBERS = 4;
    private static final int CHARTS = 8;
    private static final int HALF = 9;
    private static final int QUESTIONS = CHARTS + 2 * HALF;

    @Override
    public String title() {
        return SHEET;
    }

    @Override
    public void fill(CellSheet sheet) {
        OwnerWords words = new OwnerWords(figures);
        sheet.widths(28, 20, 22, 22, 22, 22);
        sheet.asPage();
        sheet.text(0, 0, heading, Look.TITLE);
        sheet.text(1, 0, LAST, scope, Look.NOTE, 135);
        sheet.text(2, 0, LAST, words.headline(), Look.HEADLINE, 100);
        List<Block.Numbers.Number> numbers = words.numbers();
        for (int n = 0; n < numbers.size(); n++) {
            sheet.text(NUMBERS, 2 * n, numbers.get(n).what(), Look.NOTE);
            sheet.text(NUMBERS + 1, 2 * n, numbers.get(n).value(), Look.BIG);
            sheet.text(NUMBERS + 2, 2 * n, 2 * n + 1, numbers.get(n).words(), Look.NOTE, 40);
        }
        sheet.lines(NUMBERS + 1, 1.6);
        sheet.lines(NUMBERS + 2, 3);
        int row = QUESTIONS + 1;
        for (Block.Questions.Question question : words.questions(ownRecords)) {
            sheet.text(row, 0, question.asks(), Look.BOLD);
            sheet.text(row++, 1, LAST, question.answer(), Look.PLAIN, 108);
        }
        row = otherSheets(sheet, row + 1);
        charts(sheet, row + 1);
    }

    private static int otherSheets(CellSheet sheet, int top) {
        List<List<String>> sheets = List.of(
                List.of(
                        OwnNumbers.SHEET,
                        "Type your margin, wages, crew and years; prices and profit follow in the sheet itself."),
                List.of(
                        WindowSheet.SHEET,
                        "What each window is asked for, by each method. It follows " + OwnNumbers.SHEET + "."),
                List.of(
                        JobSheet.SHEET,
                        "A line for each house by each method: what the what-if begins from and comes to."),
                List.of("Read me", "What the other sheets hold: the tables of the report, column by column."));
        for (int s = 0; s < sheets.size(); s++) {
            sheet.text(top + s, 0, sheets.get(s).get(0), Look.BOLD);
            sheet.text(top + s, 1, LAST, sheets.get(s).get(1), Look.NOTE, 108);
        }
        return top + sheets.size();
    }

    /** The cells that the charts draw. */
    private void charts(CellSheet sheet, int top) {
        List<String> sizes =
                prices.stream().map(row -> row.size().label()).distinct().toList();
        List<Method> methods = Arrays.stream(Method.values())
                .filter(method -> prices.stream().anyMatch(row -> row.method() == method))
                .toList();
        table(sheet, top, "Price of a window, mean, USD", sizes, methods, (row, method) -> prices.stream()
                .filter(price -> price.size().label().equals(sizes.get(row)) && price.method() == method)
                .mapToDouble(price -> price.priceUsd().mean())
                .findFirst());
        sheet.chart(
                chart(sheet, "What a window is asked for, by size", "dollars, mean", top, sizes.size(), methods),
                CHARTS,
                0,
                QUESTIONS,
                3);
        average(
                sheet,
                top + sizes.size() + 2,
                "What the family pays over " + Numbers.count(figures.years(), "year", "years"),
                "price, leak repairs, lost glass",
                "dollars a house",
                CHARTS,
                Answer.PerHouse::horizonCostUsd);
        average(
                sheet,
                top + sizes.size() + 5,
                "What a crew day earns your shop",
                "gross profit",
                "dollars a crew day",
                CHARTS + HALF,
                Answer.PerHouse::grossProfitPerCrewDayUsd);
    }

    private void average(
            CellSheet sheet,
            int top,
            String title,
            String what,
            String axis,
            int at,
            ToDoubleFunction<Answer.PerHouse> value) {
        Answer answer = figures.answer();
        List<Method> both = answer.contrast().both();
        List<String> whats = List.of(what);
        table(
                sheet,
                top,
                title + ", USD",
                whats,
                both,
                (row, method) -> OptionalDouble.of(value.applyAsDouble(answer.of(method))));
        sheet.chart(chart(sheet, title, axis, top, 1, both), at, 3, at + HALF, LAST + 1);
    }

    private static void table(
            CellSheet sheet,
            int top,
            String title,
            List<String> rows,
            List<Method> methods,
            BiFunction<Integer, Method, OptionalDouble> value) {
        sheet.text(top, 0, title, Look.HEADER);
        sheet.lines(top, 2);
        for (int r = 0; r < rows.size(); r++) {
            sheet.text(top + 1 + r, 0, rows.get(r), Look.NUMBER);
        }
        for (int m = 0; m < methods.size(); m++) {
            sheet.text(top, 1 + m, methods.get(m).label(), Look.HEADER);
            for (int r = 0; r < rows.size(); r++) {
                OptionalDouble number = value.apply(r, methods.get(m));
                if (number.isPresent()) {
                    sheet.number(top + 1 + r, 1 + m, number.getAsDouble(), Measure.USD, Look.NUMBER);
                }
            }
        }
    }

    /** Of a table that stands below. */
    private static ColumnChart chart(
            CellSheet sheet, String title, String axis, int top, int rows, List<Method> methods) {
        List<ColumnChart.Series> series = new ArrayList<>();
        for (int m = 0; m < methods.size(); m++) {
            series.add(new ColumnChart.Series(
                    sheet.cells(top, 1 + m, top, 1 + m),
                    MethodStyle.of(methods.get(m)).fill().rgb(),
                    sheet.cells(top + 1, 0, top + rows, 0),
                    sheet.cells(top + 1, 1 + m, top + rows, 1 + m)));
        }
        return new ColumnChart(title, axis, Measure.USD, series);
    }
}
