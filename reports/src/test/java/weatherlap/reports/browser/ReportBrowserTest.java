package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.inputs.InputPaths;
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
        new Compare(houses(folder.resolve("in")), new OutputRequest(out, false), 1).run(HandoutFiles.SILENT);
        report = new Looks(browser, out.resolve("report.html"));
    }

    /** One that is hostile, and four to sort and to filter. */
    private static InputPaths houses(Path in) throws IOException {
        InputPaths hostile = HandoutFiles.hostile(in);
        String house = "%s,House %s,%d,suburban,%s,building_paper,%d%n";
        String wall = "%s,north,0,30,18,%d,8,144%n";
        String window =
                "%s,north,a,living,single_hung,%d,54,60,30,aluminum,sound,drywall,1,unknown,unknown,unknown,yes%n";
        StringBuilder houses = new StringBuilder();
        StringBuilder walls = new StringBuilder();
        StringBuilder windows = new StringBuilder();
        for (int h = 2; h <= 5; h++) {
            String cladding = h % 2 == 0 ? "wood_lap" : "vinyl_siding";
            houses.append(
                    String.format(Locale.ROOT, house, "h" + h, "ABCDE".charAt(5 - h), 1990 - 10 * h, cladding, 2));
            walls.append(String.format(Locale.ROOT, wall, "h" + h, 6 * h));
            windows.append(String.format(Locale.ROOT, window, "h" + h, 24 + 6 * h));
        }
        Files.writeString(in.resolve("houses.csv"), houses, StandardOpenOption.APPEND);
        Files.writeString(in.resolve("elevations.csv"), walls, StandardOpenOption.APPEND);
        Files.writeString(in.resolve("openings.csv"), windows, StandardOpenOption.APPEND);
        return new InputPaths(
                hostile.portfolio(), hostile.assumptions(), hostile.climate(), hostile.site(), List.of("draws=16"));
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
        browser.load(report.page(), 390);
        report.accessible(Tools.axe());
    }

    /** The list answers by search, by filter and by order; a dot opens its house; all of it by keyboard. */
    @Test
    void theListAnswers() {
        browser.load(report.page(), 1280);
        assertThat(search("alert(1)")).isEqualTo("1 shown, open: true");
        assertThat(search("1960s")).startsWith("2 shown");
        assertThat(search("no such house")).startsWith("0 shown");
        assertThat(search("")).startsWith("5 shown");
        assertThat(browser.value("document.querySelector('select[data-key=cladding]').value = 'wood lap';"
                        + input("find") + SHOWN))
                .isEqualTo("House D, House B");
        assertThat(browser.value("document.querySelector('select[data-key=stories]').value = '1 story';" + input("find")
                        + "document.getElementById('found').textContent"))
                .as("told to who cannot see it")
                .isEqualTo("0 of 5 houses");
        assertThat(browser.value(
                        "document.querySelectorAll('select[data-key]').forEach(s => s.value = '');" + input("find")
                                + "document.getElementById('sort-houses').value = 'year';"
                                + "document.getElementById('sort-houses').dispatchEvent(new Event('change'));" + SHOWN))
                .asString()
                .startsWith("House A, House B")
                .endsWith("House D");
    }

    @Test
    void aDotOpensItsHouseAndAHouseItsWindows() {
        browser.load(report.page(), 1280);
        assertThat(
                        browser.value(
                                "(() => { const dots = [...document.querySelectorAll('.plot a')];"
                                        + "const tab = dots.filter(dot => dot.tabIndex === 0); tab[0].focus();"
                                        + "tab[0].dispatchEvent(new KeyboardEvent('keydown', {key: 'ArrowRight', bubbles: true}));"
                                        + "const next = document.activeElement; next.click();"
                                        + "return [dots.length > 1, tab.length, next !== tab[0], next.textContent.includes('the family')].join(); })()"))
                .isEqualTo("true,1,true,true");
        assertThat(browser.value(
                        "new Promise(done => setTimeout(() => { const open = document.querySelector('details.house[open]');"
                                + "const windows = open.querySelector('details.windows'); windows.querySelector('summary').click();"
                                + "done([document.querySelectorAll('details.house[open]').length, windows.open,"
                                + "document.activeElement.parentElement === open].join()); }, 50))"))
                .as("one house, its windows, and the focus on it")
                .isEqualTo("1,true,true");
    }

    /** Three numbers and the whole picture, and no part of the first page beside the window. */
    @Test
    void theFirstScreenShowsThreeNumbersAndThePicture() {
        for (int width : new int[] {390, 1280}) {
            browser.load(report.page(), width);
            assertThat((double)
                            (Double) browser.value("document.querySelector('.numbers').getBoundingClientRect().bottom"))
                    .isLessThan(900);
            assertThat((double) (Double) browser.value(
                            "Math.max(...[...document.querySelectorAll('#answer ~ *, .numbers *, .dots svg, .asked *')]"
                                    + ".map(e => e.getBoundingClientRect().right))"))
                    .as("nothing is cut at " + width)
                    .isLessThanOrEqualTo(width);
        }
        assertThat((double)
                        (Double) browser.value("document.querySelector('.dots svg').getBoundingClientRect().bottom"))
                .isLessThan(900);
    }

    private static final String SHOWN =
            "[...document.querySelectorAll('details.house')].filter(h => !h.hidden).map(h => h.dataset.name.slice(0, 7)).join(', ')";

    private static String input(String form) {
        return "document.getElementById('" + form + "').dispatchEvent(new Event('input'));";
    }

    private static String search(String words) {
        return (String) browser.value("""
                (() => {
                  const box = document.getElementById('find-house');
                  box.value = '%s';
                  box.dispatchEvent(new Event('input', {bubbles: true}));
                  const shown = [...document.querySelectorAll('details.house')].filter(house => house.offsetHeight > 0);
                  return shown.length + ' shown, open: ' + shown.every(house => house.open);
                })()""".formatted(words));
    }

    @Test
    void printsAllOfIt() throws Exception {
        browser.load(report.page(), 1280);
        assertThat(report.printedPages()).isBetween(4, 60);
    }
}
