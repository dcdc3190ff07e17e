package weatherlap.reports.whatif;

import java.util.List;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.Look;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.price.CrewRate;

/** The cells to change, each with what it is in the run and what it means. */
record InputBlock(OwnNumbers own, CellSheet sheet) {
    static final int LAST = 6;

    private static final String CENTS = "$#,##0.00";
    private static final String PERCENT = "0.0#%";
    private static final double NOTE_LINE = 62;

    void fill() {
        header(OwnNumbers.HEADER, "Your numbers", "now", "as run", "what it is");
        boolean net = own.chargesOverhead();
        input(
                OwnNumbers.PROFIT,
                net ? "Net profit" : "Gross margin",
                own.pricing().profitFraction(),
                PERCENT,
                net ? "of the price, after overhead" : "of the price; overhead comes out of it");
        input(
                OwnNumbers.SERVICE,
                "Kept for service",
                own.pricing().serviceReserve(),
                PERCENT,
                "of the price, for service other than leaks");
        input(
                OwnNumbers.OVERHEAD,
                "Overhead, dollars a crew hour",
                own.pricing().overheadUsdPerCrewHour(),
                CENTS,
                net ? "part of the price, as your shop makes it" : "no part of the price, as your shop makes it");
        input(
                OwnNumbers.CREW,
                "People in a crew",
                own.whole(Scalar.CREW_SIZE),
                "0",
                "pick " + OwnNumbers.choice(own.crews()) + ": only these crews' days are planned");
        input(
                OwnNumbers.YEARS,
                "Years the family looks ahead",
                own.whole(Scalar.HORIZON_YEARS),
                "0",
                "pick " + OwnNumbers.choice(own.years()) + ": only these were run");
        input(
                OwnNumbers.GLASS,
                "A square foot of glass, dollars a year",
                own.value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR),
                CENTS,
                "what the family would pay to keep it");
        limits();
        wages();
    }

    private void limits() {
        String kept = OwnNumbers.now(OwnNumbers.PROFIT) + "+" + OwnNumbers.now(OwnNumbers.SERVICE);
        for (int row : List.of(OwnNumbers.PROFIT, OwnNumbers.SERVICE)) {
            atLeastNothing(row, ",0.95>=" + kept, "A share such as 35%; profit and service together at most 95%.");
        }
        for (int row : List.of(OwnNumbers.OVERHEAD, OwnNumbers.GLASS)) {
            atLeastNothing(row, "", "Dollars, 0 or more.");
        }
        sheet.allow(
                OwnNumbers.CREW,
                OwnNumbers.NOW,
                own.crews(),
                "Pick " + OwnNumbers.choice(own.crews()) + ". For another crew run: compare --set crew_size=N");
        sheet.allow(
                OwnNumbers.YEARS,
                OwnNumbers.NOW,
                own.years(),
                "Pick " + OwnNumbers.choice(own.years()) + ". For other years run: compare --set horizon_years=N");
    }

    private void atLeastNothing(int row, String and, String message) {
        String cell = OwnNumbers.now(row);
        sheet.allow(row, OwnNumbers.NOW, "AND(ISNUMBER(" + cell + ")," + cell + ">=0" + and + ")", message);
    }

    private void input(int row, String name, double value, String format, String what) {
        sheet.text(row, 0, name, Look.NUMBER);
        sheet.number(row, OwnNumbers.NOW, value, format, Look.INPUT);
        sheet.number(row, 2, value, format, Look.NUMBER);
        sheet.text(row, 3, LAST, what, Look.NOTE, NOTE_LINE);
    }

    private void header(int row, String... heads) {
        for (int c = 0; c <= LAST; c++) {
            sheet.text(row, c, c < heads.length ? heads[c] : "", Look.HEADER);
        }
    }

    private void wages() {
        header(
                OwnNumbers.WAGES,
                "Wages, dollars an hour, by region",
                "carpenter",
                "taxes etc. on top",
                "helper",
                "taxes etc. on top",
                "an hour of a person, mean",
                "as run");
        sheet.lines(OwnNumbers.WAGES, 2);
        List<String> roles = CrewRate.roles(2);
        for (String region : own.regions()) {
            int row = OwnNumbers.WAGES + 1 + own.regions().indexOf(region);
            sheet.text(row, 0, region, Look.NUMBER);
            for (Wage wage : own.wages(region)) {
                if (roles.contains(wage.role())) {
                    int column = 1 + 2 * roles.indexOf(wage.role());
                    sheet.number(row, column, wage.usdPerHour(), CENTS, Look.INPUT);
                    sheet.number(row, column + 1, wage.burdenFraction(), PERCENT, Look.INPUT);
                }
            }
            sheet.formula(row, OwnNumbers.RATE, hour(row), own.usdPerPersonHour(region), CENTS, Look.NUMBER);
            sheet.number(row, OwnNumbers.RATE + 1, own.usdPerPersonHour(region), CENTS, Look.NUMBER);
        }
    }

    /** One carpenter, the others helpers. */
    private static String hour(int row) {
        String crew = OwnNumbers.now(OwnNumbers.CREW);
        return "(" + withBurden(row, 1) + "+(" + crew + "-1)*" + withBurden(row, 3) + ")/" + crew;
    }

    private static String withBurden(int row, int column) {
        return CellSheet.cell(row, column) + "*(1+" + CellSheet.cell(row, column + 1) + ")";
    }
}
