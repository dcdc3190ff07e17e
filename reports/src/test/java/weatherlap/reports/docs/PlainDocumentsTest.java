package weatherlap.reports.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.reports.words.PlainWords;

/** The pages that a shop reads before its first report speak as a tradesman does: paragraph by paragraph, and as a whole. */
class PlainDocumentsTest {
    /** Longest words of a paragraph are names of the trade, so that one may read harder than the whole. */
    private static final double PARAGRAPH = 11;

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "reports/README.md", "datasets/README.md"})
    void readsAsATradesmanSpeaks(String name) throws IOException {
        List<String> paragraphs = paragraphs(Document.of(name).text());
        assertThat(paragraphs).hasSizeGreaterThan(12);
        paragraphs.forEach(paragraph -> PlainWords.hold(paragraph, PARAGRAPH));
        PlainWords.hold(String.join(" ", paragraphs), 8);
    }

    /** Prose alone: without tables, code, pictures and headings, and of a link its text. */
    private static List<String> paragraphs(String page) {
        String prose = page.replaceAll("(?ms)^```.*?^```$", "")
                .replaceAll("(?m)^( {4}|\\||!|#).*$", "")
                .replaceAll("\\]\\([^)]*\\)", "]");
        return Arrays.stream(prose.split("\n\\s*\n|\n(?=- )"))
                .map(paragraph -> paragraph.strip().replaceAll("\\s+", " "))
                .filter(paragraph -> paragraph.split(" ").length > 8)
                .toList();
    }
}
