package weatherlap.datasets.assumptions;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Headings;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Basis;

/**
 * A scenario as a table, a row for each number and each choice, as a workbook holds it.
 *
 * @param toml the scenario as {@code scenario.toml} has it
 * @param lines on which each setting stands, by its name
 */
public record SettingRows(String toml, Map<String, Integer> lines) {
    public static final Schema SCHEMA = new Schema(
            "settings.csv",
            "one row for each number and each choice of scenario.toml, in a workbook alone",
            List.of(
                    Column.text("setting", "name of the number or the choice"),
                    Column.text("value", "a number in its unit, or a word").optional(),
                    Column.text("unit", "of the number; must stay").optional(),
                    Column.text("meaning", "what it is; not read").optional(),
                    Column.prose("basis", "how far the value can be trusted").optional(),
                    Column.prose(
                                    "source",
                                    "citation; may be empty unless the basis is standard, handbook, dataset or own records")
                            .optional(),
                    Column.text("low", "where the number is uncertain, for sweeps; else empty")
                            .optional(),
                    Column.text("high", "the same, high").optional()),
            List.of());

    private static final String FILE = SCHEMA.file();

    public SettingRows {
        lines = Map.copyOf(lines);
    }

    /** The rows of a table; empty where anything in it is wrong, which is reported by its row. */
    public static Optional<SettingRows> read(String csv, Problems problems) {
        Map<String, Integer> lines = new LinkedHashMap<>();
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        ObjectNode choices = tree.putObject(ScenarioText.CHOICES);
        SettingPlaces places = (name, part, message) -> lines.containsKey(name)
                ? new Problem(
                        FILE, lines.get(name), part.isEmpty() ? "setting" : part, Quoted.bare(name) + " " + message)
                : new Problem(FILE, 0, "", Quoted.bare(name) + " " + message);
        Optional<TextTable> table = TextTable.read(Source.of(FILE, csv), SCHEMA, problems);
        if (table.isEmpty() || problems.hasErrors()) {
            return Optional.empty();
        }
        table.get().rows().forEach(row -> {
            String name = Headings.folded(row.text("setting"));
            if (lines.putIfAbsent(name, row.line()) != null) {
                row.error(problems, "setting", name + " stands in row " + lines.get(name) + " too");
            } else if (Choice.of(name).isPresent()) {
                choices.put(name, word(Choice.of(name).get(), row.text("value")));
            } else {
                tree.set(
                        name,
                        node(Scalar.of(name), row, (part, fault) -> problems.error(places.at(name, part, fault))));
            }
        });
        return ScenarioText.read(tree, places, problems)
                .filter(read -> !problems.hasErrors())
                .map(read -> new SettingRows(ScenarioText.write(read), lines));
    }

    private static String word(Choice choice, String typed) {
        return choice.allowed().isEmpty() ? typed : new CellType.Word(choice.allowed()).plain(typed);
    }

    /** @param wrong takes parts that are no numbers, and what is wrong with them */
    private static JsonNode node(Optional<Scalar> scalar, Row row, BiConsumer<String, String> wrong) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        scalar.ifPresent(known -> {
            for (String part : List.of("value", "low", "high")) {
                if (row.has(part)) {
                    String plain = SettingNode.plain(known, row.text(part));
                    Optional<BigDecimal> number = number(plain);
                    node.set(part, number.<JsonNode>map(DecimalNode::valueOf).orElse(NullNode.instance));
                    if (number.isEmpty()) {
                        wrong.accept(part, SettingNode.fault(known, plain));
                    }
                }
            }
        });
        if (row.has("unit")) {
            node.put("unit", row.text("unit"));
        }
        String basis = new CellType.Word(Basis.words()).plain(row.text("basis"));
        boolean own = !basis.isEmpty()
                && !Basis.words().contains(basis)
                && Nearest.to(basis, Basis.words()).isEmpty();
        node.put("basis", own ? Basis.OWN_FIGURE.word() : basis);
        node.put("source", own ? RowParts.own(basis, row.text("source")) : row.text("source"));
        return node;
    }

    private static Optional<BigDecimal> number(String plain) {
        try {
            return Optional.of(new BigDecimal(plain));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
