package weatherlap.reports.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.method.Method;

class WorkbookFileTest {
    private static byte[] workbook() {
        return TestTables.bytes(WorkbookFile.of(List.of("What this is", "=1+1"), List.of(TestTables.hostile())));
    }

    @Test
    void textsComeBackWholeAndAreTexts() throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook()))) {
            List<Row> rows = book.findSheet("Test").orElseThrow().read();
            assertThat(rows.get(0).getCellText(2)).isEqualTo("cost (USD)");
            for (int i = 0; i < TestTables.HOSTILE.size(); i++) {
                var cell = rows.get(i + 1).getCell(0);
                assertThat(cell.getType()).isEqualTo(CellType.STRING);
                assertThat(cell.getFormula()).isNull();
                assertThat(cell.asString())
                        .isEqualToNormalizingNewlines(TestTables.HOSTILE.get(i).replace("\r", ""));
            }
            assertThat(rows.get(1).getCellAsNumber(2).orElseThrow()).isEqualByComparingTo("-0.005");
            assertThat(rows.get(2).getCellAsNumber(2)).isEmpty();
        }
    }

    @Test
    void theFirstSheetExplainsEachColumn() throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook()))) {
            List<Row> rows = book.getFirstSheet().read();
            assertThat(rows.get(0).getCellText(0)).isEqualTo("What this is");
            assertThat(rows.get(1).getCell(0).getType()).isEqualTo(CellType.STRING);
            assertThat(rows)
                    .anyMatch(row -> row.getCellText(1).equals("cost_usd")
                            && row.getCellText(3).equals("USD")
                            && row.getCellText(4).equals("what it costs"));
        }
    }

    @Test
    void theHeaderIsFrozenAndNumbersHaveAFormat() throws IOException {
        assertThat(entry("xl/worksheets/sheet2.xml"))
                .contains("state=\"frozen\"")
                .doesNotContain("<f>");
        assertThat(entry("xl/styles.xml")).contains("#,##0.00");
    }

    /** The header and the methods have the colours of the pictures. */
    @Test
    void thePaletteIsThatOfThePictures() throws IOException {
        Layout<Method> layout = Layout.<Method>of("m.csv", "M", "a row")
                .method(method -> method)
                .build();
        ResultTable table = ResultTable.of(layout, List.of(Method.FULL_FLANGE, Method.INSERT));
        byte[] book = TestTables.bytes(WorkbookFile.of(List.of("About"), List.of(table)));
        assertThat(entry(book, "xl/styles.xml").toUpperCase(Locale.ROOT))
                .contains(
                        Tone.LINE.rgb().toUpperCase(Locale.ROOT),
                        Tone.FULL_FLANGE_TINT.rgb().toUpperCase(Locale.ROOT),
                        Tone.INSERT_TINT.rgb().toUpperCase(Locale.ROOT),
                        Tone.INSERT_TEXT.rgb().toUpperCase(Locale.ROOT));
    }

    @Test
    void theSameTablesGiveTheSameBytesAtAnyTimeOfDay() throws IOException {
        byte[] book = workbook();
        assertThat(workbook()).isEqualTo(book);
        assertThat(entry(book, "docProps/core.xml")).contains(">" + FixedZip.TIME + ":00Z<");
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(entry.getTimeLocal()).as(entry.getName()).isEqualTo(FixedZip.TIME);
            }
        }
    }

    /** A sheet of texts over several cells, a formula and a chart. */
    private static final CellSheet.Filler FRONT = new CellSheet.Filler() {
        @Override
        public String title() {
            return "Front";
        }

        @Override
        public void fill(CellSheet sheet) {
            for (int row = 0; row < 20; row++) {
                sheet.text(row, 0, 3, "=1+1 & <b>", Look.PLAIN, 40);
            }
            sheet.text(20, 0, "<name> & so on", Look.HEADER);
            sheet.number(21, 0, 6, "0", Look.INPUT);
            sheet.formula(22, 0, CellSheet.cell("Front", 21, 0) + "*7", 42, "0", Look.NUMBER);
            sheet.formula(23, 2, "IF(A22<7,1,0)", 1, "0", Look.NUMBER);
            sheet.allow(21, 0, List.of(6, 7), "Pick 6 or 7.");
            sheet.chart(
                    new ColumnChart(
                            "A & B",
                            "<axis>",
                            "0",
                            List.of(new ColumnChart.Series(
                                    sheet.cells(20, 0, 20, 0),
                                    "1B4F72",
                                    sheet.cells(20, 0, 20, 0),
                                    sheet.cells(22, 0, 22, 0)))),
                    0,
                    5,
                    10,
                    9);
        }
    };

    private static byte[] withFront() {
        return TestTables.bytes(WorkbookFile.of(List.of(FRONT), List.of("About"), List.of(TestTables.hostile())));
    }

    @Test
    void aFormulaBringsItsValueAndTextsStayTexts() throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(withFront()))) {
            List<Row> rows = book.getFirstSheet().read();
            assertThat(rows.get(0).getCell(0).getType()).isEqualTo(CellType.STRING);
            assertThat(rows.get(0).getCellText(0)).isEqualTo("=1+1 & <b>");
            assertThat(rows.get(22).getCell(0).getFormula()).isEqualTo("'Front'!$A$22*7");
            assertThat(rows.get(22).getCell(0).getRawValue()).isEqualTo("42.0");
            assertThat(rows.get(23).getCell(2).getFormula()).isEqualTo("IF(A22<7,1,0)");
        }
    }

    @Test
    void aChartDrawsCellsAndHoldsWhatTheyHold() throws Exception {
        byte[] book = withFront();
        for (String part : List.of(
                "[Content_Types].xml",
                "xl/worksheets/sheet1.xml",
                "xl/worksheets/_rels/sheet1.xml.rels",
                "xl/drawings/drawing1.xml",
                "xl/drawings/_rels/drawing1.xml.rels",
                "xl/charts/chart1.xml")) {
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(entry(book, part).getBytes(StandardCharsets.UTF_8)));
        }
        assertThat(entry(book, "xl/charts/chart1.xml"))
                .contains("<c:f>'Front'!$A$23:$A$23</c:f>", "<c:v>42.0</c:v>", "&lt;name&gt; &amp; so on");
        assertThat(entry(book, "[Content_Types].xml")).contains("/xl/charts/chart1.xml", "/xl/drawings/drawing1.xml");
    }

    /** The library keeps merged cells in a set without an order of its own. */
    @Test
    void sheetsWithMergedCellsGiveTheSameBytes() {
        assertThat(withFront()).isEqualTo(withFront());
    }

    private static String entry(String name) throws IOException {
        return entry(workbook(), name);
    }

    private static String entry(byte[] book, String name) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        throw new AssertionError("no entry " + name);
    }
}
