package weatherlap.datasets.assumptions;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Toml;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;

/** Reads and writes {@code scenario.toml}: a table of choices, and a table for each scalar. */
final class ScenarioText {
    static final String FILE = "scenario.toml";

    /** No scenario is longer; what is longer is not read. */
    static final int LONGEST = 1_000_000;

    static final String CHOICES = "choices";

    /** Scalars of earlier versions, and what took their place. */
    private static final Map<String, String> RETIRED =
            Map.of("callback_cost_usd", "a leak under warranty now costs the shop what repair_cost_usd says");

    /** So many names that are not known are named; the rest are counted. */
    private static final int MOST_NAMED = 20;

    private final SettingPlaces places;
    private final Problems problems;

    private ScenarioText(SettingPlaces places, Problems problems) {
        this.places = places;
        this.problems = problems;
    }

    /** The scenario, or every problem in it. */
    static Optional<Scenario> read(String text, Problems problems) {
        Toml toml = new Toml(FILE, text);
        return toml.tree(problems).flatMap(tree -> read(tree, SettingPlaces.in(toml), problems));
    }

    /**
     * The same of a tree that was read already.
     *
     * @param tree a node for each scalar by its name, and one for the choices
     */
    static Optional<Scenario> read(JsonNode tree, SettingPlaces places, Problems problems) {
        int before = problems.errorCount();
        Optional<Scenario> read = new ScenarioText(places, problems).scenario(tree);
        return problems.errorCount() > before ? Optional.empty() : read;
    }

    private Optional<Scenario> scenario(JsonNode tree) {
        checkNames(tree);
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            JsonNode node = tree.get(scalar.key());
            if (node == null) {
                error(scalar.key(), "is missing (" + SettingNode.expected(scalar) + ")");
            } else {
                new SettingNode(scalar, node, places, problems)
                        .read()
                        .ifPresent(setting -> settings.put(scalar, setting));
            }
        }
        Map<Choice, String> choices = choices(tree.path(CHOICES));
        boolean whole = settings.size() == Scalar.values().length && choices.size() == Choice.values().length;
        return whole ? Optional.of(new Scenario(settings, choices)) : Optional.empty();
    }

    private void checkNames(JsonNode tree) {
        List<String> known =
                new ArrayList<>(Arrays.stream(Scalar.values()).map(Scalar::key).toList());
        known.add(CHOICES);
        List<String> unknown = new ArrayList<>();
        tree.fieldNames().forEachRemaining(name -> {
            if (RETIRED.containsKey(name)) {
                problems.warning(places.at(name, "", "is no longer used: " + RETIRED.get(name)));
            } else if (!known.contains(name)) {
                unknown.add(name);
            }
        });
        Arrays.stream(Choice.values()).map(Choice::key).forEach(known::add);
        for (String name : unknown.subList(0, Math.min(unknown.size(), MOST_NAMED))) {
            error(name, "is not known" + Nearest.hint(name, known));
        }
        if (unknown.size() > MOST_NAMED) {
            problems.error(FILE, "holds " + (unknown.size() - MOST_NAMED) + " more unknown names");
        }
    }

    private void error(String name, String message) {
        problems.error(places.at(name, "", message));
    }

    private Map<Choice, String> choices(JsonNode table) {
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Iterator<String> names = table.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (Choice.of(name).isEmpty()) {
                List<String> known =
                        Arrays.stream(Choice.values()).map(Choice::key).toList();
                error(name, "is not a choice" + Nearest.hint(name, known));
            }
        }
        for (Choice choice : Choice.values()) {
            if (!table.has(choice.key()) && choice.whenMissing().isPresent()) {
                choices.put(choice, choice.whenMissing().orElseThrow());
                continue;
            }
            JsonNode word = table.path(choice.key());
            String fault = word.isTextual()
                    ? Changes.fault(choice, word.textValue())
                    : "is missing (expected: a word"
                            + (choice.allowed().isEmpty() ? "" : ", one of " + String.join(", ", choice.allowed()))
                            + ")";
            if (fault.isEmpty()) {
                choices.put(choice, word.textValue());
            } else {
                problems.error(places.at(choice.key(), "value", fault));
            }
        }
        return choices;
    }

    /** Writes a scenario in the order of its names; what is written reads back as the same scenario. */
    static String write(Scenario scenario) {
        StringBuilder out = new StringBuilder("# The scenario as used.\n\n[" + CHOICES + "]\n");
        scenario.choices().forEach((choice, word) -> out.append(choice.key() + " = " + Toml.quote(word) + "\n"));
        scenario.settings().forEach((scalar, setting) -> out.append(table(scalar, setting)));
        return out.toString();
    }

    /** Scalars and choices as rows of a table would be, in the order of their names. */
    static Map<String, Map<String, String>> rows(Scenario scenario) {
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        scenario.choices().forEach((choice, word) -> rows.put(CHOICES + "/" + choice.key(), Map.of("value", word)));
        scenario.settings().forEach((scalar, setting) -> rows.put(scalar.key(), cells(setting)));
        return rows;
    }

    private static Map<String, String> cells(Setting setting) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("value", CsvText.cell(setting.value()));
        setting.range().ifPresent(range -> {
            cells.put("low", CsvText.cell(range.low()));
            cells.put("high", CsvText.cell(range.high()));
        });
        cells.put("basis", basis(setting));
        cells.put("source", setting.origin().source());
        return cells;
    }

    private static String basis(Setting setting) {
        return setting.origin().basis().word();
    }

    private static String table(Scalar scalar, Setting setting) {
        Stream<String> range = setting.range().stream()
                .flatMap(r -> Stream.of("low = " + CsvText.cell(r.low()), "high = " + CsvText.cell(r.high())));
        Stream<String> head = Stream.of(
                "", "[" + scalar.key() + "]", "# " + scalar.meaning(), "value = " + CsvText.cell(setting.value()));
        Stream<String> tail = Stream.of(
                "unit = " + Toml.quote(scalar.unit()),
                "basis = " + Toml.quote(basis(setting)),
                "source = " + Toml.quote(setting.origin().source()));
        return String.join("\n", Stream.of(head, range, tail).flatMap(s -> s).toList()) + "\n";
    }
}
