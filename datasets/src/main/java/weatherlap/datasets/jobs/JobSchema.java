package weatherlap.datasets.jobs;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Method;

/** The columns of job records: those that every shop could keep, any fact a condition asks about, and minutes by step id. */
public final class JobSchema {
    private static final double MOST = 1e6;

    private static final List<Column> COLUMNS = List.of(
            Column.key("job_id", "key"),
            Column.text("date", "first day on site, year-month-day").optional(),
            Column.key("house_id", "as in a portfolio").optional(),
            Column.word("method", Method.class, "how the windows were replaced"),
            Column.text("crew", "its name").optional(),
            Column.whole("openings", 1, 10_000, "windows replaced"),
            count("elevations", "walls worked on"),
            count("days", "working days"),
            count("panels", "siding panels or boards taken down"),
            length("perimeter_ft", "around all openings"),
            length("head_ft", "heads of all openings"),
            length("jamb_ft", "both jambs of all openings"),
            length("sill_ft", "sills of all openings"),
            Column.number("glass_ft2", "ft²", 0, MOST, "visible glass of all new units")
                    .optional(),
            length("capping_ft", "frame covered with coil, all openings"),
            length("return_ft", "interior returns cut back, edge × layers"),
            count("fasteners", "screws along flanges"),
            Column.number("temperature_f", "°F", -60, 130, "outside").optional(),
            Column.positive("person_hours", "hours", MOST, "on site, travel not counted")
                    .optional(),
            Column.text("finished", "last day on site; empty: the date").optional(),
            Column.text(
                            "followed_until",
                            "last day on which a call would have been known; empty: the last day of the records")
                    .optional(),
            usd("price_usd", "what the family paid for the job, as invoiced"),
            usd("quoted_usd", "asked for the job before it began"),
            usd("estimated_material_usd", "units and items as estimated before the job"),
            usd("material_usd", "units and items as paid, without permit and tipping"));

    /** Columns of quantities, by what they count. */
    static final Map<Driver, String> QUANTITIES = Map.ofEntries(
            Map.entry(Driver.ELEVATION, "elevations"),
            Map.entry(Driver.DAY, "days"),
            Map.entry(Driver.PANEL, "panels"),
            Map.entry(Driver.PERIMETER_FT, "perimeter_ft"),
            Map.entry(Driver.HEAD_FT, "head_ft"),
            Map.entry(Driver.JAMB_FT, "jamb_ft"),
            Map.entry(Driver.SILL_FT, "sill_ft"),
            Map.entry(Driver.GLASS_FT2, "glass_ft2"),
            Map.entry(Driver.CAPPING_FT, "capping_ft"),
            Map.entry(Driver.RETURN_FT, "return_ft"),
            Map.entry(Driver.FASTENER, "fasteners"));

    private JobSchema() {}

    /**
     * The table for a set of assumptions. A step whose id is the name of another column has none of its own.
     *
     * @param file name of its file
     */
    public static Schema of(String file, Assumptions assumptions) {
        List<Column> columns = new ArrayList<>(COLUMNS);
        Fact.ofWork().stream().map(JobSchema::fact).forEach(columns::add);
        Set<String> names = new HashSet<>(columns.stream().map(Column::name).toList());
        assumptions.steps().stream()
                .map(LabourStep::id)
                .filter(names::add)
                .map(id -> Column.number(id, "person-minutes", 0, MOST, "of that step")
                        .optional())
                .forEach(columns::add);
        return new Schema(file, "finished jobs, one a row", columns, List.of("job_id"));
    }

    private static Column fact(Fact fact) {
        String meaning = "of the house or of all its openings";
        List<String> values = fact.allowed();
        return (fact == Fact.YEAR_BUILT
                        ? Column.whole(
                                fact.key(),
                                Integer.parseInt(values.get(0)),
                                Integer.parseInt(values.get(values.size() - 1)),
                                meaning)
                        : Column.word(fact.key(), values, meaning))
                .optional();
    }

    private static Column usd(String name, String meaning) {
        return Column.positive(name, "USD", 1e7, meaning).optional();
    }

    private static Column count(String name, String meaning) {
        return Column.number(name, "", 0, MOST, meaning).optional();
    }

    private static Column length(String name, String meaning) {
        return Column.number(name, "feet", 0, MOST, meaning).optional();
    }
}
