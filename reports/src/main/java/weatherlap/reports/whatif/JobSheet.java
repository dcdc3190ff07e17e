package weatherlap.reports.whatif;

import java.util.List;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.Look;
import weatherlap.sim.Sum;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;

/**
 * A line for each house by each method: what the formulas come to, then what they begin from.
 *
 * @param windows of the same jobs
 * @param dollarAYearUsd present worth of a dollar a year over each number of years
 */
record JobSheet(OwnNumbers own, WindowSheet windows, List<Double> dollarAYearUsd) implements CellSheet.Filler {
    static final String SHEET = "Behind the what-if";

    static final int STANDS_FOR = 3;
    static final int HOURS = 5;
    static final int DAYS = 6;
    static final int LABOR = 7;
    static final int MATERIAL = 8;
    static final int WARRANTY = 9;
    static final int PRICE = 10;
    static final int PROFIT = 11;
    static final int PER_DAY = 12;
    static final int REPAIRS = 13;
    static final int GLASS = 14;
    static final int COST = 15;
    static final int WINDOWS = 16;

    private static final int REGION = 4;
    private static final int GLASS_FT2 = 17;
    private static final int BY_CREW = 18;
    private static final int PLACES = 1;
    private static final int HEADER = 3;
    private static final int FIRST = HEADER + 1;
    private static final int CREW_PLACE = 3;
    private static final int YEAR_PLACE = 6;
    private static final int WORTH = 10;

    private static final String USD = "$#,##0.00";
    private static final String TENTHS = "#,##0.0";
    private static final String WHOLE = "0";
    private static final String FINE = "0.0000";

    @Override
    public String title() {
        return SHEET;
    }

    List<SheetLine> jobs() {
        return windows.jobs();
    }

    /** A cell of a job, as formulas of other sheets name it. */
    static String cell(SheetLine job, int column) {
        return CellSheet.cell(SHEET, FIRST + job.line(), column);
    }

    /** A column of all jobs, likewise. */
    String column(int column) {
        return CellSheet.range(SHEET, FIRST, column, FIRST + jobs().size() - 1, column);
    }

    /** Of cells from one on, each for a crew, the one of the crew that holds. */
    static String byCrew(String cells) {
        return "INDEX(" + cells + "," + CellSheet.cell(SHEET, PLACES, CREW_PLACE) + ")";
    }

    private static String byYears(String cells) {
        return "INDEX(" + cells + "," + CellSheet.cell(SHEET, PLACES, YEAR_PLACE) + ")";
    }

    @Override
    public void fill(CellSheet sheet) {
        sheet.note(
                0,
                "Each house done wholly by one method. The formulas (columns F to Q) follow the sheet "
                        + OwnNumbers.SHEET
                        + ". The columns after them are what the program worked out, for each crew and each number of years.");
        places(sheet);
        headings(sheet);
        jobs().forEach(job -> line(sheet, job));
        sheet.freeze(FIRST, STANDS_FOR);
        sheet.list(HEADER, HEADER + jobs().size(), horizon(1) + own.years().size() - 1);
        sheet.widths(10, 26, 12, 14, 14, 10, 8, 12, 12, 12, 13, 13, 13, 12, 12, 13, 13, 10);
    }

    /** Where the crew and the years that hold stand in their lists, and what a dollar a year is worth over the years. */
    private void places(CellSheet sheet) {
        String years = OwnNumbers.now(OwnNumbers.YEARS);
        sheet.note(PLACES, "place in the lists: of the crew");
        sheet.formula(
                PLACES,
                CREW_PLACE,
                place(OwnNumbers.now(OwnNumbers.CREW), own.crews()),
                1 + own.crews().indexOf(own.whole(Scalar.CREW_SIZE)),
                WHOLE,
                Look.NUMBER);
        sheet.text(PLACES, YEAR_PLACE - 1, "of the years", Look.NOTE);
        sheet.formula(
                PLACES,
                YEAR_PLACE,
                place(years, own.years()),
                1 + own.years().indexOf(own.whole(Scalar.HORIZON_YEARS)),
                WHOLE,
                Look.NUMBER);
        sheet.text(PLACES, WORTH - 1, "worth of $1 a year", Look.NOTE);
        sheet.formula(
                PLACES,
                WORTH,
                byYears(CellSheet.range(PLACES, horizon(0), PLACES, horizon(1) - 1)),
                dollarAYearUsd.get(own.years().indexOf(own.whole(Scalar.HORIZON_YEARS))),
                FINE,
                Look.NUMBER);
        for (int y = 0; y < own.years().size(); y++) {
            sheet.number(PLACES, horizon(0) + y, dollarAYearUsd.get(y), FINE, Look.NUMBER);
        }
    }

    private static String place(String cell, List<Integer> list) {
        return "MATCH(" + cell + ",{"
                + String.join(",", list.stream().map(String::valueOf).toList()) + "},0)";
    }

