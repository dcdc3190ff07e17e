package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.analysis.plan.PlanLine;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.reports.offer.ChoiceLine;
import weatherlap.sim.house.House;

class CrewsheetCommandTest {
    @TempDir
    private Path folder;

    @Test
    void writesTheSheetOfAFullFlangeJobInOrder() throws IOException {
        Path out = folder.resolve("sheet");
        Cli cli = Cli.run("crewsheet", "--house", "gable", "--method", "full-flange", "--out", out);
        assertThat(cli)
                .isEqualTo(new Cli(
                        0,
                        "",
                        "the crew sheet is in " + out + "; open " + out.resolve("crewsheet.html") + " or print "
                                + out.resolve("crewsheet.pdf") + "\n"));
        assertThat(out.toFile().list()).containsExactlyInAnyOrder("crewsheet.html", "crewsheet.pdf", "run.json");
        String text = text(out);
        assertThat(text)
                .containsSubsequence(
                        "Crew sheet, full-flange: Windy gable on Squall Road",
                        "Address",
                        "Days",
                        "Look out",
                        "come down",
                        "Sizes to order",
                        "Sill board",
                        "Head flap: cut",
                        "Jamb strips",
                        "Head strip",
                        "Head flap: last",
                        "Pick list",
                        "Labor",
                        "In all")
                .contains("29 CFR 1926.501", "NONE behind the sill flange", "confirm with the local building official");
        everythingStandsOnThePage(out, PDRectangle.LETTER);
    }

    /** The family's plan of the house on Drip Edge Lane has all three methods; the sheet takes it up again from its line. */
    @Test
    void thePlanOfAHouseIsOneSheet() throws IOException {
        Path plan = folder.resolve("plan");
        assertThat(Cli.run("crewsheet", "--house", "G0003", "--method", "plan", "--out", plan)
                        .status())
                .isZero();
        String line =
                Files.readString(plan.resolve("run.json")).replaceFirst("(?s).*\"method\" : \"([^\"]*)\".*", "$1");
        assertThat(line).contains("=", ",");
        Path same = folder.resolve("same");
        assertThat(Cli.run("crewsheet", "--house", "G0003", "--method", line, "--out", same)
                        .status())
                .isZero();
        assertThat(same.resolve("crewsheet.html")).hasSameBinaryContentAs(plan.resolve("crewsheet.html"));
        House house = DemoPortfolio.load().houses().stream()
                .filter(one -> one.id().equals("G0003"))
                .findFirst()
                .orElseThrow();
        String kept = ChoiceLine.of(house, PlanLine.parse(line, house));
        Path shop = Files.writeString(folder.resolve("shop.toml"), "name = \"Sample Shop\"\nlicense = \"HIC-0000\"");
        Path signed = folder.resolve("signed");
        assertThat(Cli.run("crewsheet", "--house", "G0003", "--method", kept, "--shop", shop, "--out", signed)
                        .status())
                .isZero();
        assertThat(Files.readString(signed.resolve("crewsheet.html"))
                        .replace("<p class=\"facts\">Sample Shop \u00b7 license HIC-0000</p>\n", ""))
                .isEqualTo(Files.readString(plan.resolve("crewsheet.html")));
        assertThat(Cli.run("crewsheet", "--house", "brick", "--method", kept, "--out", signed)
                        .err())
                .contains("this line was not made for the windows of house brick");
        assertThat(text(plan))
                .containsSubsequence(
                        "Crew sheet, window by window: ",
                        "What is done at each window",
                        " down with window",
                        "Head flap: last",
                        "Pick list",
                        "Labor")
                .contains("Full-flange: sizes to order", "Insert: sizes to order", "Capping over the old frame");
        everythingStandsOnThePage(plan, PDRectangle.LETTER);
        assertThat(Cli.run("crewsheet", "--house", "brick", "--method", "insert,front/W1=full_flange", "--out", same)
                        .err())
                .contains("--method: ");
    }

