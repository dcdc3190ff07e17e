package weatherlap.analysis.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.columns.ResultColumn.Kind;

/** README.md shows every result table as the catalogue has it. Where they differ, the failure shows the lines to paste. */
class ColumnsInReadmeTest {
    private static final String HEAD =
            "| column | title | unit | decimals | empty | meaning |\n" + "| --- | --- | --- | --- | --- | --- |\n";

    @ParameterizedTest
    @MethodSource("layouts")
    void everyColumnStandsWithItsUnit(Layout<?> layout) throws IOException {
        assertThat(section(layout)).isEqualTo(layout.meaning() + "\n\n" + table(layout));
    }

    private static String table(Layout<?> layout) {
        StringBuilder table = new StringBuilder(HEAD);
        for (ResultColumn<?> column : layout.columns()) {
            boolean number = column.kind() == Kind.NUMBER;
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
                        layouts().stream().map(ColumnsInReadmeTest::heading).toList());
    }

    static List<Layout<?>> layouts() {
        return Catalogue.ALL;
    }

    private static String heading(Layout<?> layout) {
        return "`" + layout.file() + "`";
    }

    private static String section(Layout<?> layout) throws IOException {
        String heading = "### " + heading(layout) + "\n\n";
        String document = readme();
        int begin = document.indexOf(heading);
        assertThat(begin).as("a heading " + heading.strip()).isNotNegative();
        return document.substring(begin + heading.length()).split("\n##", -1)[0].strip() + "\n";
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }
}
