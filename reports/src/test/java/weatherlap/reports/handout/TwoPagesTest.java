package weatherlap.reports.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.page.Paper;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;

/** However many windows a house has, its sheet is two pages, its type can be read, and no window is left out. */
class TwoPagesTest {
    private static final double SMALLEST_PT = 9;
    /** 12 mm, less half a point for rounding. */
    private static final double MARGIN_PT = 12 * 72 / 25.4 - 0.5;

    private static final Pattern ROTTEN = Pattern.compile("(frame is|frames are) rotten and cannot hold an insert");
    private static final Pattern MORE = Pattern.compile("And (\\d+) more kinds? \\((\\d+) windows?\\)");

    private static final String DRAWN = "Seen from outside";

    private static final FamilyWords WORDS = FamilyWords.in(Language.EN);
    private static final List<HandoutMaker> DEMO = handouts(Inputs.read(HandoutFiles.demo()));

    private record Sheet(int pages, String text, double smallestPt, double rightmostPt) {}

    /** In turn on one paper and the other; the crowded house below is on both. */
    @Test
    void everyHouseOfTheDemoDrawsOrListsEachKindOfItsWindows() throws IOException {
        assertThat(DEMO).hasSizeGreaterThan(50);
        for (int h = 0; h < DEMO.size(); h++) {
            HandoutMaker handout = DEMO.get(h);
            House house = handout.house();
            Sheet sheet = sheet(handout, Paper.values()[h % Paper.values().length]);
            assertThat(sheet.pages()).as(house.id()).isEqualTo(2);
            assertThat(sheet.smallestPt()).as(house.id()).isGreaterThanOrEqualTo(SMALLEST_PT - 0.01);
            assertThat(sheet.text()).as(house.id()).doesNotContainPattern(MORE).doesNotContain("\u2026");
            assertThat(sheet.text())
                    .as("%s: what the methods are stands on one page", house.id())
                    .containsPattern("can and cannot do(?:(?!page 1 of 2).)*New laps done badly can leak too|"
                            + "can and cannot do(?:(?!page 1 of 2).)*so look at it now and then");
            assertThat(house.openings()).allSatisfy(opening -> assertThat(sheet.text())
                    .contains(Phrases.size(
                            opening.frame().widthIn(), opening.frame().heightIn())));
            assertThat(sheet.rightmostPt()).as(house.id()).isLessThanOrEqualTo(-MARGIN_PT);
            boolean rotten =
                    house.openings().anyMatch(opening -> opening.frame().rotten());
            assertThat(sheet.text().contains("each window its own way"))
                    .as(house.id())
                    .isEqualTo(handout.page().mixed().isPresent());
            assertThat(sheet.text()).as(house.id()).contains("Your initials", "Signature", "Date", "For the shop");
            assertThat(sheet.text())
                    .as("%s: one letter beside a key reads as a direction of its own", house.id())
                    .doesNotContainPattern("(: |; | at )[NSEW]{1,2} ");
            assertThat(sheet.text())
                    .as("%s: glass today less its change is the glass after", house.id())
                    .doesNotContainPattern("ft\u00b2: [\\d.]+ ft");
            if (handout.page().methods().size() < 3
                    && handout.page().windows().stream()
                                    .mapToInt(section -> section.drawn().size())
                                    .sum()
                            <= 7) {
                assertThat(sheet.text()).as(house.id()).contains(DRAWN);
            }
            assertThat(sheet.text().contains("A test found lead"))
                    .as(house.id())
                    .isEqualTo(house.builtWithLead() && house.leadTest() == LeadTest.POSITIVE);
            assertThat(ROTTEN.matcher(sheet.text()).find()).as(house.id()).isEqualTo(rotten);
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aCrowdedHouseSaysHowManyWindowsItNeitherDrawsNorLists(Paper paper, @TempDir Path folder) throws IOException {
        Inputs inputs = Inputs.read(HandoutFiles.crowded(folder));
        House house = inputs.portfolio().houses().get(0);
        Sheet sheet = sheet(handouts(inputs).get(0), paper);
        assertThat(sheet.pages()).isEqualTo(2);
        assertThat(sheet.smallestPt()).isGreaterThanOrEqualTo(SMALLEST_PT - 0.01);
        assertThat(sheet.text()).contains("Long name Long name", "and 2 drier walls", "Local code");
        long shown = house.openings()
                .filter(opening -> sheet.text()
                        .contains(Phrases.size(
                                        opening.frame().widthIn(),
                                        opening.frame().heightIn()) + " "
                                + WORDS.name(opening.place().room())))
                .count();
        Matcher more = MORE.matcher(sheet.text());
        long rest = more.find() ? Long.parseLong(more.group(2)) : 0;
        assertThat(shown).isGreaterThanOrEqualTo(10);
        assertThat(shown + rest).isEqualTo(30);
    }

    /** A scale and hatching are explained only where something is drawn. */
    @Test
    void aListWithoutDrawingsHasNoScale() {
        HandoutMaker handout = DEMO.get(0);
        List<HandoutSheet> layouts = handout.ladder().stream()
                .map(density -> handout.sheet(Paper.LETTER, density))
                .toList();
        assertThat(layouts).extracting(layout -> layout.density().drawn()).contains(0);
        assertThat(layouts).allSatisfy((HandoutSheet layout) -> {
            String page = Html.render("handoutsheet.jte", layout);
            assertThat(page.contains(DRAWN)).isEqualTo(page.contains("class=\"drawing\""));
        });
    }

    @Test
    void barsAreExplainedWhereTheyAreDrawn() throws IOException {
        HandoutMaker handout = DEMO.get(0);
        for (Density density : handout.ladder()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Pdf.of("", Html.render("handoutsheet.jte", handout.sheet(Paper.LETTER, density)))
                    .writeTo(bytes);
            try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
                assertThat(new PDFTextStripper().getText(pdf).contains("Bars:"))
                        .as(density.name())
                        .isEqualTo(!density.name().contains("bare"));
            }
        }
    }

    @Test
    void theLadderGrowsTighter() {
        List<Density> ladder = Density.forPaper(5);
        for (int i = 1; i < ladder.size(); i++) {
            assertThat(ladder.get(i).typePt())
                    .isLessThanOrEqualTo(ladder.get(i - 1).typePt());
            assertThat(ladder.get(i).drawn())
                    .isLessThanOrEqualTo(ladder.get(i - 1).drawn());
        }
        assertThat(ladder).allMatch(density -> density.typePt() >= SMALLEST_PT);
    }

    @Test
    void whatIsCutShowsThatItIs() {
        Density paper = Density.forPaper(1).get(0);
        assertThat(paper.cut("a sheet of paper", 8)).isEqualTo("a sheet\u2026");
        assertThat(paper.cut("\uD835\uDD38\uD835\uDD38\uD835\uDD38", 2)).isEqualTo("\uD835\uDD38\u2026");
        assertThat(paper.some(List.of("A", "B", "C"), 2, WORDS)).isEqualTo("A, B and 1 more");
        assertThat(Density.SCREEN.cut("a sheet of paper", 8)).isEqualTo("a sheet of paper");
        assertThat(Density.SCREEN.some(List.of("A", "B", "C"), 2, WORDS)).isEqualTo("A, B, C");
    }

    private static List<HandoutMaker> handouts(Inputs inputs) {
        return inputs.portfolio().houses().stream()
                .map(house -> HandoutFiles.maker(inputs, house))
                .toList();
    }

    private static Sheet sheet(HandoutMaker handout, Paper paper) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        TwoPages.of(handout, paper).writeTo(bytes);
        List<Float> sizes = new ArrayList<>();
        List<Float> right = new ArrayList<>();
        StringWriter text = new StringWriter();
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    sizes.add(position.getFontSizeInPt());
                    if (!position.getUnicode().isBlank()) {
                        right.add(position.getEndX() - position.getPageWidth());
                    }
                    super.processTextPosition(position);
                }
            }.writeText(pdf, text);
            String line = text.toString().replaceAll("[\\s\u200B]+", " ");
            return new Sheet(
                    pdf.getNumberOfPages(),
                    line,
                    sizes.stream().mapToDouble(size -> size).min().orElse(0),
                    right.stream().mapToDouble(x -> x).max().orElse(0));
        }
    }
}
