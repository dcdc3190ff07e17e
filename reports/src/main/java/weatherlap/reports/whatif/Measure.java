package weatherlap.reports.whatif;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A line of what the average house comes to.
 *
 * @param column of the jobs behind it
 * @param format of it
 * @param change format of what it changes by
 * @param asRun of a job in the run
 */
record Measure(String name, int column, String format, String change, ToDoubleFunction<SheetLine> asRun) {
    /** Whole dollars. */
    static final String USD = "$#,##0";

    static final String SIGNED_USD = "+$#,##0;-$#,##0;$0";

    static final Measure PRICE =
            usd("Price of a house", JobSheet.PRICE, job -> job.result().priceUsd());
    static final Measure DAYS = new Measure("Crew days", JobSheet.DAYS, "0.00", "+0.00;-0.00;0.00", job -> job.result()
            .crewDays());
    static final Measure PROFIT =
            usd("Gross profit of a house", JobSheet.PROFIT, job -> job.result().grossProfitUsd());
    static final Measure COST = usd("Family’s cost: the price and those two", JobSheet.COST, job -> job.result()
            .horizonCostUsd()
            .mean());

    static final List<Measure> MEANS = List.of(
            PRICE,
            DAYS,
            PROFIT,
            usd("Leak repairs the family pays", JobSheet.REPAIRS, job -> job.result()
                    .expectedDamageUsd()),
            usd("Worth of the lost glass", JobSheet.GLASS, job -> job.result().glassValueUsd()),
            COST);

    private static Measure usd(String name, int column, ToDoubleFunction<SheetLine> asRun) {
        return new Measure(name, column, USD, SIGNED_USD, asRun);
    }
}
