package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One workbook wherever a folder of tables goes. */
class WorkbookCommandsTest {
    @TempDir
    private static Path folder;

    private static Path workbook;

    @BeforeAll
    static void template() {
        workbook = folder.resolve("my houses.xlsx");
        Cli cli = Cli.run("generate", "--template", "--records", "--out", workbook);
        assertThat(cli.status()).isZero();
        assertThat(cli.err()).contains("weatherlap check \"" + workbook + "\"");
    }

    /** As {@link TutorialsTest} has it of the tutorials, handouts and crew sheets among them. */
    @Test
    void aWorkbookGivesTheTablesThatItsFolderGives() throws IOException {
        Path tables = folder.resolve("tables/my houses");
        assertThat(Cli.run("generate", "--template", "--records", "--out", tables)
                        .status())
                .isZero();
        List<List<String>> commands = List.of(
                List.of("compare", "--set", "draws=16", "--set", "gross_margin=0.42"),
                List.of("breakeven", "--set", "draws=16", "--vary", "repair_cost_usd"),
                List.of("callbacks"),
                List.of("calibrate"));
        for (List<String> command : commands) {
            Path input = command.get(0).equals("calibrate") ? tables.resolve("jobs.csv") : tables;
            SortedMap<String, String> own = written(command, input, "folder");
            SortedMap<String, String> other = written(command, workbook, "workbook");
            assertThat(other.keySet()).as(command.get(0)).isEqualTo(own.keySet());
            own.forEach((table, text) -> assertThat(other.get(table))
                    .as(command.get(0) + ", " + table)
                    .isEqualTo(text));
            assertThat(own).as(command.get(0)).isNotEmpty();
        }
        assertThat(folder.resolve("by workbook/compare/report.html")).content().contains("my houses");
        saysWhereItCameFrom("compare/report.html", "my houses.xlsx, sheet Windows, as openings.csv");
        saysWhereItCameFrom("calibrate/calibration.html", "Labor rates fitted to my houses.xlsx, sheet Jobs");
        saysWhereItCameFrom("callbacks/callbacks.html", "Leak level from the calls of my houses.xlsx, sheet Callbacks");
        assertThat(explained(workbook)).contains("labor").isEqualTo(explained(tables));
        done("check", workbook);
    }

    /** A setting typed into the workbook of assumptions does what it does by --set, and the folder that is made of it holds it. */
    @Test
    void aSettingOfAWorkbookIsThatOfTheCommandLine() throws IOException {
        Path shop = folder.resolve("shop.XLSX");
        Path again = folder.resolve("of the workbook");
        List<Object> changes = List.of("--set", "draws=16", "--set", "gross_margin=0.3");
        done(Stream.concat(Stream.of("assumptions", "--out", shop), changes.stream())
                .toArray());
        done("assumptions", "--assumptions", shop, "--out", again);
        assertThat(again.resolve("scenario.toml"))
                .content()
                .contains("[gross_margin]\n# gross profit as a share of the price\nvalue = 0.3\n");
        SortedMap<String, String> own =
                written(List.of("compare", "--set", "draws=16", "--set", "gross_margin=0.3"), workbook, "set");
        SortedMap<String, String> other =
                written(List.of("compare", "--assumptions", shop.toString()), workbook, "sheet");
        assertThat(results(other)).hasSizeGreaterThan(5).isEqualTo(results(own));
        saysWhereNumbersCameFrom(folder.resolve("by sheet/compare/report.html"));
        assertThat(done("explain", workbook, "--assumptions", shop, "--opening", "EXAMPLE/front/W1")
                        .out())
                .contains(
                        "[shop.XLSX, sheet Labor steps, in_set (A66); judgement: ",
                        "[shop.XLSX, sheet Settings, travel_loss_in (B74); ")
                .doesNotContain(".csv", "[scenario.toml");
        assertThat(folder.resolve("by sheet/compare/assumptions/scenario.toml"))
                .hasSameTextualContentAs(again.resolve("scenario.toml"));
    }

