package weatherlap.reports.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import weatherlap.datasets.jobs.TemplateJobs;
import weatherlap.datasets.portfolio.TemplatePortfolio;
import weatherlap.datasets.workbook.SheetNames;

/**
 * A workbook written by hand, cell by cell, so that it may be as odd as workbooks are. A cell is text, unless it is a number or begins with
 * {@code n:} (number), {@code day:} (number formatted as a day), {@code bool:}, {@code err:}, {@code f:} (formula without a value) or {@code
 * v:} (formula of the value that follows).
 */
final class MadeWorkbook {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    final Map<String, TreeMap<Integer, TreeMap<Integer, String>>> sheets = new LinkedHashMap<>();
    final List<String> hidden = new ArrayList<>();
    boolean from1904;

    /** The tables of the template. */
    static MadeWorkbook template() {
        MadeWorkbook made = new MadeWorkbook();
        made.table("Houses", TemplatePortfolio.bytes("houses.csv"));
        made.table("Walls", TemplatePortfolio.bytes("elevations.csv"));
        made.table("Windows", TemplatePortfolio.bytes("openings.csv"));
        return made;
    }

    /** The cells of a workbook that is there. */
    static MadeWorkbook of(Path workbook) throws IOException {
        MadeWorkbook made = new MadeWorkbook();
        try (ReadableWorkbook read = new ReadableWorkbook(workbook.toFile())) {
            for (Sheet sheet : read.getSheets().toList()) {
                for (Row row : sheet.read()) {
                    row.stream().filter(Objects::nonNull).forEach(cell -> {
                        boolean number = cell.getType() == CellType.NUMBER;
                        String text = cell.getRawValue().split("\n")[0];
                        made.put(
                                sheet.getName(), row.getRowNum(), cell.getColumnIndex(), (number ? "n:" : "t:") + text);
                    });
                }
            }
        }
        return made;
    }

    MadeWorkbook withRecords() {
        table("Jobs", TemplateJobs.bytes("jobs.csv"));
        table("Callbacks", TemplateJobs.bytes("callbacks.csv"));
        return this;
    }

    /** Nothing but a short table of two windows. */
    void onlyShort(String sheet) {
        sheets.clear();
        table(
                sheet,
                ("house,wall faces,window,width,height,opens,frame,siding\nA,S,1,t:35-1/2,59.5,DH,alum,vinyl\n"
                                + "A,SW,2,30,t:4',slider,Vinyl,vinyl\n")
                        .getBytes(StandardCharsets.UTF_8));
    }

    private void table(String sheet, byte[] csv) {
        int row = 1;
        for (String line : new String(csv, StandardCharsets.UTF_8).split("\n")) {
            String[] cells = line.split(",", -1);
            for (int c = 0; c < cells.length; c++) {
                put(sheet, row, c, cells[c]);
            }
            row++;
        }
    }

    void put(String sheet, int row, int column, String value) {
        TreeMap<Integer, String> cells =
                sheets.computeIfAbsent(sheet, s -> new TreeMap<>()).computeIfAbsent(row, r -> new TreeMap<>());
        if (value.isEmpty()) {
            cells.remove(column);
        } else {
            cells.put(column, value);
        }
    }

    /** The row of a sheet whose first cell is a text. */
    int row(String sheet, String first) {
        return sheets.get(sheet).entrySet().stream()
                .filter(row -> row.getValue().getOrDefault(0, "").equals("t:" + first))
                .mapToInt(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new AssertionError(sheet + " has no row " + first));
    }

    /** The position of a column by its heading. */
    int column(String sheet, String heading) {
        return sheets.get(sheet).firstEntry().getValue().entrySet().stream()
                .filter(e -> e.getValue().replace("t:", "").equals(heading))
                .mapToInt(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new AssertionError(sheet + " has no " + heading));
    }

