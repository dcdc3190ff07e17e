package weatherlap.datasets.assumptions;

import java.util.List;
import java.util.Locale;
import weatherlap.datasets.table.Schema;

/** What rises together in price: a table, and its columns of money. */
public enum PriceGroup {
    UNITS(AssumptionSchemas.UNITS, "base_usd", "usd_per_united_inch"),
    MATERIALS(AssumptionSchemas.MATERIALS, "price_low", "price_likely", "price_high"),
    WAGES(AssumptionSchemas.WAGES, "usd_per_hour");

    private final Schema table;
    private final List<String> columns;

    PriceGroup(Schema table, String... columns) {
        this.table = table;
        this.columns = List.of(columns);
    }

    /** The word of tables and sentences. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    Schema table() {
        return table;
    }

    List<String> columns() {
        return columns;
    }
}
