package weatherlap.datasets.assumptions;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** Changes of scalars, choices and wages written NAME=VALUE. */
final class Changes {
    /** What messages call the place a change comes from. */
    static final String FILE = "--set";

    /** Source of a value that a change set. */
    private static final String BY_HAND = "set for this run";

    private Changes() {}

    /**
     * The scenario with what a file of the shop says, on its records. What was set by hand stands.
     *
     * @param source the file
     */
    static Scenario own(Scenario scenario, Map<Scalar, Double> values, String source) {
        Map<Scalar, Setting> settings = new EnumMap<>(scenario.settings());
        values.forEach((scalar, value) -> {
            Setting before = settings.get(scalar);
            if (!before.origin().source().equals(BY_HAND)) {
                Origin origin = new Origin(ScenarioText.FILE, scalar.key(), Basis.OWN_RECORDS, source);
                settings.put(
                        scalar, new Setting(scalar, value, before.with(value).range(), origin));
            }
        });
        return new Scenario(settings, scenario.choices());
    }

    /** The assumptions with each change made in turn; what cannot be made is reported. */
    static Assumptions apply(Assumptions assumptions, List<String> changes, Problems problems) {
        Assumptions changed = assumptions;
        for (String change : changes) {
            changed = apply(changed, change, problems);
        }
        return changed;
    }

    private static Assumptions apply(Assumptions assumptions, String change, Problems problems) {
        int equals = change.indexOf('=');
        String name = change.substring(0, Math.max(0, equals)).strip();
        String value = change.substring(equals + 1).strip();
        Optional<Scalar> scalar = Scalar.of(name);
        Optional<Choice> choice = Choice.of(name);
        WageChanges wages = new WageChanges(assumptions.wages());
        String fault = equals < 0
                ? Quoted.of(change) + " must be written NAME=VALUE"
                : scalar.map(s -> SettingNode.fault(s, value))
                        .or(() -> choice.map(c -> fault(c, value)))
                        .orElseGet(() -> wages.knows(name)
                                ? wages.fault(name, value)
                                : "is not known" + Nearest.hint(name, names(wages)));
        if (!fault.isEmpty()) {
            problems.error(FILE, 0, Quoted.bare(name), fault);
            return assumptions;
        }
        if (wages.knows(name)) {
            return assumptions.withWages(wages.with(name, Double.parseDouble(value)));
        }
        Scenario scenario = assumptions.scenario();
        return assumptions.with(scalar.map(s -> set(scenario, s, Double.parseDouble(value)))
                .orElseGet(() -> scenario.with(choice.orElseThrow(), value)));
    }

    /** A value set by hand no longer has the basis that the table gave it. */
    private static Scenario set(Scenario scenario, Scalar scalar, double value) {
        Setting before = scenario.settings().get(scalar);
        if (before.value() == value) {
            return scenario;
        }
        Origin origin = new Origin(ScenarioText.FILE, scalar.key(), Basis.JUDGEMENT, BY_HAND);
        Setting after = new Setting(scalar, value, before.with(value).range(), origin);
        Map<Scalar, Setting> settings = new EnumMap<>(scenario.settings());
        settings.put(scalar, after);
        return new Scenario(settings, scenario.choices());
    }

    /** What is wrong with a word for a choice; empty: nothing. */
    static String fault(Choice choice, String word) {
        if (choice.allowed().isEmpty()) {
            return word.isBlank() ? "is empty" : "";
        }
        return new CellType.Word(choice.allowed()).fault(word);
    }

    private static List<String> names(WageChanges wages) {
        return Stream.of(
                        Arrays.stream(Scalar.values()).map(Scalar::key),
                        Arrays.stream(Choice.values()).map(Choice::key),
                        wages.names())
                .flatMap(names -> names)
                .toList();
    }
}
