package weatherlap.reports.format;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wherever the search begins, it comes out at the roomiest layout that fits, and lays out few others. */
class FittingTest {
    private static final List<Integer> PAGES = List.of(5, 4, 4, 3, 2, 2, 1);

    private final List<Integer> laidOut = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({
        "2, 0, 2, 0 1 2 3 4",
        "2, 3, 2, 3 4",
        "2, 4, 2, 4 3",
        "2, 6, 2, 6 5 4 3",
        "9, 2, 5, 2 1 0",
        "0, 5, 1, 5 6",
        "1, 6, 1, 6 5"
    })
    void theRoomiestThatFitsIsFound(int most, int likely, int pages, String tried) throws IOException {
        List<Supplier<String>> layouts = IntStream.range(0, PAGES.size())
                .<Supplier<String>>mapToObj(i -> () -> layout(i))
                .toList();
        try (PdfBoxRenderer found = new Fitting(layouts, most).searched(likely)) {
            assertThat(found.getRootBox().getLayer().getPages()).hasSize(pages);
        }
        assertThat(laidOut)
                .isEqualTo(
                        List.of(tried.split(" ")).stream().map(Integer::valueOf).toList());
    }

    /** What the font lacks, as the wide space of a name, is looked up when the sheet is written, after others were laid out and dropped. */
    @ParameterizedTest
    @ValueSource(ints = {0, 6})
    void whatIsFoundCanBeWritten(int likely) throws IOException {
        List<Supplier<String>> layouts = IntStream.range(0, PAGES.size())
                .<Supplier<String>>mapToObj(i -> () -> layout(i).replace("1</p>", "a\u3000b</p>"))
                .toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.fitting("", layouts, likely, 2).writeTo(out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
        }
    }

    private String layout(int layout) {
        laidOut.add(layout);
        return "<html><body>"
                + "<p style=\"page-break-after: always\">1</p>".repeat(PAGES.get(layout) - 1)
                + "<p>1</p></body></html>";
    }
}
