package weatherlap.reports.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What a run wrote, for tests that look through all of it. */
final class Outputs {
    private Outputs() {}

    /** Every file by its path from the folder, sorted. */
    static SortedMap<String, Path> files(Path folder) throws IOException {
        SortedMap<String, Path> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isRegularFile)
                    .forEach(file -> files.put(folder.relativize(file).toString(), file));
        }
        return files;
    }

    /** What people and programs read in a file: the text of a sheet, the parts of a workbook, else the file itself. */
    static String text(Path file) throws IOException {
        String name = file.getFileName().toString();
        if (name.endsWith(".pdf")) {
            try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                return new PDFTextStripper().getText(pdf);
            }
        }
        return name.endsWith(".xlsx") ? workbook(file) : Files.readString(file);
    }

    private static String workbook(Path file) throws IOException {
        StringBuilder parts = new StringBuilder();
        try (InputStream in = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8))
                        .append('\n');
            }
        }
        return parts.toString();
    }

    /** The page without its document type, as a parser of XML sees it; entities and document types are refused. */
    static Document parsed(Path page) throws Exception {
        String xml = Files.readString(page).replaceFirst("<!DOCTYPE html>", "");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        int script = xml.indexOf("<script>");
        String still =
                script < 0 ? xml : xml.substring(0, script) + xml.substring(xml.indexOf("</script>", script) + 9);
        return factory.newDocumentBuilder()
                .parse(new java.io.ByteArrayInputStream(still.getBytes(StandardCharsets.UTF_8)));
    }

    /** Elements and attributes that run something or fetch something from elsewhere. */
    static List<String> active(Document page) {
        List<String> active = new ArrayList<>();
        NodeList elements = page.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            if (element.getAttribute("type").equals("application/json")) {
                continue; // a block of data, which no browser runs
            }
            if (element.getTagName().matches("(?i)script|iframe|object|embed|foreignObject|base|form|meta:refresh")) {
                active.add("<" + element.getTagName() + ">");
            }
            for (int j = 0; j < element.getAttributes().getLength(); j++) {
                String name = element.getAttributes().item(j).getNodeName();
                String value = element.getAttributes().item(j).getNodeValue();
                boolean leadsOut = name.matches("(?i)(xlink:)?href|src|action|srcset|poster")
                        && !value.startsWith("#")
                        && !value.startsWith("data:image/");
                if (name.toLowerCase(java.util.Locale.ROOT).startsWith("on")
                        || leadsOut
                        || value.contains("url(http")) {
                    active.add(element.getTagName() + " " + name + "=" + value);
                }
            }
        }
        return active;
    }

    /** Rows of a table that a command wrote, as cells. */
    static List<List<String>> rows(Path csv) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : Files.readString(csv).toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
                cell.append(c);
            } else if (!quoted && (c == ',' || c == '\n')) {
                String text = cell.toString();
                row.add(
                        text.startsWith("\"")
                                ? text.substring(1, text.length() - 1).replace("\"\"", "\"")
                                : text);
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        return rows;
    }
}