    @Test
    void anInsertInBrickHasItsOwnOrderAndCautions() throws IOException {
        Path out = folder.resolve("sheet");
        assertThat(Cli.run("crewsheet", "--house", "brick", "--method", "insert", "--paper", "a4", "--out", out)
                        .status())
                .isZero();
        assertThat(text(out))
                .containsSubsequence(
                        "Silica",
                        "No siding comes down",
                        "Capping over the old frame",
                        "Old frame: sashes",
                        "sill piece first")
                .doesNotContain("Jamb strips", "Cut back");
        everythingStandsOnThePage(out, PDRectangle.A4);
    }

    /** The gable of the demo, two stories, in open country at 130 mph; all its units stated at DP 20. */
    @Test
    void aSiteWithAWindBringsTheRatingToOrder() throws IOException {
        Path shop = folder.resolve("shop");
        assertThat(Cli.run("assumptions", "--out", shop).status()).isZero();
        Path units = shop.resolve("units.csv");
        Files.writeString(
                units,
                Files.readString(units)
                        .replace(",price_year,", ",rating_psf,price_year,")
                        .replaceAll("(?m)^((?:[^,]*,){4})(?!rating_psf)", "$1" + "20,"));
        Path site = Files.writeString(
                folder.resolve("gable.toml"), "place = \"Squall\"\ndesign_wind_mph = 130\nexposure = \"C\"\n");
        Path out = folder.resolve("sheet");
        Cli cli = Cli.run(
                "crewsheet",
                "--house",
                "gable",
                "--method",
                "insert",
                "--assumptions",
                shop,
                "--site",
                site,
                "--out",
                out);
        assertThat(cli.status()).as(cli.err()).isZero();
        assertThat(text(out))
                .contains(
                        "Wind rating to order: 130 mph, exposure C",
                        "TOO LOW: DP 20",
                        "not ruled on",
                        "zone 4",
                        "Water test");
        everythingStandsOnThePage(out, PDRectangle.LETTER);
    }

    @Test
    void withoutASiteNothingIsSaidOfWind() throws IOException {
        Path out = folder.resolve("sheet");
        Cli.run("crewsheet", "--house", "gable", "--method", "insert", "--out", out);
        assertThat(text(out))
                .doesNotContain("Wind rating")
                .doesNotContain("mph")
                .contains("with the days that rain takes");
    }

    @Test
    void whatTheOfficeWroteOfTheJobStandsFirst() throws IOException {
        Path portfolio = SmallPortfolio.write(folder.resolve("houses"));
        append(portfolio.resolve("houses.csv"), "job_phone", "555 0100, <b>after five</b>");
        append(portfolio.resolve("openings.csv"), "job_color", "white");
        Path out = folder.resolve("job");
        assertThat(Cli.run("crewsheet", portfolio, "--house", "h2", "--method", "insert", "--out", out)
                        .status())
                .isZero();
        assertThat(text(out)).doesNotContain("rain takes"); // nobody knows where these houses stand
        assertThat(text(out)).containsSubsequence("Phone 555 0100, <b>after five</b>", "Days", "color white");
    }

    /** A column more, with the same words in every row. */
    private static void append(Path table, String column, String words) throws IOException {
        String text = Files.readString(table).replaceAll("(?m)(?<=.)$", ",\"" + words + "\"");
        Files.writeString(table, text.replaceFirst(",\"" + words + "\"", "," + column));
    }

    @Test
    void theScenarioDecidesTheSillFlange() throws IOException {
        Path out = folder.resolve("sheet");
        assertThat(Cli.run(
                                "crewsheet",
                                "--house",
                                "gable",
                                "--method",
                                "full_flange",
                                "--set",
                                "sill_flange=sealed",
                                "--out",
                                out)
                        .status())
                .isZero();
        assertThat(text(out)).contains("on all four sides").doesNotContain("NONE behind");
    }

