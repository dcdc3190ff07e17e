package weatherlap.datasets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.datasets.assumptions.AssumptionSchemas;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.assumptions.SettingRows;
import weatherlap.datasets.climate.ClimateCsv;
import weatherlap.datasets.climate.GeneratorParameters;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.jobs.CallSchema;
import weatherlap.datasets.jobs.ItemTable;
import weatherlap.datasets.jobs.JobSchema;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;

/** README.md shows every table as the schema in code has it. Where they differ, the failure shows the lines to paste. */
class ColumnsInReadmeTest {
    private static final String HEAD = "| column | holds | empty | meaning |\n| --- | --- | --- | --- |\n";

    @ParameterizedTest
    @MethodSource("schemas")
    void everyColumnStandsWithWhatItHolds(Schema schema) throws IOException {
        assertThat(section(schema.file())).isEqualTo(table(schema));
    }

    @Test
    void everyScalarAndChoiceStandsWithItsUnitAndRange() throws IOException {
        assertThat(section("scenario.toml")).isEqualTo(scenario());
    }

    private static String scenario() {
        StringBuilder expected = new StringBuilder("| choice | one of | meaning |\n| --- | --- | --- |\n");
        for (Choice choice : Choice.values()) {
            String words = choice.allowed().isEmpty() ? "any text" : String.join(", ", choice.allowed());
            expected.append("| `%s` | %s | %s |\n".formatted(choice.key(), words, choice.meaning()));
        }
        expected.append("\n| scalar | holds | meaning |\n| --- | --- | --- |\n");
        for (Scalar scalar : Scalar.values()) {
            String holds = Column.number(scalar.key(), scalar.unit(), scalar.low(), scalar.high(), scalar.meaning())
                    .type()
                    .expected();
            expected.append("| `%s` | %s%s | %s |\n"
                    .formatted(scalar.key(), holds, scalar.whole() ? ", whole" : "", scalar.meaning()));
        }
        return expected.toString();
    }

    @Test
    void noOtherTableStandsThere() throws IOException {
        List<String> files = new ArrayList<>(schemas().map(Schema::file).toList());
        files.add("scenario.toml");
        assertThat(readme().lines().filter(line -> line.startsWith("### ")))
                .containsExactlyInAnyOrderElementsOf(
                        files.stream().map(file -> "### `" + file + "`").toList());
    }

    static Stream<Schema> schemas() {
        Stream<Schema> constants = Stream.of(
                        PortfolioTables.class, AssumptionSchemas.class, Mix.class, GeneratorParameters.class)
                .flatMap(holder -> Stream.of(holder.getFields()))
                .filter(field -> field.getType() == Schema.class)
                .map(ColumnsInReadmeTest::value);
        return Stream.concat(
                constants,
                Stream.of(
                        ClimateCsv.schema("climate.csv"),
                        jobs(),
                        ItemTable.ITEMS,
                        CallSchema.CALLBACKS,
                        SettingRows.SCHEMA));
    }

    /** Without the columns that are named after rows of labour-steps.csv. */
    private static Schema jobs() {
        Assumptions bundled = AssumptionTables.bundled().assumptions();
        Schema whole = JobSchema.of("jobs.csv", bundled);
        Set<String> steps = bundled.steps().stream().map(LabourStep::id).collect(Collectors.toSet());
        List<Column> fixed = whole.columns().stream()
                .filter(column -> !steps.contains(column.name()))
                .toList();
        return new Schema(whole.file(), whole.meaning(), fixed, whole.key());
    }

    private static Schema value(Field constant) {
        try {
            return (Schema) constant.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private static String table(Schema schema) {
        StringBuilder table = new StringBuilder(HEAD);
        for (Column column : schema.columns()) {
            String name = (schema.key().contains(column.name()) ? "**`%s`**" : "`%s`").formatted(column.name());
            table.append("| %s | %s | %s | %s |\n"
                    .formatted(
                            name, holds(column.type()), column.mayBeEmpty() ? "may be" : "", cell(column.meaning())));
        }
        return table.toString();
    }

    private static String holds(CellType type) {
        if (type instanceof CellType.Key) {
            return "key";
        }
        return type instanceof CellType.Text || type instanceof CellType.Prose ? "text" : cell(type.expected());
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    /** The lines of tables under a heading. */
    private static String section(String file) throws IOException {
        String heading = "### `" + file + "`\n\n";
        String document = readme();
        int begin = document.indexOf(heading);
        assertThat(begin).as("a heading " + heading.strip()).isNotNegative();
        String section = document.substring(begin + heading.length()).split("\n##", -1)[0];
        return section.substring(Math.max(section.indexOf("\n| ") + 1, 0)).strip() + "\n";
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }
}
