package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What every page of ours must stand in a browser. */
record Looks(Browser browser, Path page) {
    private static final Path PICTURES = Path.of("target", "pages");

    /** Phone, tablet, desktop, CSS px. */
    static final int[] WIDTHS = {390, 768, 1280};

    /** At a width: nothing to scroll sideways, no error, nothing fetched but the file. */
    void at(int widthPx) {
        browser.load(page, widthPx);
        assertThat(browser.value("window.innerWidth")).isEqualTo((double) widthPx);
        assertThat((double) (Double) browser.value("document.documentElement.scrollWidth"))
                .as("width of the page in a window of %s px", widthPx)
                .isLessThanOrEqualTo(widthPx);
        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        assertThat(browser.errors()).isEmpty();
        keep(page.getParent().getFileName() + "-" + widthPx + ".png", browser.picture());
    }

    /** For whoever wants to see what was checked. */
    private static void keep(String name, byte[] picture) {
        try {
            Files.createDirectories(PICTURES);
            Files.write(PICTURES.resolve(name), picture);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Nothing serious in the eyes of axe-core. */
    void accessible(String axe) {
        browser.value(axe + ";0");
        String found = (String)
                browser.value(
                        "axe.run().then(r => r.passes.length + ' passes\\n' + r.violations"
                                + ".filter(v => v.impact === 'serious' || v.impact === 'critical')"
                                + ".map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 200)).join(' | ')).join('\\n'))");
        assertThat(found).matches("\\d+ passes\n");
        assertThat(Integer.parseInt(found.substring(0, found.indexOf(' ')))).isGreaterThan(5);
    }

    int printedPages() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(browser.print())) {
            return pdf.getNumberOfPages();
        }
    }
}
