package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.page.Paper;

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

    @Test
    void isAccessibleOnAPhone() throws Exception {
        typical.at(390);
        typical.accessible(Tools.axe());
    }

    @Test
    void printsOnFewPages() throws Exception {
        typical.at(1280);
        assertThat(typical.printedPages()).isBetween(2, 4);
    }
}
