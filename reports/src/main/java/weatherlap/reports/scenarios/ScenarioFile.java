package weatherlap.reports.scenarios;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Toml;
import weatherlap.datasets.table.TomlTable;

/**
 * Sets of assumptions in a file, a table each: {@code assumptions} names a folder of tables, all else is a setting, as {@code gross_margin =
 * 0.3} or {@code wage.national.carpenter = 31}. A table without entries is what the run assumes.
 */
final class ScenarioFile {
    private static final String FOLDER = "assumptions";
    private static final int LONGEST = 100_000;
    private static final int LONGEST_PATH = 400;

    private ScenarioFile() {}

    /** The sets in the order of the file. */
    static List<ScenarioWord> read(Path file, List<String> problems) {
        Path whole = file.toAbsolutePath().normalize();
        Problems found = new Problems();
        List<ScenarioWord> sets = new ArrayList<>();
        Folder.of(whole.getParent())
                .find(String.valueOf(whole.getFileName()), found)
                .flatMap(source ->
                        source.text(LONGEST, found).flatMap(text -> TomlTable.of(new Toml(source.name(), text), found)))
                .ifPresent(root -> root.node().fieldNames().forEachRemaining(name -> root.table(name)
                        .ifPresent(table -> sets.add(set(name, table, whole.getParent())))));
        found.errors().stream().map(Problem::toString).forEach(problems::add);
        return sets;
    }

    private static ScenarioWord set(String name, TomlTable table, Path beside) {
        Optional<Path> folder = table.text(FOLDER, LONGEST_PATH).flatMap(path -> {
            Path inside = beside.resolve(path).normalize();
            if (Path.of(path).isAbsolute() || !inside.startsWith(beside)) {
                table.error(FOLDER, "must be a folder beside this file, or in one");
                return Optional.empty();
            }
            return Optional.of(inside);
        });
        List<String> changes = new ArrayList<>();
        for (Map.Entry<String, JsonNode> entry : table.node().properties()) {
            if (!entry.getKey().equals(FOLDER)) {
                changes(entry.getKey(), entry.getValue(), table).forEach(changes::add);
            }
        }
        return new ScenarioWord(name.strip(), folder, changes);
    }

    /** Settings by their whole name, of tables in it each entry. */
    private static Stream<String> changes(String name, JsonNode value, TomlTable table) {
        if (value.isObject()) {
            return value.properties().stream()
                    .flatMap(inner -> changes(name + "." + inner.getKey(), inner.getValue(), table));
        }
        if (value.isValueNode()) {
            return Stream.of(name + "=" + value.asText());
        }
        table.error(name, "is neither a number nor text");
        return Stream.empty();
    }
}