    private void headings(CellSheet sheet) {
        List<String> fixed = List.of(
                "house_id",
                "house",
                "method",
                "stands for",
                "region of the wages",
                "labor, person-hours",
                "crew days",
                "labor",
                "material",
                "leak repairs the shop pays",
                "price",
                "gross profit",
                "gross profit a crew day",
                "leak repairs the family pays",
                "lost glass",
                "family’s cost over the years",
                "labor and material at the windows alone",
                "glass lost, ft²");
        for (int c = 0; c < fixed.size(); c++) {
            sheet.text(HEADER, c, fixed.get(c), Look.HEADER);
        }
        for (int c = 0; c < own.crews().size(); c++) {
            String of = ", crew of " + own.crews().get(c);
            sheet.text(HEADER, crew(0) + c, "person-minutes" + of, Look.HEADER);
            sheet.text(HEADER, crew(1) + c, "days" + of, Look.HEADER);
            sheet.text(HEADER, crew(2) + c, "material" + of, Look.HEADER);
        }
        for (int y = 0; y < own.years().size(); y++) {
            String over = " pays, " + Numbers.count(own.years().get(y), "year", "years");
            sheet.text(HEADER, horizon(0) + y, "repairs the shop" + over, Look.HEADER);
            sheet.text(HEADER, horizon(1) + y, "repairs the family" + over, Look.HEADER);
        }
        sheet.lines(HEADER, 4);
    }

    /** First column of a quantity that hangs on the crew. */
    private int crew(int quantity) {
        return BY_CREW + quantity * own.crews().size();
    }

    /** First column of a quantity that hangs on the years. */
    private int horizon(int quantity) {
        return crew(3) + quantity * own.years().size();
    }

    private void line(CellSheet sheet, SheetLine job) {
        int row = FIRST + job.line();
        House house = job.choice().result().house();
        String region = own.region(house);
        sheet.text(row, 0, house.id(), Look.NUMBER);
        sheet.text(row, 1, house.label(), Look.NUMBER);
        sheet.text(row, 2, job.method().label(), Look.NUMBER);
        sheet.text(row, STANDS_FOR, job.isOfPair() ? job.named().label() : "", Look.NUMBER);
        sheet.text(row, REGION, region, Look.NUMBER);
        formulas(new Line(sheet, row), job, region);
        sheet.number(row, GLASS_FT2, job.result().glassLostFt2(), TENTHS, Look.NUMBER);
        for (int c = 0; c < own.crews().size(); c++) {
            var work = job.work(own.crews().get(c));
            sheet.number(row, crew(0) + c, work.personMinutes(), TENTHS, Look.NUMBER);
            sheet.number(row, crew(1) + c, work.days(), WHOLE, Look.NUMBER);
            sheet.number(row, crew(2) + c, work.materialUsd(), USD, Look.NUMBER);
        }
        for (int y = 0; y < own.years().size(); y++) {
            var repairs = job.parts().horizons().get(y);
            sheet.number(row, horizon(0) + y, repairs.shopUsd(), USD, Look.NUMBER);
            sheet.number(row, horizon(1) + y, repairs.familyUsd(), USD, Look.NUMBER);
        }
    }

    private record Line(CellSheet sheet, int row) {
        String at(int column) {
            return CellSheet.cell(row, column);
        }

        String list(int first, int count) {
            return CellSheet.range(row, first, row, first + count - 1);
        }

        void usd(int column, String expression, double asRun) {
            sheet.formula(row, column, expression, asRun, USD, Look.NUMBER);
        }
    }

    private void formulas(Line line, SheetLine job, String region) {
        var work = job.work(own.whole(Scalar.CREW_SIZE));
        String crew = OwnNumbers.now(OwnNumbers.CREW);
        String service = OwnNumbers.now(OwnNumbers.SERVICE);
        String direct = line.at(LABOR) + "+" + line.at(MATERIAL) + "+" + line.at(WARRANTY);
        String overhead = own.chargesOverhead()
                ? "+" + OwnNumbers.now(OwnNumbers.OVERHEAD) + "*" + line.at(HOURS) + "/" + crew
                : "";
        line.sheet()
                .formula(
                        line.row(),
                        HOURS,
                        byCrew(line.list(crew(0), own.crews().size())) + "/60",
                        work.personMinutes() / 60,
                        TENTHS,
                        Look.NUMBER);
        line.sheet()
                .formula(
                        line.row(),
                        DAYS,
                        byCrew(line.list(crew(1), own.crews().size())),
                        work.days(),
                        WHOLE,
                        Look.NUMBER);
        line.usd(LABOR, line.at(HOURS) + "*" + own.rate(region), job.costPart("labour"));
        line.usd(MATERIAL, byCrew(line.list(crew(2), own.crews().size())), job.costPart("material"));
        line.usd(WARRANTY, byYears(line.list(horizon(0), own.years().size())), job.costPart("warranty"));
        line.usd(
                PRICE,
                "(" + direct + overhead + ")/(1-" + OwnNumbers.now(OwnNumbers.PROFIT) + "-" + service + ")",
                job.result().priceUsd());
        line.usd(
                PROFIT,
                line.at(PRICE) + "*(1-" + service + ")-(" + direct + ")",
                job.result().grossProfitUsd());
        line.usd(
                PER_DAY,
                "IF(" + line.at(DAYS) + "=0,0," + line.at(PROFIT) + "/" + line.at(DAYS) + ")",
                job.result().grossProfitPerCrewDayUsd());
        line.usd(
                REPAIRS,
                byYears(line.list(horizon(1), own.years().size())),
                job.result().expectedDamageUsd());
        line.usd(
                GLASS,
                line.at(GLASS_FT2) + "*" + OwnNumbers.now(OwnNumbers.GLASS) + "*"
                        + CellSheet.cell(SHEET, PLACES, WORTH),
                job.result().glassValueUsd());
        line.usd(
                COST,
                line.at(PRICE) + "+" + line.at(REPAIRS) + "+" + line.at(GLASS),
                job.result().horizonCostUsd().mean());
        line.usd(
                WINDOWS,
                job.windows() == 0 ? "0" : "SUM(" + windows.ownCost(job) + ")",
                Sum.of(job.parts().openingUsd()));
    }
}