    private static void saysWhereNumbersCameFrom(Path page) throws IOException {
        String text = Files.readString(page);
        assertThat(text)
                .contains(
                        "<strong>Measured</strong> my houses.xlsx, sheet Windows: frame_width_in, ",
                        "my houses.xlsx, sheet Walls: width_ft, ",
                        "<strong>shop.XLSX, sheet Labor steps</strong>",
                        ">horizon_years (B15)</a>",
                        "shop.XLSX, sheet Settings: single numbers",
                        "but for shop.XLSX, sheet Settings; ");
        assertThat(text)
                .containsPattern("#row-labour-[^>]*>[a-z_]+ \\(A\\d+\\)</a>")
                .doesNotContain("<strong>labour-steps.csv</strong>", "labour-steps.csv: person-minutes");
        Matcher measured = Pattern.compile("<strong>Measured</strong>(.*?)</p>").matcher(text);
        assertThat(measured.results().map(found -> found.group(1))).hasSize(5).allMatch(line -> !line.contains(".csv"));
    }

    /** Of the short table only what it has is named, by its own headings. */
    @Test
    void whatAShortTableHoldsIsNamedByItsHeadings() throws IOException {
        Path begun = folder.resolve("begun.xlsx");
        done("generate", "--template", "--short", "--out", begun);
        SortedMap<String, String> tables = written(List.of("compare", "--set", "draws=16"), begun, "short");
        assertThat(tables).isNotEmpty();
        assertThat(folder.resolve("by short/compare/report.html"))
                .content()
                .contains("<strong>Measured</strong> begun.xlsx, sheet Windows: width, height, opens, ")
                .contains("; what it leaves out is as usual.");
    }

    private static Map<String, String> results(Map<String, String> tables) {
        return tables.entrySet().stream()
                .filter(table -> !table.getKey().startsWith("assumptions/"))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static void saysWhereItCameFrom(String page, String name) {
        assertThat(folder.resolve("by workbook").resolve(page))
                .content()
                .contains(name)
                .doesNotContain("portfolio/", "jobs/jobs.csv", "jobs/callbacks.csv");
        assertThat(folder.resolve("by folder").resolve(page)).content().doesNotContain(".xlsx, sheet");
    }

    /** A run that ends well, and never names the folder that a workbook was unpacked to. */
    private static Cli done(Object... line) {
        Cli cli = Cli.run(line);
        assertThat(cli.status()).as(List.of(line) + cli.err()).isZero();
        if (List.of(line).contains(workbook)) {
            assertThat(cli.err()).as(List.of(line) + "").doesNotContain("weatherlap1", "weatherlap2", ".csv:");
        }
        return cli;
    }

    private static String explained(Path input) {
        return done("explain", input, "--set", "draws=16", "--opening", "EXAMPLE/front/W1")
                .out();
    }

    /** Every table that a command writes, by its name. */
    private static SortedMap<String, String> written(List<String> command, Path input, String name) throws IOException {
        Path out = folder.resolve("by " + name).resolve(command.get(0));
        List<Object> line = new ArrayList<>(command);
        line.add(1, input);
        line.addAll(List.of("--out", out));
        done(line.toArray());
        SortedMap<String, String> tables = new TreeMap<>();
        for (Map.Entry<String, Path> file : Outputs.files(out).entrySet()) {
            if (file.getKey().endsWith(".csv")) {
                tables.put(file.getKey(), Files.readString(file.getValue()));
            }
        }
        return tables;
    }

    @Test
    void aWorkbookIsNeverWrittenOver() {
        Cli again = Cli.run("generate", "--template", "--force", "--out", workbook);
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("may hold your work");
        Cli out = Cli.run("compare", "--draws", 16, "--force", "--out", workbook);
        assertThat(out.status()).isEqualTo(2);
        assertThat(Cli.run("check", workbook).status()).isZero();
    }

    /** Nothing of the tables stays behind, whether the run ends well or not. */
    @Test
    void whatWasUnpackedIsGone() throws IOException {
        Path other = Files.writeString(folder.resolve("other.xlsx"), "house_id\n");
        List<Path> before = temporary();
        assertThat(Cli.run("check", workbook).status()).isZero();
        Cli bad = Cli.run("check", other);
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err()).isEqualTo("other.xlsx: is not a workbook; save it as .xlsx\n");
        assertThat(Cli.run("explain", workbook, "--opening", "none").status()).isEqualTo(2);
        assertThat(temporary()).containsAll(before).hasSameSizeAs(before);
    }

    private static List<Path> temporary() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.filter(file -> Files.exists(file.resolve("my houses"))).toList();
        }
    }
}
