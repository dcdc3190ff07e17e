package weatherlap.reports.inputs;

import java.util.stream.Collectors;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.assumptions.PriceDates;
import weatherlap.datasets.assumptions.PriceDates.Years;

/** Of which years prices are, in words. */
final class PriceWords {
    private PriceWords() {}

    /** As "prices: units of 2024, wages of 2023 to 2025 (6 rows without a year)". */
    static String of(AssumptionTables tables) {
        return PriceDates.of(tables).stream().map(PriceWords::group).collect(Collectors.joining(", ", "prices: ", ""));
    }

    private static String group(Years years) {
        String name = years.group().word();
        if (years.rows().isEmpty()) {
            return name + " without a year";
        }
        int first = years.rows().firstKey();
        int last = years.rows().lastKey();
        return name + " of " + first + (first == last ? "" : " to " + last)
                + (years.undated() == 0
                        ? ""
                        : " (" + Numbers.count(years.undated(), "row", "rows") + " without a year)");
    }
}
