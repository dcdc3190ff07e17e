package weatherlap.datasets.assumptions;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;

/** Reads and writes {@code scenario.toml}: a table of choices, and a table for each scalar. */
final class ScenarioText {
    static final String FILE = "scenario.toml";

    /** No scenario is longer; what is longer is not read. */
    static final int LONGEST = 1_000_000;

    private static final String CHOICES = "choices";

    private final String text;
    private final Problems problems;

    private ScenarioText(String text, Problems problems) {
        this.text = text;
        this.problems = problems;
    }

    /** The scenario, or every problem in it. */
    static Optional<Scenario> read(String text, Problems problems) {
        int before = problems.errorCount();
        ScenarioText scenario = new ScenarioText(text, problems);
        Optional<Scenario> read = scenario.tree().flatMap(scenario::scenario);
        return problems.errorCount() > before ? Optional.empty() : read;
    }

    private Optional<JsonNode> tree() {
        if (nestsTooDeeply()) {
            problems.error(FILE, "nests deeper than a scenario does");
            return Optional.empty();
        }
        TomlFactory factory = TomlFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(8)
                        .maxNumberLength(60)
                        .maxStringLength(4000)
                        .build())
                .build();
        try {
            return Optional.of(new TomlMapper(factory).readTree(text));
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            problems.error(FILE, line, "", "is not TOML: " + firstLine(e.getOriginalMessage()));
        } catch (ArithmeticException | NumberFormatException e) {
            problems.error(FILE, "holds a number that no machine can: " + firstLine(e.getMessage()));
        }
        return Optional.empty();
    }

    /** A line of a scenario opens two brackets at most; a parser that recurses is not asked to read hundreds. */
    private boolean nestsTooDeeply() {
        return text.lines()
                .anyMatch(line -> line.chars().filter(c -> c == '[' || c == '{').count() > 50);
    }

    private static String firstLine(String message) {
        return Quoted.of(String.valueOf(message).lines().findFirst().orElse(""));
    }

    private Optional<Scenario> scenario(JsonNode tree) {
        checkNames(tree);
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            JsonNode node = tree.get(scalar.key());
            if (node == null) {
                problems.error(FILE, 0, scalar.key(), "is missing (" + SettingNode.expected(scalar) + ")");
            } else {
                new SettingNode(scalar, node, line(scalar.key()), problems)
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
        for (Iterator<String> names = tree.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                problems.error(FILE, line(name), Quoted.bare(name), "is not known" + Nearest.hint(name, known));
            }
        }
    }

    private Map<Choice, String> choices(JsonNode table) {
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Iterator<String> names = table.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (Choice.of(name).isEmpty()) {
                List<String> known =
                        Arrays.stream(Choice.values()).map(Choice::key).toList();
                problems.error(FILE, line(name), Quoted.bare(name), "is not a choice" + Nearest.hint(name, known));
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
                problems.error(FILE, line(choice.key()), choice.key(), fault);
            }
        }
        return choices;
    }

    /** Physical line on which a name begins a table or an entry; 0 where it does not stand so plainly. */
    private int line(String name) {
        Pattern start = Pattern.compile("\\s*\\[?\\s*\"?" + Pattern.quote(name) + "\"?\\s*[\\]=.].*");
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (start.matcher(lines.get(i)).matches()) {
                return i + 1;
            }
        }
        return 0;
    }

    /** Writes a scenario in the order of its names; what is written reads back as the same scenario. */
    static String write(Scenario scenario) {
        StringBuilder out = new StringBuilder("# The scenario as used.\n\n[" + CHOICES + "]\n");
        scenario.choices().forEach((choice, word) -> out.append(choice.key() + " = " + quote(word) + "\n"));
        scenario.settings().forEach((scalar, setting) -> out.append(table(scalar, setting)));
        return out.toString();
    }

    private static String table(Scalar scalar, Setting setting) {
        Stream<String> range = setting.range().stream()
                .flatMap(r -> Stream.of("low = " + CsvText.cell(r.low()), "high = " + CsvText.cell(r.high())));
        Stream<String> head = Stream.of(
                "", "[" + scalar.key() + "]", "# " + scalar.meaning(), "value = " + CsvText.cell(setting.value()));
        Stream<String> tail = Stream.of(
                "unit = " + quote(scalar.unit()),
                "basis = "
                        + quote(AssumptionSchemas.BASES.get(
                                setting.origin().basis().ordinal())),
                "source = " + quote(setting.origin().source()));
        return String.join("\n", Stream.of(head, range, tail).flatMap(s -> s).toList()) + "\n";
    }

    /** A basic string of TOML, which holds control characters only by their numbers. */
    private static String quote(String word) {
        StringBuilder quoted = new StringBuilder("\"");
        word.codePoints().forEach(c -> {
            if (Character.isISOControl(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                quoted.append(c == '"' || c == '\\' ? "\\" : "").appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
