package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.reports.format.SourceNames;
import weatherlap.reports.page.Anchor;
import weatherlap.reports.page.Trace;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.OpeningExplanation;
import weatherlap.sim.run.Simulator;

/**
 * Where the numbers of the answer come from, down to the rows of the tables: read off the explanations of one house, by both methods,
 * one opening of each operation.
 */
final class Traces {
    private static final String SIZES =
            "openings.csv: frame_width_in, frame_height_in, operation, new_operation, units,"
                    + " existing_material, and the widths and heights measured";
    private static final String WORK = SIZES + ", interior_return, return_layers, sill_height_in; elevations.csv:"
            + " width_ft, eave_height_ft, course_exposure_in, panel_length_in; houses.csv: cladding, year_built, storeys,"
            + " region, lead_test";
    private static final String LEAKS = "openings.csv: head_lap, jamb_lap, sill_lap, stain, frame_condition, left_in,"
            + " sill_height_in; elevations.csv: bearing_deg, overhang_in, eave_height_ft; houses.csv: terrain, barrier,"
            + " cladding, year_built; the weather, hour by hour";
    private static final List<Scalar> WORTH = List.of(
            Scalar.HORIZON_YEARS,
            Scalar.DISCOUNT_RATE,
            Scalar.REPAIR_COST_LOW_USD,
            Scalar.REPAIR_COST_USD,
            Scalar.REPAIR_COST_HIGH_USD,
            Scalar.GLASS_VALUE_USD_PER_FT2_YEAR);

    /** Names of the measures within the page. */
    enum Measure {
        PRICE,
        LABOUR,
        GLASS,
        LEAKS,
        HORIZON;

        String id() {
            return "from-" + name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private final Simulator simulator;
    private final SourceNames sources;
    private final List<OpeningExplanation> explained;

    /**
     * @param house whose openings serve as the example
     * @param sources what the tables that were read are called
     */
    Traces(Simulator simulator, House house, SourceNames sources) {
        this.simulator = simulator;
        this.sources = sources;
        List<Opening> openings = house.openings().toList();
        Set<Operation> seen = new HashSet<>();
        explained = IntStream.range(0, openings.size())
                .filter(i -> seen.add(openings.get(i).operation()))
                .boxed()
                .flatMap(i ->
                        Method.openTo(house.cladding()).stream().map(method -> simulator.explain(house, i, method)))
                .toList();
    }

    List<Trace> all() {
        Map<Measure, Set<Origin>> origins = new EnumMap<>(Measure.class);
        origins.put(Measure.PRICE, origins(OpeningExplanation::price, OpeningExplanation::material));
        origins.put(Measure.LABOUR, origins(OpeningExplanation::labour));
        origins.put(Measure.GLASS, origins(OpeningExplanation::glassLost));
        origins.put(Measure.LEAKS, origins(OpeningExplanation::leak));
        origins.put(Measure.HORIZON, settings());
        return List.of(
                trace(
                        Measure.PRICE,
                        "Price, cost to the shop, gross profit",
                        "houses.csv: price_usd, cost_usd_mean, material_usd_mean, gross_profit_per_crew_day_usd",
                        WORK,
                        origins),
                trace(
                        Measure.LABOUR,
                        "Labor and crew days",
                        "houses.csv: labour_hours_mean, crew_days; openings.csv: labour_minutes_mean",
                        WORK,
                        origins),
                trace(
                        Measure.GLASS,
                        "Glass lost",
                        "houses.csv and openings.csv: glass_lost_ft2, glass_lost_pct",
                        SIZES,
                        origins),
                trace(
                        Measure.LEAKS,
                        "Chance of leak damage",
                        "houses.csv and openings.csv: leak_probability, leak_score; leaks.csv: fault by fault",
                        LEAKS,
                        origins),
                trace(
                        Measure.HORIZON,
                        "Expected damage and cost over the years",
                        "houses.csv: expected_damage_usd, horizon_cost_usd_mean, preferred, preferred_probability",
                        "price, glass lost and chance of leak damage as above",
                        origins));
    }

    private Trace trace(
            Measure measure, String name, String results, String measured, Map<Measure, Set<Origin>> origins) {
        Map<String, Set<String>> tables = new TreeMap<>();
        origins.get(measure).forEach(origin -> tables.computeIfAbsent(origin.table(), table -> new TreeSet<>())
                .add(origin.row()));
        List<Trace.Rows> assumed = new ArrayList<>();
        tables.forEach((table, rows) -> assumed.add(new Trace.Rows(
                sources.table(table),
                rows.stream()
                        .map(row -> new Trace.Row(sources.row(table, row), Anchor.of(table, row)))
                        .toList())));
        return new Trace(measure.id(), name, results, sources.columns(measured), assumed);
    }

    private Set<Origin> settings() {
        return WORTH.stream()
                .map(scalar -> simulator
                        .assumptions()
                        .scenario()
                        .settings()
                        .get(scalar)
                        .origin())
                .collect(Collectors.toSet());
    }

    @SafeVarargs
    private Set<Origin> origins(Function<OpeningExplanation, Amount>... amounts) {
        Set<Origin> origins = new HashSet<>();
        explained.forEach(opening -> Stream.of(amounts).forEach(amount -> collect(amount.apply(opening), origins)));
        return origins;
    }

    private static void collect(Amount amount, Set<Origin> origins) {
        amount.origin().ifPresent(origins::add);
        amount.parts().forEach(part -> collect(part, origins));
    }
}
