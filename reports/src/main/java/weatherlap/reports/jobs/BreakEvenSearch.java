package weatherlap.reports.jobs;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.breakeven.BreakEven;
import weatherlap.analysis.breakeven.BreakEven.Crossing;
import weatherlap.analysis.breakeven.BreakEvenTable;
import weatherlap.analysis.breakeven.PreferenceMap;
import weatherlap.analysis.drivers.Factor;
import weatherlap.analysis.drivers.Factors;
import weatherlap.analysis.drivers.SimulatedPortfolio;
import weatherlap.analysis.drivers.SimulatedPortfolio.Costs;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.study.BreakEvenCurve;
import weatherlap.charts.study.BreakEvenMap;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Nearest;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.SafeName;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.output.Version;
import weatherlap.reports.weather.ClimateMemo;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.random.Streams;

/**
 * Finds where the preferred method changes.
 *
 * @param names one or two; two give a map as well
 * @param from low end of the first name's range; empty: half its likely value or its own low
 * @param to high end, likewise
 * @param houses of the portfolio to simulate, at most
 */
public record BreakEvenSearch(
        InputPaths paths,
        OutputRequest output,
        List<String> names,
        OptionalDouble from,
        OptionalDouble to,
        int houses) {
    private static final int STEPS = 12;
    private static final int RESAMPLES = 1000;
    private static final int MAP_CELLS = 9;
    private static final int HALVINGS = 40;

    /** @throws BadInput with every problem of the tables or an unknown name, before anything is simulated or written */
    public void run(Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        Assumptions base = inputs.assumptions().assumptions();
        List<Factor> factors = factors(base);
        messages.warn(inputs.warnings());
        List<House> simulated = SimulatedPortfolio.sample(inputs.portfolio().houses(), houses);
        SimulatedPortfolio portfolio = new SimulatedPortfolio(
                simulated, new ClimateMemo(inputs.climate()), base.scenario().whole(Scalar.DRAWS), inputs.seed());
        String scope = simulated.size() + " of "
                + Numbers.count(inputs.portfolio().houses().size(), "house", "houses");
        try (OutputFolder folder = output.open(paths.named());
                Messages.Progress progress = messages.progress("values tried", 0)) {
            Function<Assumptions, Costs> costs = assumed -> {
                Costs tried = portfolio.costs(assumed);
                progress.step();
                return tried;
            };
            List<BreakEven> found = new ArrayList<>();
            for (Factor factor : factors) {
                found.add(search(factor, base, costs, scope, folder, inputs.seed()));
            }
            TableWriter.CSV.write(folder, List.of(BreakEvenTable.of(found)));
            if (factors.size() == 2) {
                Drivers.write(folder, "map", map(factors, base, costs, scope));
            }
            folder.commit(
                    new RunRecord(Version.current(), "breakeven", settings(inputs, simulated), inputs.checksums()));
            messages.result("Where the preferred method changes, over " + scope + ":");
            for (int i = 0; i < found.size(); i++) {
                Factor factor = factors.get(i);
                BreakEvenTable.words(found.get(i), factor.unit(), factor.range().likely())
                        .forEach(messages::result);
            }
        }
        messages.note("breakeven.csv and charts are in " + output.folder() + "; a browser shows "
                + output.folder().resolve("charts").resolve(chart(factors.get(0)) + ".svg"));
    }

    private List<Factor> factors(Assumptions base) {
        List<String> known = Factors.all(base).stream().map(Factor::name).toList();
        List<String> problems = new ArrayList<>();
        List<Factor> factors = new ArrayList<>();
        for (String name : names) {
            Optional<Factor> factor = Factors.named(base, name);
            factor.ifPresentOrElse(
                    factors::add,
                    () -> problems.add("--vary: \"" + name + "\" is neither a scalar nor table/row"
                            + Nearest.hint(name, known) + "; weatherlap breakeven --help tells how names are made"));
        }
        if (new HashSet<>(names).size() < names.size()) {
            problems.add("--vary: \"" + names.get(0) + "\" stands twice; a map is of two");
        }
        if (problems.isEmpty()) {
            Factor.Span span = span(factors.get(0));
            if (!(span.low() < span.high())
                    || span.low() < factors.get(0).lowest()
                    || span.high() > factors.get(0).highest()) {
                problems.add("--from, --to: the range of " + names.get(0) + " (" + span.low() + " to " + span.high()
                        + ") must rise and stay from " + factors.get(0).lowest() + " to "
                        + factors.get(0).highest());
            }
        }
        if (problems.isEmpty()) {
            problems.addAll(contradictions(factors, base));
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return factors;
    }

    /** What the ends of the search would contradict: of one range that the user names, of two at every corner of their map. */
    private List<String> contradictions(List<Factor> factors, Assumptions base) {
        List<Assumptions> corners = List.of(base);
        for (Factor factor : factors) {
            Factor.Span span = sound(factor, base);
            corners = corners.stream()
                    .flatMap(corner -> Stream.of(span.low(), span.high()).map(end -> factor.assume(corner, end)))
                    .toList();
        }
        return corners.stream()
                .flatMap(corner -> AssumptionTables.contradictions(corner).stream())
                .map(problem ->
                        problem + " (at an end of what --vary would try; name a smaller range with --from and --to)")
                .distinct()
                .toList();
    }

    /** Where to look: as far as the user says, or else as the value goes with all others. */
    private Factor.Span sound(Factor factor, Assumptions base) {
        Factor.Span span = span(factor);
        boolean named = factor.name().equals(names.get(0));
        double likely =
                Math.max(span.low(), Math.min(span.high(), factor.range().likely()));
        return new Factor.Span(
                named && from.isPresent() ? span.low() : towards(span.low(), likely, factor, base),
                named && to.isPresent() ? span.high() : towards(span.high(), likely, factor, base));
    }

    /** The end, or as far from the likely value towards it as nothing contradicts. */
    private static double towards(double end, double likely, Factor factor, Assumptions base) {
        double sound = likely;
        double tried = end;
        for (int i = 0; i < HALVINGS; i++) {
            if (AssumptionTables.contradictions(factor.assume(base, tried)).isEmpty()) {
                sound = tried;
                if (i == 0) {
                    return end;
                }
            } else {
                end = tried;
            }
            tried = (sound + end) / 2;
        }
        return sound;
    }

    private Factor.Span span(Factor factor) {
        if (!factor.name().equals(names.get(0))) {
            return factor.search();
        }
        return new Factor.Span(
                from.orElse(factor.search().low()), to.orElse(factor.search().high()));
    }

    private BreakEven search(
            Factor factor,
            Assumptions base,
            Function<Assumptions, Costs> costs,
            String scope,
            OutputFolder folder,
            long seed)
            throws IOException {
        Map<Double, Costs> seen = Collections.synchronizedMap(new TreeMap<>());
        Factor.Span span = sound(factor, base);
        BreakEven found = BreakEven.over(
                base.scenario().contrast(),
                factor.name(),
                span.low(),
                span.high(),
                value -> seen.computeIfAbsent(value, v -> costs.apply(factor.assume(base, v)))
                        .differenceUsd(),
                new BreakEven.Effort(STEPS, RESAMPLES, new Streams(seed)));
        Optional<Spread> crossing = found.crossings().stream().findFirst().map(BreakEvenSearch::spread);
        Picture picture = new BreakEvenCurve(
                base.scenario().contrast(),
                scope,
                factor.name(),
                factor.unit(),
                "cost over " + Numbers.count(base.scenario().whole(Scalar.HORIZON_YEARS), "year", "years"),
                seen.entrySet().stream()
                        .map(e -> new BreakEvenCurve.Point(
                                e.getKey(),
                                new Pair<>(e.getValue().firstUsd(), e.getValue().secondUsd())))
                        .toList(),
                crossing,
                factor.range().likely());
        Drivers.write(folder, chart(factor), picture);
        return found;
    }

    private static String chart(Factor factor) {
        return SafeName.of(factor.name().replace('/', '-'));
    }

    private static Spread spread(Crossing crossing) {
        return new Spread(
                Math.min(crossing.low90(), crossing.value()),
                crossing.value(),
                Math.max(crossing.high90(), crossing.value()));
    }

    private BreakEvenMap map(List<Factor> factors, Assumptions base, Function<Assumptions, Costs> costs, String scope) {
        Factor across = factors.get(0);
        Factor up = factors.get(1);
        PreferenceMap map = PreferenceMap.over(
                base.scenario().contrast(), across.name(), values(sound(across, base)), up.name(), values(sound(up, base)), (x, y) -> costs.apply(
                                up.assume(across.assume(base, x), y))
                        .differenceUsd());
        return new BreakEvenMap(
                base.scenario().contrast(),
                scope,
                named(across),
                named(up),
                map.across().stream().map(v -> Factor.rounded(v)).toList(),
                map.up().stream().map(v -> Factor.rounded(v)).toList(),
                map.firstCheaper());
    }

    private static String named(Factor factor) {
        return factor.name() + (factor.unit().isEmpty() ? "" : ", " + factor.unit());
    }

    private static List<Double> values(Factor.Span span) {
        return IntStream.range(0, MAP_CELLS)
                .mapToObj(i -> span.low() + (span.high() - span.low()) * i / (MAP_CELLS - 1))
                .toList();
    }

    private Map<String, Object> settings(Inputs inputs, List<House> simulated) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", inputs.name());
        settings.put("climate", inputs.climate().name());
        settings.put("seed", inputs.seed());
        settings.put("draws", inputs.scenario().whole(Scalar.DRAWS));
        settings.put("houses", simulated.size());
        settings.put("vary", names);
        from.ifPresent(low -> settings.put("from", low));
        to.ifPresent(high -> settings.put("to", high));
        return settings;
    }
}
