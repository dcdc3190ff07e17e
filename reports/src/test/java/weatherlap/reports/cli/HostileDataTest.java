package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables that try to be more than tables, through a whole comparison: their texts arrive as texts everywhere, and nothing else does. */
class HostileDataTest {
    /** Of the sheets that compute: functions, cells of those sheets, numbers and signs, and no text. */
    private static final Pattern OWN_FORMULA = Pattern.compile(
            "((SUM|SUMIF|INDEX|MATCH|MAX|IF)\\("
                    + "|'(What if|Behind the what-if|Price by window)'!|\\$?[A-Z]{1,2}\\$?\\d+|\\d+(\\.\\d+)?|[-+*/^(),:={}])+");

    private static final String SECRET = "kept secret, never to be read";
    private static final String PICTURE = "<img src=x onerror=alert(1)><svg onload=alert(2)>";
    private static final String ENTITY =
            "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///%s\">]>&e;]]></text></svg><script>alert(3)</script>";
    private static final String FORMULA = "=HYPERLINK(\"http://localhost:1/\"&A1,\"x\")";
    private static final String LONGEST_ID = "\u00e9" + "x".repeat(63);

    @TempDir
    private static Path folder;

    private static Path report;

    @BeforeAll
    static void compareOnce() throws IOException {
        folder = folder.toRealPath();
        Path secret = Files.writeString(folder.resolve("secret.txt"), SECRET);
        Path houses = hostilePortfolio(secret);
        Path tables = hostileTables();
        report = folder.resolve("report");
        Cli cli = Cli.run(
                "compare", houses, "--assumptions", tables, "--out", report, "--draws", 20, "--threads", 1, "--quiet");
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
    }

    private static Path hostilePortfolio(Path secret) throws IOException {
        Path houses = SmallPortfolio.write(folder.resolve("houses"));
        Files.writeString(houses.resolve("houses.csv"), """
                house_id,label,year_built,terrain,cladding,barrier,storeys
                con,%s,1962,suburban,vinyl_siding,building_paper,1
                %s,%s,1998,farmland,brick_veneer,housewrap,2
                a..b,%s,1998,farmland,brick_veneer,housewrap,2
                """.formatted(
                        quoted(PICTURE + "${1+1} @raw %s %n javascript:alert(4)"),
                        LONGEST_ID,
                        quoted(ENTITY.formatted(secret)),
                        quoted(FORMULA)));
        String walls = Files.readString(houses.resolve("elevations.csv"));
        String openings = Files.readString(houses.resolve("openings.csv"));
        String third = "a..b,west,";
        Files.writeString(
                houses.resolve("elevations.csv"),
                (walls + third + "270,40,18,6,,\n").replace("h1,", "con,").replace("h2,", LONGEST_ID + ","));
        String more = openings.lines()
                .filter(line -> line.startsWith("h2,"))
                .findFirst()
                .orElseThrow();
        Files.writeString(
                houses.resolve("openings.csv"),
                (openings + more.replace("h2,", "a..b,") + "\n")
                        .replace("h1,", "con,")
                        .replace("h2,", LONGEST_ID + ","));
        return houses;
    }

    private static Path hostileTables() throws IOException {
        Path tables = folder.resolve("tables");
        assertThat(Cli.run("assumptions", "--out", tables).status()).isZero();
        Files.writeString(
                tables.resolve("labour-steps.csv"),
                Files.readString(tables.resolve("labour-steps.csv"))
                        + "hostile,both," + quoted("Set " + FORMULA + PICTURE) + ",opening,1,2,3,,no,no,1,judgement,"
                        + quoted("</td></table><script>alert(5)</script>") + "\n");
        return tables;
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    @Test
    void pagesAndPicturesRunNothingAndFetchNothing() throws Exception {
        for (Map.Entry<String, Path> file : Outputs.files(report).entrySet()) {
            if (file.getKey().matches(".*\\.(html|svg)")) {
                assertThat(Outputs.active(Outputs.parsed(file.getValue())))
                        .as(file.getKey())
                        .isEmpty();
            }
        }
        assertThat(Outputs.parsed(report.resolve("report.html"))
                        .getDocumentElement()
                        .getTextContent())
                .contains(
                        PICTURE,
                        "<script>alert(3)</script>",
                        "</td></table><script>alert(5)</script>",
                        "${1+1} @raw %s %n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"report.pdf", "appendix.pdf"})
    void sheetsRunNothingAndLeadNowhere(String sheet) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(report.resolve(sheet).toFile())) {
            assertThat(pdf.getDocumentCatalog().getCOSObject().keySet())
                    .extracting(key -> key.getName())
                    .doesNotContain("OpenAction", "AA", "AcroForm");
            assertThat(pdf.getDocumentCatalog().getNames())
                    .satisfiesAnyOf(names -> assertThat(names).isNull(), names -> {
                        assertThat(names.getJavaScript()).isNull();
                        assertThat(names.getEmbeddedFiles()).isNull();
                    });
            for (PDPage page : pdf.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    assertThat(annotation).isInstanceOf(PDAnnotationLink.class);
                    assertThat(((PDAnnotationLink) annotation).getAction()).isNotInstanceOf(PDActionURI.class);
                }
            }
        }
    }

