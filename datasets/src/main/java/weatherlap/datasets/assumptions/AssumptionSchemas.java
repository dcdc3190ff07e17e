package weatherlap.datasets.assumptions;

import static weatherlap.datasets.table.Column.fraction;
import static weatherlap.datasets.table.Column.key;
import static weatherlap.datasets.table.Column.number;
import static weatherlap.datasets.table.Column.positive;
import static weatherlap.datasets.table.Column.prose;
import static weatherlap.datasets.table.Column.whole;
import static weatherlap.datasets.table.Column.word;
import static weatherlap.datasets.table.Column.wordOrText;
import static weatherlap.datasets.table.Column.words;
import static weatherlap.datasets.table.Column.yesNo;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/** The assumption tables, column by column. */
public final class AssumptionSchemas {
    public static final Schema LABOUR_STEPS = schema(
            "labour-steps.csv",
            "one row for each step that a crew would name",
            List.of("step_id"),
            key("step_id", "key"),
            words("method", MethodScope.words(), "which method takes the step"),
            prose("trade_name", "as a crew would say it"),
            word("driver", Driver.class, "what the minutes are counted by"),
            number("low_minutes", "minutes", 0, 100_000, "person-minutes for one unit of the driver"),
            number("likely_minutes", "minutes", 0, 100_000, "the same, likely"),
            number("high_minutes", "minutes", 0, 100_000, "the same, high"),
            condition(),
            yesNo("cold_sensitive", "slower in the cold"),
            yesNo("height_sensitive", "slower off a ladder or staging"),
            whole("people", 1, 4, "how many the step takes at once; empty: 1").optional());

    public static final Schema MATERIALS = schema(
            "materials.csv",
            "one row for each thing bought by the package",
            List.of("item_id"),
            key("item_id", "key"),
            words("method", MethodScope.words(), "which method uses it"),
            prose("trade_name", "as a supplier would say it"),
            word("driver", Driver.class, "what the quantity is counted by"),
            number("quantity_per_driver", "", 0, 1e6, "stock for one unit of the driver, before waste"),
            prose("unit", "of stock"),
            number("waste_fraction", "fraction", 0, 5, "bought above what is used"),
            prose("sold_as", "what one package is called, such as roll; empty: package")
                    .optional(),
            positive("package_size", "", 1e6, "units of stock in one package"),
            number("price_low", "USD", 0, 1e6, "of one package"),
            number("price_likely", "USD", 0, 1e6, "the same, likely"),
            number("price_high", "USD", 0, 1e6, "the same, high"),
            condition(),
            priceYear());

    public static final Schema UNITS = schema(
            "units.csv",
            "what a new unit costs the shop",
            List.of("method", "operation"),
            word("method", Method.class, "which method the unit is made for"),
            word("operation", Operation.class, "how it opens"),
            number("base_usd", "USD", 0, 1e6, "of a unit, whatever its size"),
            number("usd_per_united_inch", "USD/in.", 0, 10_000, "for each inch of width + height"),
            number("rating_psf", "psf", 10, 500, "performance grade (DP) that the maker states")
                    .optional(),
            priceYear());

    public static final Schema SIGHTLINES = schema(
            "sightlines.csv",
            "widths that hide glass, seen square on, and what an order takes off the opening",
            List.of("product", "material", "operation"),
            word("product", Product.class, "the unit that stands, or one of those that replace it"),
            word("material", FrameMaterial.class, "of its frame"),
            word("operation", Operation.class, "how it opens"),
            inches("head_in", "frame at the head"),
            inches("jamb_in", "frame at one jamb"),
            inches("sill_in", "frame at the sill"),
            inches("meeting_rail_in", "where two sashes meet; 0 without"),
            inches("top_rail_in", "sash or glazing bead at the top"),
            inches("bottom_rail_in", "the same at the bottom"),
            inches("stile_in", "the same at one side"),
            inches("width_deduction_in", "order width below the opening it goes into; 0 for an existing unit"),
            inches("height_deduction_in", "the same in height"),
            positive("depth_in", "inches", 24, "frame depth, outside to inside"));

