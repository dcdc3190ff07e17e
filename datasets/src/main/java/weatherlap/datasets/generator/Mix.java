package weatherlap.datasets.generator;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.explain.Basis;

/** How the houses of a portfolio are shared out: for each property, groups of values with shares, the first group that applies counting. */
public final class Mix {
    public static final Schema SCHEMA = new Schema(
            "mix.csv",
            "how the houses of a synthetic portfolio are shared out",
            List.of(
                    Column.text("property", "what is drawn"),
                    Column.text(
                                    "given",
                                    "such as year_built=1960..1979 & room=bath; empty: always; the first that holds")
                            .optional(),
                    Column.text("value", "a word, a whole number or a range of them such as 24..32"),
                    Column.fraction("share", "of this value; the shares of one property and given add up to 1"),
                    Column.word("basis", Basis.words(), "how far the share can be trusted"),
                    Column.text("source", "citation").optional()),
            List.of("property", "given", "value"));

    private static final double SHARES_ADD_UP_WITHIN = 0.001;

    /** One value out of a group with the sum of the shares up to it. */
    private record Choice(String value, double cumulated) {}

    /** Values and shares where every term holds. */
    private record Group(String text, Map<Property, String> given, List<Choice> choices) {
        /** A plain loop: a million houses ask some hundred million times. */
        boolean holds(Map<Property, String> facts) {
            for (Map.Entry<Property, String> term : given.entrySet()) {
                if (!term.getValue().equals(facts.get(term.getKey()))) {
                    return false;
                }
            }
            return true;
        }

        double sum() {
            return choices.get(choices.size() - 1).cumulated();
        }
    }

    private final Map<Property, List<Group>> groups;

    private Mix(Map<Property, List<Group>> groups) {
        this.groups = groups;
    }

    /** A mix that comes with the program. */
    public static Mix bundled(BundledMix which) {
        Problems problems = new Problems();
        Optional<Mix> mix =
                Folder.beside(Mix.class).find(which.file(), problems).flatMap(source -> read(source, problems));
        return Loaded.of(mix, problems).orElseThrow();
    }

    /** The mix of a file, or every problem in it; or a bundled one by its word. */
    public static Loaded<Mix> read(Path file) {
        Optional<BundledMix> known = BundledMix.of(file);
        if (known.isPresent()) {
            return Loaded.of(bundled(known.get()));
        }
        Problems problems = new Problems();
        Optional<Mix> mix = Folder.file(file, problems).flatMap(source -> read(source, problems));
        return Loaded.of(mix, problems);
    }

    static Optional<Mix> read(Source source, Problems problems) {
        Map<Property, List<Group>> groups = new EnumMap<>(Property.class);
        Optional<TextTable> table = TextTable.read(source, SCHEMA, problems);
        table.ifPresent(rows -> {
            rows.soundRows().forEach(row -> add(row, groups, problems));
            check(groups, problems);
        });
        return problems.hasErrors() ? Optional.empty() : table.map(rows -> new Mix(groups));
    }

    private static void add(Row row, Map<Property, List<Group>> groups, Problems problems) {
        Optional<Property> property = property(row, "property", row.text("property"), problems);
        Map<Property, String> given = given(row, problems);
        String fault = property.map(p -> p.fault(row.text("value"))).orElse("");
        if (!fault.isEmpty()) {
            row.error(problems, "value", fault);
        }
        if (row.word("basis", Basis.class).needsSource() && !row.has("source")) {
            row.error(problems, "source", "is empty; the basis " + row.text("basis") + " names its source");
        }
        property.ifPresent(p -> {
            List<Group> all = groups.computeIfAbsent(p, none -> new ArrayList<>());
            Group group = all.stream()
                    .filter(g -> g.text().equals(row.text("given")))
                    .findFirst()
                    .orElseGet(() -> {
                        all.add(new Group(row.text("given"), given, new ArrayList<>()));
                        return all.get(all.size() - 1);
                    });
            double before = group.choices().isEmpty() ? 0 : group.sum();
            group.choices().add(new Choice(row.text("value"), before + row.number("share")));
        });
    }

    private static Map<Property, String> given(Row row, Problems problems) {
        Map<Property, String> given = new EnumMap<>(Property.class);
        if (row.has("given")) {
            for (String term : row.text("given").split("&", -1)) {
                String[] sides = term.split("=", -1);
                if (sides.length == 2) {
                    property(row, "given", sides[0].strip(), problems).ifPresent(p -> given.put(p, sides[1].strip()));
                } else {
                    row.error(problems, "given", Quoted.of(term.strip()) + " is not of the form property=value");
                }
            }
        }
        return given;
    }

    private static Optional<Property> property(Row row, String column, String name, Problems problems) {
        Optional<Property> property = Property.of(name);
        if (property.isEmpty()) {
            List<String> known =
                    Arrays.stream(Property.values()).map(Property::key).toList();
            row.error(problems, column, Quoted.of(name) + " is not a property" + Nearest.hint(name, known));
        }
        return property;
    }

    private static void check(Map<Property, List<Group>> groups, Problems problems) {
        for (Property property : Property.values()) {
            List<Group> all = groups.getOrDefault(property, List.of());
            for (Group group : all) {
                if (Math.abs(group.sum() - 1) > SHARES_ADD_UP_WITHIN) {
                    String given = group.text().isEmpty() ? "" : " given " + group.text();
                    problems.error(
                            SCHEMA.file(),
                            0,
                            property.key(),
                            "the shares" + given + " add up to " + CsvText.cell(Math.rint(group.sum() * 1e6) / 1e6)
                                    + " instead of 1");
                }
            }
            if (property.isDrawn() && !isCovered(all, groups)) {
                problems.error(
                        SCHEMA.file(),
                        0,
                        property.key(),
                        all.isEmpty() ? "is missing" : "does not say what is drawn where no given holds");
            }
        }
    }

    /** Whether some group always applies, or single terms name every value of one property. */
    private static boolean isCovered(List<Group> all, Map<Property, List<Group>> groups) {
        if (all.stream().anyMatch(group -> group.given().isEmpty())) {
            return true;
        }
        return groups.keySet().stream().anyMatch(other -> {
            List<String> named = all.stream()
                    .filter(g -> g.given().size() == 1 && g.given().containsKey(other))
                    .map(g -> g.given().get(other))
                    .toList();
            return !named.isEmpty()
                    && groups.get(other).stream()
                            .flatMap(g -> g.choices().stream())
                            .allMatch(choice -> named.contains(choice.value()));
        });
    }

    /** Draws a value of a property as the table writes it. */
    String draw(Property property, Map<Property, String> facts, double uniform) {
        for (Group group : groups.get(property)) {
            if (group.holds(facts)) {
                for (Choice choice : group.choices()) {
                    if (uniform * group.sum() < choice.cumulated()) {
                        return choice.value();
                    }
                }
                return group.choices().get(group.choices().size() - 1).value();
            }
        }
        throw new IllegalStateException("The mix has no " + property.key() + " where " + facts);
    }
}
