package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.reports.page.Paper;

class HandoutFilesTest {
    private static final String TYPICAL = "G0014"; // 14 openings, the mean number of windows of a house

    @TempDir
    static Path folder;

    @BeforeAll
    static void write() {
        for (Paper paper : Paper.values()) {
            HandoutFiles.write(HandoutFiles.demo(), TYPICAL, paper, folder.resolve(paper.name()));
        }
        HandoutFiles.write(HandoutFiles.hostile(folder.resolve("in")), "h1", Paper.LETTER, folder.resolve("hostile"));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void twoPagesOfTheAskedSize(Paper paper) throws IOException {
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve(paper.name() + "/handout.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            PDRectangle box = pdf.getPage(0).getMediaBox();
            PDRectangle asked = paper == Paper.LETTER ? PDRectangle.LETTER : PDRectangle.A4;
            assertThat(box.getWidth()).isCloseTo(asked.getWidth(), within(0.5f));
            assertThat(box.getHeight()).isCloseTo(asked.getHeight(), within(0.5f));
        }
    }

    /** No survey and no record bears a figure, so that the sheet gives the order alone. */
    @Test
    void aLeakFigureThatRestsOnJudgementIsARank() throws IOException {
        String page = Files.readString(folder.resolve("LETTER/handout.html"));
        int at = page.indexOf("Leak damage in");
        assertThat(at).isPositive();
        String row = page.substring(at, page.indexOf("</tr>", at));
        assertThat(row)
                .doesNotContain("%")
                .containsPattern(
                        ">(lowest risk|low for this house|in between|high for this house|highest risk|about the same)<");
        assertThat(page).contains("a judgment, to compare and not to forecast");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everythingStandsInOrder(Paper paper) throws IOException {
        assertThat(text(folder.resolve(paper.name())))
                .containsSubsequence(
                        "Your windows: a proposal",
                        "171 Kickout Close",
                        "built 1945",
                        "All full-flange",
                        "All inserts",
                        "Price",
                        "Days for a crew",
                        "clapboards",
                        "Your initials",
                        "Signature",
                        "See the difference",
                        "full-flange",
                        "insert",
                        "can and cannot",
                        "Window by window",
                        "today",
                        "Rain on your walls",
                        "Inside the walls",
                        "What is not certain",
                        "Take care, and ask",
                        "Lead paint",
                        "Asbestos",
                        "Local code");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void fontsAreEmbeddedTypeIsLargeAndNothingLeavesThePage(Paper paper) throws IOException {
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve(paper.name() + "/handout.pdf").toFile())) {
            for (PDPage page : pdf.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
            for (TextPosition letter : letters(pdf)) {
                assertThat(letter.getFontSizeInPt()).as("size of %s", letter).isGreaterThanOrEqualTo(8.99f);
                assertThat(letter.getXDirAdj()).isGreaterThanOrEqualTo(20);
                assertThat(letter.getXDirAdj() + letter.getWidthDirAdj())
                        .isLessThanOrEqualTo(letter.getPageWidth() - 20);
                assertThat(letter.getYDirAdj()).isBetween(12f, letter.getPageHeight() - 12);
            }
        }
    }

    @Test
    void thePageNeedsNothingFromOutsideAndRunsNoScriptButItsOwn() throws IOException {
        String page = Files.readString(folder.resolve("LETTER/handout.html"));
        assertThat(page)
                .contains("default-src 'none'", "script-src 'sha256-", "width=device-width")
                .doesNotContain("unsafe-eval", "url(", "@import", "<link", "<iframe", "javascript:")
                .doesNotContainPattern("(?i)(src|href)=\"?(https?:|//|file:)");
        assertThat(page.split("<script", -1)).hasSize(3); // the data, and what adds it up
    }

    @Test
    void namesThatTryToBeMoreThanNamesComeThroughWholeAndHarmless() throws IOException {
        String page = Files.readString(folder.resolve("hostile/handout.html"));
        assertThat(page)
                .doesNotContain("<script>alert", "<img")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;", HandoutFiles.HEBREW, HandoutFiles.CHINESE);
        assertThat(page.replace("\u200B", "")).contains(HandoutFiles.LONG);
        String printed = text(folder.resolve("hostile")).replaceAll("[\\s\u200B]", "");
        assertThat(printed)
                .contains(
                        "<script>alert(1)</script>",
                        HandoutFiles.LONG,
                        HandoutFiles.GREEK,
                        "NamesinotherlettersarespeltinLatinletters");
        assertThat(printed).containsAnyOf(HandoutFiles.HEBREW, new StringBuilder(HandoutFiles.HEBREW).reverse());
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve("hostile/handout.pdf").toFile())) {
            assertThat(letters(pdf))
                    .allMatch(letter -> letter.getXDirAdj() + letter.getWidthDirAdj() <= letter.getPageWidth() - 15);
        }
    }

    @Test
    void theSameHouseGivesTheSameBytes() throws IOException {
        Path again = folder.resolve("again");
        HandoutFiles.write(HandoutFiles.demo(), TYPICAL, Paper.LETTER, again);
        for (String file : List.of("handout.html", "handout.pdf")) {
            assertThat(again.resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("LETTER").resolve(file));
        }
    }

    private static String text(Path handout) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(handout.resolve("handout.pdf").toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    private static List<TextPosition> letters(PDDocument pdf) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                if (!text.getUnicode().isBlank()) {
                    letters.add(text);
                }
            }
        }.writeText(pdf, new StringWriter());
        assertThat(letters).hasSizeGreaterThan(500);
        return letters;
    }
}
