package weatherlap.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.generator.BundledMix;
import weatherlap.datasets.generator.HouseGenerator;
import weatherlap.datasets.generator.Mix;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.datasets.workbook.WorkbookTables;
import weatherlap.sim.house.House;

/** Workbooks read, written, and those that somebody made to hurt. */
class WorkbookInputTest {
    @TempDir
    private Path folder;

    private static List<List<String>> cells(Schema schema, String csv) {
        return TextTable.read(Source.of(schema.file(), csv), schema, new Problems())
                .orElseThrow()
                .rows()
                .map(Row::cells)
                .toList();
    }

    /** Forty made houses, as CSV, as a workbook, and as CSV again: the same texts, cell by cell. */
    @Test
    void tablesAreTheSameAfterAWorkbook() throws IOException {
        StringBuilder houses = new StringBuilder();
        StringBuilder walls = new StringBuilder();
        StringBuilder openings = new StringBuilder();
        PortfolioText text = new PortfolioText(houses, walls, openings);
        new HouseGenerator(Mix.bundled(BundledMix.NEW_YORK), 3).houses(40).forEach(house -> add(text, house));
        Map<Schema, String> tables = new LinkedHashMap<>();
        tables.put(PortfolioTables.HOUSES, houses.toString());
        tables.put(PortfolioTables.ELEVATIONS, walls.toString());
        tables.put(PortfolioTables.OPENINGS, openings.toString());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Test", "1.0")) {
            WordLists lists = new WordLists();
            for (Map.Entry<Schema, String> table : tables.entrySet()) {
                TemplateWorkbook.table(
                        workbook,
                        table.getKey(),
                        table.getKey().columns(),
                        table.getValue().getBytes(StandardCharsets.UTF_8),
                        lists);
            }
            lists.write(workbook);
        }
        Path file = Files.write(folder.resolve("forty.xlsx"), bytes.toByteArray());
        WorkbookTables read = WorkbookTables.read(file).orElseThrow();
        tables.forEach((schema, csv) -> assertThat(cells(schema, read.texts().get(schema.file())))
                .as(schema.file())
                .hasSizeGreaterThan(39)
                .isEqualTo(cells(schema, csv)));
    }

    private static void add(PortfolioText text, House house) {
        try {
            text.add(house);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theTemplateIsTheSameEveryTimeAndNamesEveryWord() throws IOException {
        ByteArrayOutputStream one = new ByteArrayOutputStream();
        ByteArrayOutputStream two = new ByteArrayOutputStream();
        TemplateWorkbook.of(true).writeTo(one);
        TemplateWorkbook.of(true).writeTo(two);
        assertThat(one.toByteArray()).isEqualTo(two.toByteArray());
        Path file = Files.write(folder.resolve("template.xlsx"), one.toByteArray());
        try (ZipFile zip = new ZipFile(file.toFile())) {
            String windows = new String(
                    zip.getInputStream(zip.getEntry("xl/worksheets/sheet4.xml")).readAllBytes(),
                    StandardCharsets.UTF_8);
            assertThat(windows)
                    .contains("<formula1>Lists!$", "errorTitle=\"operation\"", "outlineLevel")
                    .doesNotContain("\"null\"");
        }
        assertThat(WorkbookTables.read(file).orElseThrow().texts())
                .containsOnlyKeys("houses.csv", "elevations.csv", "openings.csv", "jobs.csv", "callbacks.csv");
    }

    private static List<String> errors(Path file) {
        Loaded<WorkbookTables> read = WorkbookTables.read(file);
        assertThat(read.value()).isEmpty();
        return read.errors().stream().map(Object::toString).toList();
    }

    /** The beginnings of files of other formats, and files cut off. */
    @Test
    void otherFormatsAreNamed() throws IOException {
        byte[] compound = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1};
        assertThat(errors(Files.write(folder.resolve("old.xls"), compound)))
                .containsExactly("old.xls: is a workbook of the old format (.xls); save it as .xlsx");
        ByteArrayOutputStream locked = new ByteArrayOutputStream();
        locked.write(compound);
        locked.write(new byte[504]);
        locked.write("EncryptedPackage".getBytes(StandardCharsets.UTF_16LE));
        assertThat(errors(Files.write(folder.resolve("locked.xlsx"), locked.toByteArray())))
                .containsExactly("locked.xlsx: is locked by a password; save it without one");
        assertThat(errors(Files.writeString(folder.resolve("text.xlsx"), "house_id,label\n")))
                .containsExactly("text.xlsx: is not a workbook; save it as .xlsx");
        Path ods = folder.resolve("open.ods");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(ods))) {
            MadeWorkbook.put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
        }
        assertThat(errors(ods)).containsExactly("open.ods: is a workbook of another format (.ods); save it as .xlsx");
        Path whole = MadeWorkbook.template().write(folder.resolve("whole.xlsx"));
        byte[] bytes = Files.readAllBytes(whole);
        Path cut = Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(bytes, bytes.length / 2));
        assertThat(errors(cut)).singleElement().asString().startsWith("cut.xlsx: is not a whole workbook");
        assertThat(errors(Files.write(folder.resolve("empty.xlsx"), new byte[0])))
                .containsExactly("empty.xlsx: is not a workbook; save it as .xlsx");
    }

    private Path with(String name, String part, String from, String to) throws IOException {
        Path file = folder.resolve(name);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            MadeWorkbook.template()
                    .parts()
                    .forEach((entry, text) ->
                            MadeWorkbook.put(zip, entry, entry.equals(part) ? text.replace(from, to) : text));
        }
        return file;
    }

    @Test
    void oddPackagesAreNamed() throws IOException {
        Path strict = with(
                "strict.xlsx",
                "xl/workbook.xml",
                "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
                "http://purl.oclc.org/ooxml/officeDocument/relationships");
        assertThat(errors(strict))
                .containsExactly("strict.xlsx: is in the strict form of its format; save it as an ordinary .xlsx");
        Path broken = with("broken.xlsx", "xl/worksheets/sheet3.xml", "</row>", "<row>");
        assertThat(errors(broken)).isNotEmpty().allMatch(error -> error.startsWith("broken.xlsx: cannot be read"));
        Path rows = with("rows.xlsx", "xl/worksheets/sheet3.xml", "<row r=\"2\">", "<row r=\"1\">");
        assertThat(errors(rows)).singleElement().asString().contains("Windows!1: is out of place in the file");
        Path entities = with(
                "entities.xlsx",
                "xl/worksheets/sheet3.xml",
                "<worksheet ",
                "<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]><worksheet ");
        Loaded<WorkbookTables> read = WorkbookTables.read(entities);
        read.value().ifPresent(tables -> assertThat(tables.texts().get("openings.csv"))
                .doesNotContain("aaaa"));
    }

    /** Half a gigabyte of blanks in half a megabyte; a million empty rows, and one at the end. */
    @Test
    void largeOnesAreBounded() throws IOException {
        Path bomb = folder.resolve("bomb.xlsx");
        try (OutputStream out = Files.newOutputStream(bomb);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            MadeWorkbook.template().parts().forEach((entry, text) -> MadeWorkbook.put(zip, entry, text));
            zip.putNextEntry(new ZipEntry("xl/media/blank.bin"));
            byte[] blank = new byte[1 << 20];
            for (int i = 0; i < 512; i++) {
                zip.write(blank);
            }
            zip.closeEntry();
        }
        assertThat(errors(bomb)).singleElement().asString().contains("unpacks to more than 400 MB");
        StringBuilder empty = new StringBuilder("</row>");
        for (int row = 3; row <= 1_000_000; row++) {
            empty.append("<row r=\"")
                    .append(row)
                    .append("\"><c r=\"A")
                    .append(row)
                    .append("\"/></row>");
        }
        Path rows = with("million.xlsx", "xl/worksheets/sheet3.xml", "</row></sheetData>", empty + "</sheetData>");
        assertThat(WorkbookTables.read(rows)
                        .orElseThrow()
                        .texts()
                        .get("openings.csv")
                        .lines())
                .hasSize(2);
    }
}
