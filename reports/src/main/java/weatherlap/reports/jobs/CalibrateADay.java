package weatherlap.reports.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.ownfigures.OwnFigures;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.portfolio.StandardJob;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.method.Method;

/**
 * Scales the labour steps so that one job comes out at the windows a day that an owner knows, and writes them as assumption tables.
 *
 * @param aDay windows a day by method
 * @param portfolio folder of the house that the figures are of; empty: the bundled demo, where a house is named
 * @param like the house's key; empty: the standard job
 * @param assumptions folder to start from; empty: the bundled tables
 * @param changes of scalars, choices and wages, each NAME=VALUE
 */
public record CalibrateADay(
        Map<Method, Double> aDay,
        Optional<Path> portfolio,
        String like,
        Optional<Path> assumptions,
        List<String> changes,
        OutputRequest output) {
    private static final int SHOWN = 12;

    public CalibrateADay {
        aDay = Collections.unmodifiableMap(new EnumMap<>(aDay));
        changes = List.copyOf(changes);
    }

    /** @throws BadInput with every problem of the tables, for a house that is not there and for figures that the tables cannot reach */
    public void run(Messages messages) throws IOException {
        AssumptionTables tables = BadInput.unlessSound(Inputs.assumptions(assumptions, changes));
        OwnFigures own = new OwnFigures(tables.assumptions(), house(tables));
        String job = like.isEmpty() ? "the standard job" : "house " + like;
        refuseUnreachable(own, job, tables.assumptions().scenario());
        OwnFigures.Tuned tuned = tuned(own, job);
        try (OutputFolder folder = output.open(
                Stream.concat(portfolio.stream(), assumptions.stream()).toList())) {
            WriteAssumptions.write(tables.withSteps(tuned.steps()), "assumptions/", folder);
            folder.commit(new RunRecord(Version.current(), "calibrate", settings(), sums(tables)));
        }
        lines(own, tuned, job, tables.assumptions().scenario()).forEach(messages::result);
        messages.note("the tuned tables are in " + output.folder().resolve("assumptions"));
        messages.note("next: "
                + NextCommand.command(
                        "compare", "--assumptions", output.folder().resolve("assumptions"), "--out", "report"));
    }

    private House house(AssumptionTables tables) {
        if (like.isEmpty()) {
            return StandardJob.house();
        }
        Portfolio read = portfolio.isEmpty()
                ? DemoPortfolio.load()
                : BadInput.unlessSound(Portfolios.readHouse(portfolio.get(), like, Optional.of(tables.assumptions())));
        House house = read.houses().stream()
                .filter(h -> h.id().equals(like))
                .findFirst()
                .orElseThrow(() -> new BadInput(List.of("--like: there is no house \"" + like + "\"")));
        if (house.openingCount() == 0) {
            throw new BadInput(List.of("--like: house \"" + like + "\" has no windows"));
        }
        return house;
    }

    private void refuseUnreachable(OwnFigures own, String job, Scenario scenario) {
        List<String> refused = new ArrayList<>();
        aDay.forEach((method, rate) -> {
            OwnFigures.Reach reach = own.reach(method);
            if (rate < reach.low() || rate > reach.high()) {
                refused.add("--a-day " + figure(method) + ": the ranges of labour-steps.csv reach from "
                        + rate(reach.low()) + " to " + rate(reach.high()) + " windows a day on " + job + " ("
                        + day(scenario) + "); name a job like yours with --like, or change crew_size, hours_per_day"
                        + " and travel_minutes_per_day with --set");
            }
        });
        if (!refused.isEmpty()) {
            throw new BadInput(refused);
        }
    }

    private OwnFigures.Tuned tuned(OwnFigures own, String job) {
        try {
            return own.tuned(aDay, figures() + " windows a day on " + job);
        } catch (IllegalArgumentException e) {
            throw new BadInput(List.of("--a-day: " + e.getMessage() + " on " + job + ", though each alone would work"));
        }
    }

    private List<String> lines(OwnFigures own, OwnFigures.Tuned tuned, String job, Scenario scenario) {
        List<String> lines = new ArrayList<>();
        aDay.forEach((method, rate) -> lines.add("On " + job + " the tables gave "
                + rate(own.reach(method).now()) + " windows a day by " + method.label() + "; now " + rate(rate) + " ("
                + day(scenario) + ")."));
        lines.add(Numbers.count(tuned.moved().size(), "step", "steps")
                + " moved; the longest and least sure moved most. Steps that this job does not have stay. The largest"
                + " moves:");
        tuned.moved().entrySet().stream()
                .sorted(Comparator.comparingDouble(e -> -Math.abs(e.getValue())))
                .limit(SHOWN)
                .forEach(e -> lines.add("  " + moved(e.getKey(), e.getValue())));
        return lines;
    }

    private static String moved(LabourStep step, double change) {
        double now = step.minutes().mean();
        return step.id() + " (" + step.tradeName() + "): " + Numbers.plain(now / (1 + change), 2) + " to "
                + Numbers.plain(now, 2) + " min, " + Numbers.signed(100 * change, 0) + "%";
    }

    private static String day(Scenario scenario) {
        return Numbers.count(scenario.whole(Scalar.CREW_SIZE), "person", "people") + ", "
                + Numbers.plain(scenario.value(Scalar.HOURS_PER_DAY), 1) + " h a day of which "
                + Numbers.plain(scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY), 0) + " min on the road";
    }

    private static String rate(double windowsADay) {
        return Numbers.plain(windowsADay, 1);
    }

    private String figure(Method method) {
        return method.word() + "=" + rate(aDay.get(method));
    }

    private String figures() {
        return aDay.keySet().stream().map(this::figure).collect(Collectors.joining(", "));
    }

    private Map<String, Object> settings() {
        Map<String, Object> settings = new LinkedHashMap<>();
        aDay.forEach((method, rate) -> settings.put("a_day_" + method.word(), rate));
        settings.put("like", like);
        settings.put("changes", changes);
        return settings;
    }

    private static SortedMap<String, String> sums(AssumptionTables tables) {
        SortedMap<String, String> sums = new TreeMap<>();
        tables.texts().forEach((file, text) -> sums.put("assumptions/" + file, Checksum.ofText(text)));
        return sums;
    }
}
