package weatherlap.reports.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultRows;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.words.Decimals;

class CsvTest {
    @Test
    void writesAHeaderAndNumbersToTheDecimalsOfTheCatalogue() {
        var table = ResultTable.of(
                TestTables.LAYOUT,
                List.of(
                        new TestTables.Line("a,b", 3, OptionalDouble.of(-12.345)),
                        new TestTables.Line("say \"hi\"", 0, OptionalDouble.empty())));
        assertThat(new String(TestTables.bytes(Csv.of(table)), UTF_8)).isEqualTo("""
                id,count,cost_usd
                "a,b",3,-12.35
                "say ""hi\""",0,
                """);
    }

    @Test
    void aTextThatASpreadsheetWouldRunGetsAnApostrophe() {
        String csv = new String(TestTables.bytes(Csv.of(TestTables.hostile())), UTF_8);
        assertThat(csv)
                .contains("'=1+1,0,", "\n'-7,2,-2.01", "\n''=quoted,", "\n'''=twice,", "\n\"'\rx\"", "\n'  =spaced,")
                .contains("\"line\nbreak\"");
        assertThat(csv.lines().skip(1)).noneMatch(line -> line.matches("\"?[=+@\t-].*"));
    }

    @Test
    void rowsWithoutATableAreWrittenAlike() {
        assertThat(Csv.rows(TestTables.hostileRows())).isEqualTo(Csv.rows(TestTables.hostile()));
        var nameless = new ResultRows<>(TestTables.LAYOUT, List.of(new TestTables.Line("", 1, OptionalDouble.empty())));
        assertThatThrownBy(() -> Csv.rows(nameless)).hasMessageContaining("id");
    }

    /** Whatever its words are, and wherever one of them stands. */
    @Property
    void aTextInPartsIsWrittenAsTheSameInOne(
            @ForAll @Size(max = 4)
                    List<
                                    @StringLength(max = 3)
                                    @Chars({
                                        '"', ',', ';', '\n', ' ', '\'', '=', '-', 'a', '7', '\u00E9', '\u77F3', '\uFF1D'
                                    })
                                    String>
                            words,
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double number) {
        var inOne = new ResultRows<>(
                Layout.<String>of("test.csv", "Test", "a row")
                        .optionalText("text", "text", "any", row -> String.join(";", words) + row)
                        .build(),
                List.of(Decimals.fixed(number, 2), ""));
        var inParts = new ResultRows<>(
                Layout.<Boolean>of("test.csv", "Test", "a row")
                        .optionalText("text", "text", "any", (row, text) -> {
                            text.add(words);
                            if (row) {
                                text.add(number, 2);
                            }
                        })
                        .build(),
                List.of(true, false));
        assertThat(new String(Csv.rows(inParts), UTF_8)).isEqualTo(new String(Csv.rows(inOne), UTF_8));
        assertThat(Csv.rows(inParts.table())).isEqualTo(Csv.rows(inOne));
    }

    @Property
    void theApostropheComesOffAgain(
            @ForAll @StringLength(max = 6) @Chars({'\'', ' ', '=', '-', '\t'}) @CharRange(from = 'a', to = 'c')
                    String text) {
        assertThat(Csv.undefused(Csv.defused(text))).isEqualTo(text);
    }
}
