package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.output.OutputRequest;

class ReportBrowserTest {
    @TempDir
    static Path folder;

    private static Browser browser;
    private static Looks report;

    @BeforeAll
    static void open() throws Exception {
        browser = Browser.open(Tools.chromium());
        Path out = folder.resolve("report");
        new Compare(HandoutFiles.hostile(folder.resolve("in")), new OutputRequest(out, false), 1)
                .run(HandoutFiles.SILENT);
        report = new Looks(browser, out.resolve("report.html"));
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
            report.at(width);
        }
    }

    @Test
    void isAccessibleOnAPhone() throws Exception {
        report.at(390);
        report.accessible(Tools.axe());
    }

    @Test
    void theSearchFindsAHouseAndOpensItsRows() {
        report.at(390);
        assertThat(search("alert(1)")).isEqualTo("1 shown, open: true");
        assertThat(search("1960s vinyl")).startsWith("1 shown");
        assertThat(search("no such house")).startsWith("0 shown");
    }

    private static String search(String words) {
        return (String) browser.value("""
                (() => {
                  const box = document.getElementById('find-house');
                  box.value = '%s';
                  box.dispatchEvent(new Event('input'));
                  const shown = [...document.querySelectorAll('details.house')].filter(house => house.offsetHeight > 0);
                  return shown.length + ' shown, open: ' + shown.every(house => house.open);
                })()""".formatted(words));
    }

    @Test
    void printsAllOfIt() throws Exception {
        report.at(1280);
        assertThat(report.printedPages()).isBetween(4, 60);
    }
}