    public static final Schema LAP_FAULTS = schema(
            "lap-faults.csv",
            "one row for each thing that can be wrong where a window meets the wall",
            List.of("fault_id"),
            key("fault_id", "key"),
            word("joint", Joint.class, "where it is"),
            prose("trade_name", "as the trade says it"),
            prose("what_happens", "what water does there"),
            words("method", MethodScope.words(), "under which method it stands after the work"),
            word("kind", FaultKind.class, "in the wall already, or brought by the work"),
            prose(
                            "applies_when",
                            "such as cladding=brick_veneer|stucco & method!=insert or year_built>=1955; empty: always")
                    .optional(),
            fraction("prior_housewrap", "existing: probability at an opening, over housewrap")
                    .optional(),
            fraction("prior_building_paper", "the same over building paper").optional(),
            fraction("prior_none", "the same without a barrier").optional(),
            odds("odds_before_1960"),
            odds("odds_1960_1979"),
            odds("odds_1980_1999"),
            odds("odds_from_2000"),
            fraction("prior_careful", "new: probability that careful work brings it")
                    .optional(),
            fraction("prior_typical", "the same for typical work").optional(),
            fraction("prior_hurried", "the same for hurried work").optional(),
            word("first_line", FirstLine.class, "what stands in front of it"),
            fraction("admitted_low", "share of the arriving water that it lets past"),
            fraction("admitted_likely", "the same, likely"),
            fraction("admitted_high", "the same, high"),
            prose("seen_as", "what a look at the lap shows, such as head_lap=reversed; empty: nothing")
                    .optional(),
            positive("stain_odds", "", 1000, "multiplies the odds where a stain is seen; 1: says nothing"));

    public static final Schema WAGES = schema(
            "wages.csv",
            "what an hour of a person costs",
            List.of("region", "role"),
            prose("region", "as houses and the scenario name it"),
            prose("role", "such as carpenter or helper"),
            positive("usd_per_hour", "USD/h", 1000, "paid"),
            number("burden_fraction", "fraction", 0, 5, "taxes, insurance and benefits on top"),
            priceYear());

    /** May be left out. */
    public static final Schema PRICE_INDEX = schema(
            "price-index.csv",
            "what prices of a group cost in a year, over any other year of the table; a table that may be left out",
            List.of("price_group", "year"),
            word("price_group", List.of("units", "materials", "wages"), "which prices: the tables of that name"),
            whole("year", 1900, 2200, "calendar year"),
            positive("price_index", "", 1e6, "any scale; only the share of one year in another counts"));

    /** May be left out. */
    public static final Schema CREWS = schema(
            "crews.csv",
            "one row for each crew; you may leave this table out",
            List.of("crew"),
            prose("crew", "its name, as --crew takes it"),
            number("factor", "", 0.1, 10, "its minutes over those of labour-steps.csv"),
            number("low_90", "", 0.01, 100, "lower end of the 90% interval"),
            number("high_90", "", 0.01, 100, "upper end of it"),
            whole("jobs", 0, 100_000_000, "that it was learnt from"));

    private AssumptionSchemas() {}

    private static Schema schema(String file, String meaning, List<String> key, Column... columns) {
        Column basis = wordOrText("basis", Basis.words(), "how far the row can be trusted");
        Column source = prose(
                        "source",
                        "citation; may be empty unless the basis is standard, handbook, dataset or own records")
                .optional();
        return new Schema(
                file,
                meaning,
                Stream.concat(Arrays.stream(columns), Stream.of(basis, source)).toList(),
                key);
    }

    private static Column condition() {
        return prose(
                        "applies_when",
                        "such as cladding=brick_veneer|stucco & storey!=1 or year_built<1950; empty: always")
                .optional();
    }

    private static Column priceYear() {
        return whole("price_year", 1900, 2200, "calendar year that the price is of; empty: not known")
                .optional();
    }

    private static Column inches(String name, String meaning) {
        return number(name, "inches", 0, 24, meaning);
    }

    private static Column odds(String name) {
        return positive(name, "", 1000, "existing: multiplies the odds of the prior for a house built then")
                .optional();
    }
}
