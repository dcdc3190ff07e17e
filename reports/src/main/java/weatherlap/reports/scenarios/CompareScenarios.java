package weatherlap.reports.scenarios;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.drivers.SimulatedPortfolio;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.scenarios.ScenarioRun;
import weatherlap.analysis.scenarios.SideBySide;
import weatherlap.analysis.tables.Comparison;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.WriteAssumptions;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.SafeName;
import weatherlap.reports.output.Version;
import weatherlap.reports.weather.ClimateMemo;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.Simulator;

/**
 * Simulates the same houses under several sets of assumptions, on the draws of the first, and writes what differs.
 *
 * @param paths what the run reads where a set names nothing else
 * @param threads to simulate with, 1 or more
 */
public record CompareScenarios(InputPaths paths, List<ScenarioWord> sets, OutputRequest output, int threads) {
    /** @throws weatherlap.reports.inputs.BadInput with every problem of the first set that has any, before anything is simulated or written */
    public void run(Messages messages) throws IOException {
        Inputs first = Inputs.read(sets.get(0).paths(paths));
        List<Inputs> inputs = Stream.concat(
                        Stream.of(first), sets.stream().skip(1).map(set -> first.under(set.paths(paths))))
                .toList();
        output.refuseOther(checksums(inputs));
        messages.warn(first.warnings());
        List<House> houses = SimulatedPortfolio.sample(first.portfolio().houses(), Comparison.MOST_SHOWN);
        try (OutputFolder folder = output.asked(options()).open(named())) {
            ClimateMemo climate = new ClimateMemo(first.climate());
            List<ScenarioRun> runs = new ArrayList<>();
            try (Messages.Progress progress = messages.progress("houses", houses.size() * sets.size())) {
                for (int s = 0; s < sets.size(); s++) {
                    runs.add(run(sets.get(s).name(), inputs.get(s), first, houses, climate, progress));
                }
            }
            ScenarioReport report = new ScenarioReport(
                    first.name(), scope(houses, first), new SideBySide(runs), settings(first, houses));
            report.write(folder);
            for (int s = 0; s < sets.size(); s++) {
                WriteAssumptions.write(inputs.get(s).assumptions(), folderOf(s), folder);
            }
            folder.commit(
                    new RunRecord(Version.current(), "compare --scenario", settings(first, houses), checksums(inputs)));
            report.lines().forEach(messages::result);
        }
        messages.note("the page is in " + NextCommand.pages(output.folder(), "scenarios"));
    }

    private ScenarioRun run(
            String name,
            Inputs own,
            Inputs first,
            List<House> houses,
            ClimateMemo climate,
            Messages.Progress progress) {
        Scenario draws = first.assumptions().assumptions().scenario();
        Scenario scenario = own.assumptions().assumptions().scenario();
        Simulator simulator = new Simulator(
                own.assumptions().assumptions(),
                climate.apply(scenario),
                draws.choice(Choice.SAMPLING, Sampling.class),
                draws.whole(Scalar.DRAWS),
                first.seed());
        double riskLimit = scenario.value(Scalar.RISK_LIMIT);
        List<HouseChoice> choices = new ArrayList<>();
        simulator.run(houses.iterator(), threads, batch -> HouseChoice.each(batch, riskLimit), batch -> {
            choices.addAll(batch);
            batch.forEach(choice -> progress.step());
        });
        boolean bearings = !first.climate().anyBearing();
        return new ScenarioRun(name, simulator.contrast(), Decision.of(choices, draws, bearings));
    }

    private static String scope(List<House> houses, Inputs inputs) {
        int all = inputs.portfolio().houses().size();
        return (houses.size() < all ? Numbers.plain(houses.size(), 0) + " of " : "")
                + Numbers.count(all, "house", "houses") + ", every set on the same houses, weather and luck";
    }

    private List<Path> named() {
        return Stream.concat(paths.named().stream(), sets.stream().flatMap(set -> set.folder().stream()))
                .toList();
    }

    private String folderOf(int set) {
        return "assumptions/" + SafeName.of(sets.get(set).name()) + "/";
    }

    /** Each set by the tables it writes, which hold every change. */
    private List<String> options() {
        return IntStream.range(0, sets.size())
                .mapToObj(s -> "--scenario=" + sets.get(s).name() + "=" + RunFile.HERE + "/" + folderOf(s))
                .toList();
    }

    private SortedMap<String, String> checksums(List<Inputs> inputs) {
        SortedMap<String, String> sums = new TreeMap<>();
        for (int s = 0; s < inputs.size(); s++) {
            String folder = folderOf(s);
            inputs.get(s)
                    .checksums()
                    .forEach((name, sum) -> sums.put(
                            name.startsWith("assumptions/") ? name.replace("assumptions/", folder) : name, sum));
        }
        return sums;
    }

    private Map<String, Object> settings(Inputs first, List<House> houses) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("portfolio", first.name());
        settings.put("climate", first.climate().name());
        settings.put("seed", first.seed());
        settings.put("draws", first.assumptions().assumptions().scenario().whole(Scalar.DRAWS));
        settings.put("houses", houses.size());
        settings.put("scenarios", sets.stream().map(ScenarioWord::name).toList());
        return settings;
    }
}