    @Test
    void hostileLabelsComeThroughAsText() throws IOException {
        Path portfolio = SmallPortfolio.write(folder.resolve("houses"));
        Path out = folder.resolve("h1");
        assertThat(Cli.run("crewsheet", portfolio, "--house", "h1", "--method", "full_flange", "--out", out)
                        .status())
                .isZero();
        assertThat(Files.readString(out.resolve("crewsheet.html")))
                .startsWith("<!DOCTYPE html>")
                .contains("&lt;script&gt;")
                .doesNotContain("<script");
        assertThat(text(out)).contains("<script>");
        everythingStandsOnThePage(out, PDRectangle.LETTER);
        Path longest = folder.resolve("h2");
        assertThat(Cli.run("crewsheet", portfolio, "--house", "h2", "--method", "insert", "--out", longest)
                        .status())
                .isZero();
        everythingStandsOnThePage(longest, PDRectangle.LETTER);
    }

    @Test
    void paperSaysWhichLettersItLacksAndTheScreenShowsThem() throws IOException {
        Path portfolio = SmallPortfolio.write(folder.resolve("houses"));
        Path houses = portfolio.resolve("houses.csv");
        String label = "Forest house \u6797";
        Files.writeString(houses, Files.readString(houses).replaceFirst("(?m)^h2,[^,]*,", "h2," + label + ","));
        Files.writeString(portfolio.resolve("shop.toml"), "name = \"\u6797 window works\"\n");
        Path out = folder.resolve("sheet");
        assertThat(Cli.run("crewsheet", portfolio, "--house", "h2", "--method", "insert", "--out", out)
                        .status())
                .isZero();
        assertThat(text(out))
                .contains("Forest house l\u00EDn", "l\u00EDn window works", "spelt in Latin letters")
                .doesNotContain("?");
        assertThat(Files.readString(out.resolve("crewsheet.html")))
                .contains(label)
                .doesNotContain("Latin letters");
    }

    @Test
    void theSameCallGivesTheSameBytes() {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        for (Path out : new Path[] {one, two}) {
            assertThat(Cli.run("crewsheet", "--house", "porch", "--method", "insert", "--out", out)
                            .status())
                    .isZero();
        }
        assertThat(two.resolve("crewsheet.pdf")).hasSameBinaryContentAs(one.resolve("crewsheet.pdf"));
        assertThat(two.resolve("crewsheet.html")).hasSameBinaryContentAs(one.resolve("crewsheet.html"));
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        Path out = folder.resolve("sheet");
        assertThat(Cli.run("crewsheet", "--house", "brik", "--method", "insert", "--out", out))
                .satisfies(cli -> assertThat(cli.err()).contains("no house \"brik\"", "brick"))
                .extracting(Cli::status)
                .isEqualTo(2);
        assertThat(Cli.run("crewsheet", "--house", "brick", "--method", "new", "--out", out))
                .satisfies(cli -> assertThat(cli.err()).contains("full_flange, full_frame or insert"))
                .extracting(Cli::status)
                .isEqualTo(2);
        assertThat(Cli.run("crewsheet", "--house", "brick", "--method", "insert", "--paper", "a3", "--out", out)
                        .status())
                .isEqualTo(2);
        assertThat(out).doesNotExist();
    }

    private static String text(Path out) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(out.resolve("crewsheet.pdf").toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ").replace("\u200B", "");
        }
    }

    /** Paper across, fonts embedded, and no letter outside the margins' inner half. */
    private static void everythingStandsOnThePage(Path out, PDRectangle upright) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(out.resolve("crewsheet.pdf").toFile())) {
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth())
                        .isCloseTo(upright.getHeight(), org.assertj.core.api.Assertions.within(1f));
                for (var name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
            float right = upright.getHeight() - 18;
            float bottom = upright.getWidth() - 10;
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    assertThat(letter.getX()).as(letter.getUnicode()).isBetween(18f, right);
                    assertThat(letter.getX() + letter.getWidth()).isLessThanOrEqualTo(right);
                    assertThat(letter.getY()).as(letter.getUnicode()).isBetween(18f, bottom);
                    super.processTextPosition(letter);
                }
            };
            assertThat(stripper.getText(pdf)).isNotBlank();
        }
    }
}