    /** All rows from one on moved down. */
    void down(String sheet, int from, int by) {
        TreeMap<Integer, TreeMap<Integer, String>> moved = new TreeMap<>();
        sheets.get(sheet).forEach((row, cells) -> moved.put(row < from ? row : row + by, cells));
        sheets.put(sheet, moved);
    }

    Path write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            parts().forEach((name, text) -> put(zip, name, text));
        }
        return file;
    }

    static void put(ZipOutputStream zip, String name, String text) {
        try {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The parts of the package by their names. */
    Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        StringBuilder list = new StringBuilder();
        StringBuilder relations = new StringBuilder();
        StringBuilder types = new StringBuilder();
        int n = 1;
        for (var sheet : sheets.entrySet()) {
            list.append("<sheet name=\"" + sheet.getKey() + "\" sheetId=\"" + n + "\" r:id=\"rId" + n + "\""
                    + (hidden.contains(sheet.getKey()) ? " state=\"hidden\"" : "") + "/>");
            relations.append("<Relationship Id=\"rId" + n + "\" Type=\"" + RELATIONS
                    + "/worksheet\" Target=\"worksheets/sheet" + n + ".xml\"/>");
            types.append(
                    "<Override PartName=\"/xl/worksheets/sheet" + n
                            + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>");
            parts.put("xl/worksheets/sheet" + n + ".xml", sheet(sheet.getValue()));
            n++;
        }
        relations.append("<Relationship Id=\"rId" + n + "\" Type=\"" + RELATIONS + "/styles\" Target=\"styles.xml\"/>");
        parts.put(
                "[Content_Types].xml",
                "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\""
                        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Override PartName=\"/xl/workbook.xml\""
                        + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                        + "<Override PartName=\"/xl/styles.xml\""
                        + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>"
                        + types
                        + "</Types>");
        parts.put(
                "_rels/.rels",
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\""
                        + RELATIONS + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        parts.put(
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + relations
                        + "</Relationships>");
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><workbookPr"
                        + (from1904 ? " date1904=\"1\"" : "") + "/><sheets>" + list + "</sheets></workbook>");
        parts.put(
                "xl/styles.xml",
                "<styleSheet xmlns=\"" + MAIN
                        + "\"><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
        return parts;
    }

    private static String sheet(TreeMap<Integer, TreeMap<Integer, String>> rows) {
        return "<worksheet xmlns=\"" + MAIN + "\"><sheetData>"
                + rows.entrySet().stream()
                        .map(row -> "<row r=\"" + row.getKey() + "\">"
                                + row.getValue().entrySet().stream()
                                        .map(cell ->
                                                cell(SheetNames.letters(cell.getKey()) + row.getKey(), cell.getValue()))
                                        .collect(Collectors.joining())
                                + "</row>")
                        .collect(Collectors.joining())
                + "</sheetData></worksheet>";
    }

    private static String cell(String at, String value) {
        String open = "<c r=\"" + at + "\"";
        if (value.startsWith("day:")) {
            return open + " s=\"1\"><v>" + value.substring(4) + "</v></c>";
        }
        if (value.startsWith("bool:")) {
            return open + " t=\"b\"><v>" + value.substring(5) + "</v></c>";
        }
        if (value.startsWith("err:")) {
            return open + " t=\"e\"><v>" + value.substring(4) + "</v></c>";
        }
        if (value.startsWith("f:")) {
            return open + "><f>" + value.substring(2) + "</f></c>";
        }
        if (value.startsWith("v:")) {
            return open + "><f>A1+A2</f><v>" + value.substring(2) + "</v></c>";
        }
        if (value.startsWith("n:") || value.matches("-?[0-9]+(\\.[0-9]+)?")) {
            return open + "><v>" + value.replace("n:", "") + "</v></c>";
        }
        String text = value.replace("t:", "")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("\\n", "\n");
        return open + " t=\"inlineStr\"><is><t xml:space=\"preserve\">" + text + "</t></is></c>";
    }
}
