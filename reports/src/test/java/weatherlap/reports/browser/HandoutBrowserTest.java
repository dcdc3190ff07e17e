package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.jobs.HandoutWishes;
import weatherlap.reports.page.Paper;
import weatherlap.reports.words.Language;

class HandoutBrowserTest {
    @TempDir
    static Path folder;

    private static Browser browser;
    private static Looks typical;
    private static Looks hostile;

    @BeforeAll
    static void open() throws Exception {
        browser = Browser.open(Tools.chromium());
        HandoutFiles.write(HandoutFiles.demo(), "G0014", Paper.LETTER, folder.resolve("typical"));
        HandoutFiles.write(HandoutFiles.hostile(folder.resolve("in")), "h1", Paper.LETTER, folder.resolve("hostile"));
        typical = new Looks(browser, folder.resolve("typical/handout.html"));
        hostile = new Looks(browser, folder.resolve("hostile/handout.html"));
    }

    @AfterAll
    static void close() throws Exception {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void fitsPhoneTabletAndDesktop() {
        for (int width : Looks.WIDTHS) {
            typical.at(width);
            hostile.at(width);
        }
    }

    /** A word beside a line to fill in is no column of letters: it is wider than high, however narrow or wide the screen. */
    @Test
    void whatIsToFillInIsReadableAtAnyWidth() {
        for (int width : Looks.WIDTHS) {
            typical.at(width);
            assertThat(browser.value("[...document.querySelectorAll('.sign .what, .shop .what')].filter(cell => {"
                            + " const words = document.createRange(); words.selectNodeContents(cell);"
                            + " const box = words.getBoundingClientRect(); return box.height > box.width; }).length"))
                    .as("%d px", width)
                    .isEqualTo(0.0);
        }
    }

    @Test
    void isAccessibleOnAPhone() throws Exception {
        typical.at(390);
        typical.accessible(Tools.axe());
    }

    /** What stands below the rows is what the sheet of the line that the page gives has in its first box. */
    @Test
    void whatIsTickedIsWhatTheSheetOfItsLineTells() throws Exception {
        typical.at(1280);
        for (String ticked : List.of("i % row.length", "row.length - 1", "(i * i + 1) % row.length")) {
            browser.value("[...document.querySelectorAll('.tick')].forEach((tick, i) => {"
                    + " const row = tick.querySelectorAll('input'); row[" + ticked + "].click(); }); 0");
            String line = (String) browser.value("document.getElementById('choice-line').value");
            Path again = Files.createTempDirectory(folder, "again").resolve("out");
            HandoutFiles.write(
                    HandoutFiles.demo(),
                    "G0014",
                    Paper.LETTER,
                    new HandoutWishes(Language.EN, true, false, line),
                    again);
            List<String> shown = List.of(text("sum-price"), text("sum-glass"), text("sum-leaks"));
            new Looks(browser, again.resolve("handout.html")).at(1280);
            assertThat(browser.value("document.getElementById('choice-line').value"))
                    .isEqualTo(line);
            assertThat(List.of(cell("price", 0), cell("text", 1), cell("text", offeredLeaks())))
                    .as(line)
                    .isEqualTo(shown);
            typical.at(1280);
        }
    }

    private static int offeredLeaks() {
        return ((Double) browser.value("[...document.querySelectorAll('.offer tr.text')]"
                        + ".findIndex(row => row.textContent.includes('Leak damage'))"))
                .intValue();
    }

    private static String cell(String kind, int row) {
        return (String) browser.value(
                "document.querySelectorAll('.offer tr." + kind + "')[" + row + "].querySelector('td').textContent");
    }

    private static String text(String id) {
        return (String) browser.value("document.getElementById('" + id + "').textContent");
    }

    @Test
    void windowsAreTickedByKeyboardAndByTouch() {
        typical.at(390);
        String price = text("sum-price");
        browser.value("document.querySelector('.tick input:checked').focus(); 0");
        browser.key("ArrowRight", 39);
        assertThat(text("sum-price")).isNotEqualTo(price);
        browser.key("ArrowLeft", 37);
        assertThat(text("sum-price")).isEqualTo(price);
        browser.tap(".tick label:last-child");
        assertThat(text("sum-price")).isNotEqualTo(price);
        browser.tap(".presets button");
        assertThat(browser.value("document.querySelector('.sum').getAttribute('aria-live')"))
                .isEqualTo("polite");
    }

    @Test
    void printsOnFewPages() throws Exception {
        typical.at(1280);
        assertThat(typical.printedPages()).isBetween(2, 6);
    }
}
