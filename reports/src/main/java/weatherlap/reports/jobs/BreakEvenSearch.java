package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
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
import weatherlap.analysis.breakeven.BreakEven;
import weatherlap.analysis.breakeven.BreakEven.Crossing;
import weatherlap.analysis.breakeven.BreakEvenTable;
import weatherlap.analysis.breakeven.ChoiceTable;
import weatherlap.analysis.breakeven.PreferenceMap;
import weatherlap.analysis.drivers.Factor;
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
 * Finds where the preferred method changes as a number does, and what it is by each word of a choice.
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

    /** @throws BadInput with every problem of the tables or an unknown name, before anything is simulated or written */
    public void run(Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        Assumptions base = inputs.assumptions().assumptions();
        List<Varied> varied = varied(base);
        output.refuseOther(inputs.checksums());
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
            List<ChoiceTable.Word> chosen = new ArrayList<>();
            List<String> words = new ArrayList<>();
            for (Varied one : varied) {
                if (one instanceof Varied.OfNumber number) {
                    BreakEven own = search(number, base, costs, scope, folder, inputs.seed());
                    found.add(own);
                    words.addAll(BreakEvenTable.words(
                            own, number.factor().unit(), number.factor().range().likely()));
                } else if (one instanceof Varied.OfWords choice) {
                    List<ChoiceTable.Word> own = tried(choice, base, costs);
                    chosen.addAll(own);
                    words.add(ChoiceTable.words(own));
                }
            }
            TableWriter.CSV.write(
                    folder,
                    chosen.isEmpty()
                            ? List.of(BreakEvenTable.of(found))
                            : List.of(BreakEvenTable.of(found), ChoiceTable.of(chosen)));
            if (varied.size() == 2) {
                Drivers.write(folder, "map", map(varied, base, costs, scope));
            }
            folder.commit(
                    new RunRecord(Version.current(), "breakeven", settings(inputs, simulated), inputs.checksums()));
            messages.result("Where the better method changes, over " + scope + ":");
            words.forEach(messages::result);
            messages.note(told(varied, output.folder()));
        }
    }

    private static String told(List<Varied> varied, Path folder) {
        Optional<Path> chart = varied.size() == 2
                ? Optional.of(Path.of("map"))
                : varied.stream()
                        .filter(Varied.OfNumber.class::isInstance)
                        .map(one -> Path.of(chart(one.name())))
                        .findFirst();
        return "the tables are in " + folder
                + chart.map(name ->
                                "; a browser shows " + folder.resolve("charts").resolve(name + ".svg"))
                        .orElse("");
    }

    private List<Varied> varied(Assumptions base) {
        List<String> problems = new ArrayList<>();
        List<Varied> varied = new ArrayList<>();
        for (String name : names) {
            Varied.named(base, name)
                    .ifPresentOrElse(
                            varied::add,
                            () -> problems.add(
                                    "--vary: \"" + name + "\" is not a setting, choice, table/row or table/group; see"
                                            + " weatherlap breakeven --help" + Nearest.hint(name, Varied.known(base))));
        }
        if (new HashSet<>(names).size() < names.size()) {
            problems.add("--vary: \"" + names.get(0) + "\" is there twice; a map takes two");
        }
        if (problems.isEmpty()) {
            varied.set(0, ranged(varied.get(0), base, problems));
        }
        if (problems.isEmpty()) {
            problems.addAll(contradictions(varied, base));
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return varied;
    }

    /** What the ends of the search would contradict: of one range that the user names, of two at every corner of their map. */
    private static List<String> contradictions(List<Varied> varied, Assumptions base) {
        List<Assumptions> corners = List.of(base);
        for (Varied one : varied) {
            Varied.Axis axis = one.axis();
            List<Double> ends = List.of(
                    axis.values().get(0), axis.values().get(axis.values().size() - 1));
            corners = corners.stream()
                    .flatMap(corner -> ends.stream().map(end -> axis.set().apply(corner, end)))
                    .toList();
        }
        return corners.stream()
                .flatMap(corner -> AssumptionTables.contradictions(corner).stream())
                .map(problem ->
                        problem + " (at one end of what --vary would try; give a smaller range with --from and --to)")
                .distinct()
                .toList();
    }

    /** The first of them within the range that was asked for. */
    private Varied ranged(Varied first, Assumptions base, List<String> problems) {
        if (first instanceof Varied.OfNumber number) {
            Factor factor = number.factor();
            Factor.Span span = new Factor.Span(
                    from.orElse(number.span().low()), to.orElse(number.span().high()));
            if (!(span.low() < span.high()) || span.low() < factor.lowest() || span.high() > factor.highest()) {
                problems.add("--from, --to: the range of " + factor.name() + " (" + span.low() + " to " + span.high()
                        + ") must go up and stay within " + factor.lowest() + " to " + factor.highest());
            }
            return new Varied.OfNumber(factor, SoundSpan.of(factor, span, from.isPresent(), to.isPresent(), base));
        }
        if (from.isPresent() || to.isPresent()) {
            problems.add("--from, --to: " + first.name() + " is a choice of words, so it has no range");
        }
        return first;
    }

    private static List<ChoiceTable.Word> tried(
            Varied.OfWords choice, Assumptions base, Function<Assumptions, Costs> costs) {
        return choice.words().stream()
                .map(word -> ChoiceTable.Word.of(
                        base.scenario().contrast(),
                        choice.name(),
                        word,
                        word.equals(base.scenario().choice(choice.choice())),
                        costs.apply(choice.set(base, word)).differenceUsd()))
                .toList();
    }

    private BreakEven search(
            Varied.OfNumber number,
            Assumptions base,
            Function<Assumptions, Costs> costs,
            String scope,
            OutputFolder folder,
            long seed)
            throws IOException {
        Map<Double, Costs> seen = Collections.synchronizedMap(new TreeMap<>());
        Factor factor = number.factor();
        BreakEven found = BreakEven.over(
                base.scenario().contrast(),
                factor.name(),
                number.span().low(),
                number.span().high(),
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
        Drivers.write(folder, chart(factor.name()), picture);
        return found;
    }

    private static String chart(String name) {
        return SafeName.of(name.replace('/', '-'));
    }

    private static Spread spread(Crossing crossing) {
        return new Spread(
                Math.min(crossing.low90(), crossing.value()),
                crossing.value(),
                Math.max(crossing.high90(), crossing.value()));
    }

    private static BreakEvenMap map(
            List<Varied> varied, Assumptions base, Function<Assumptions, Costs> costs, String scope) {
        Varied.Axis across = varied.get(0).axis();
        Varied.Axis up = varied.get(1).axis();
        PreferenceMap map = PreferenceMap.over(
                base.scenario().contrast(),
                across.title(),
                across.values(),
                up.title(),
                up.values(),
                (x, y) -> costs.apply(up.set().apply(across.set().apply(base, x), y))
                        .differenceUsd());
        return new BreakEvenMap(
                base.scenario().contrast(),
                scope,
                across.title(),
                up.title(),
                across.labels(),
                up.labels(),
                map.firstCheaper());
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
