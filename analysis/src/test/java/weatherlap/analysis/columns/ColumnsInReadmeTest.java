package weatherlap.analysis.columns;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** README.md shows every result table as the catalogue has it. Where they differ, the failure shows the lines to paste. */
class ColumnsInReadmeTest {
    private static final String HEAD =
            "| column | title | unit | decimals | empty | meaning |\n" + "| --- | --- | --- | --- | --- | --- |\n";

    @ParameterizedTest
    @MethodSource("schemas")
    void everyColumnStandsWithItsUnit(Schema schema) throws IOException {
        assertThat(section(schema)).isEqualTo(schema.meaning() + "\n\n" + table(schema));
    }

    private static String table(Schema schema) {
        StringBuilder table = new StringBuilder(HEAD);
        for (Column column : schema.columns()) {
            boolean number = column.kind() == Column.Kind.NUMBER;
            table.append("| `%s` | %s | %s | %s | %s | %s |\n"
                    .formatted(
                            column.name(),
                            column.title(),
                            number ? column.unit() : column.kind().name().toLowerCase(Locale.ROOT),
                            number ? column.decimals() : "",
                            column.mayBeEmpty() ? "may be" : "",
                            column.meaning()));
        }
        return table.toString();
    }

    @Test
    void noOtherTableStandsThere() throws IOException {
        assertThat(readme().lines().filter(line -> line.startsWith("### ")).map(line -> line.substring(4)))
                .containsExactlyElementsOf(
                        schemas().map(ColumnsInReadmeTest::heading).toList());
    }

    static Stream<Schema> schemas() {
        return Stream.of(Schemas.class, StudySchemas.class)
                .flatMap(catalogue -> Stream.of(catalogue.getFields()))
                .filter(field -> field.getType() == Schema.class)
                .map(ColumnsInReadmeTest::value);
    }

    private static Schema value(Field constant) {
        try {
            return (Schema) constant.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private static String heading(Schema schema) {
        return "`" + schema.file() + "`";
    }

    private static String section(Schema schema) throws IOException {
        String heading = "### " + heading(schema) + "\n\n";
        String document = readme();
        int begin = document.indexOf(heading);
        assertThat(begin).as("a heading " + heading.strip()).isNotNegative();
        return document.substring(begin + heading.length()).split("\n##", -1)[0].strip() + "\n";
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }
}