    @Test
    void theAppendixNamesHousesWhatTheyAreCalled() throws IOException {
        assertThat(Outputs.text(report.resolve("appendix.pdf")).replaceAll("[\\s\u200B]", ""))
                .contains("<script>alert(3)</script>");
    }

    @Test
    void sheetsOfOneHouseRunNothing() throws Exception {
        for (List<Object> command : List.of(
                List.<Object>of("handout", "--house", LONGEST_ID),
                List.<Object>of("crewsheet", "--house", "con", "--method", "full_flange"))) {
            Path out = folder.resolve(command.get(0).toString());
            List<Object> arguments = new ArrayList<>(command);
            arguments.addAll(List.of(folder.resolve("houses"), "--set", "draws=8", "--out", out, "--quiet"));
            Cli cli = Cli.run(arguments.toArray());
            assertThat(cli.status()).as(cli.err()).isZero();
            for (Map.Entry<String, Path> file : Outputs.files(out).entrySet()) {
                assertThat(Outputs.text(file.getValue())).as(file.getKey()).doesNotContain(SECRET);
                if (file.getKey().endsWith(".html")) {
                    assertThat(Outputs.active(Outputs.parsed(file.getValue())))
                            .as(file.getKey())
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void noCellIsAFormula() throws IOException {
        for (String table : List.of("openings.csv", "elevations.csv", "houses.csv")) {
            assertThat(Outputs.rows(report.resolve(table))).as(table).allSatisfy(row -> assertThat(row)
                    .allMatch(cell -> cell.matches("-?\\d+(\\.\\d+)?") || !cell.matches("(?s)^[=+@\\t\\r-].*")));
        }
        assertThat(Files.readString(report.resolve("houses.csv"))).contains("'=HYPERLINK");
        String workbook = Outputs.text(report.resolve("workbook.xlsx"));
        assertThat(workbook).contains("=HYPERLINK").doesNotContain("<f ", "<hyperlink", "externalLink");
        assertThat(Pattern.compile("<f>([^<]*)</f>").matcher(workbook).results().map(formula -> formula.group(1)))
                .isNotEmpty()
                .allMatch(formula -> OWN_FORMULA.matcher(formula).matches());
    }

    @Test
    void nothingIsReadThatNoTableIs() throws IOException {
        for (Path file : Outputs.files(report).values()) {
            assertThat(Outputs.text(file)).as(file.toString()).doesNotContain(SECRET);
        }
    }

    @Test
    void idsBecomeNoPaths() throws IOException {
        assertThat(List.of(folder.toFile().list()))
                .isSubsetOf("secret.txt", "houses", "tables", "report", "handout", "crewsheet");
        assertThat(Outputs.files(report).keySet())
                .allMatch(name -> name.matches("[a-z0-9][a-z0-9._-]*(/[a-z0-9][a-z0-9._-]*)*"))
                .noneMatch(name -> name.matches("(?i)(.*/)?con(\\..*)?") || name.contains(".."));
        assertThat(Outputs.rows(report.resolve("houses.csv")))
                .anyMatch(row -> row.get(0).equals(LONGEST_ID));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "/etc/passwd", "..", "h1/../../x", "nul\u0000x"})
    void namesOnTheCommandLineAreNames(String name) {
        for (String command : List.of("check", "compare")) {
            Cli cli = Cli.run(command, folder.resolve("houses"), "--assumptions", folder + "/tables/" + name);
            assertThat(cli.status()).as(cli.err()).isEqualTo(2);
            assertThat(cli.err()).isNotBlank().doesNotContain("\tat ");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"=", "draws", "draws=", "draws=1e9", "draws=NaN", "region=<script>", "seed=9e99", "\u001b[31m=1"
            })
    void changesOnTheCommandLineAreChecked(String change) {
        Cli cli = Cli.run("check", folder.resolve("houses"), "--set", change);
        assertThat(cli.status()).as(cli.err()).isEqualTo(2);
        assertThat(cli.err()).isNotBlank().doesNotContain("\tat ", "\u001b");
    }
}
