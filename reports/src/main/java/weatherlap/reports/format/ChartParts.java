package weatherlap.reports.format;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The parts of a workbook that the library which writes it does not know: charts, the drawings that hold them, and the values that formulas
 * have. Merged cells, which it lists in an order of chance, are put in one.
 *
 * @see "ISO/IEC 29500-1:2016, 12.3.8 drawings part, 14.2.1 chart part, 18.3.1.40 formula, 18.3.1.96 value, 21.2 DrawingML charts"
 */
final class ChartParts {
    private static final String DOCUMENT = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String TYPES = "[Content_Types].xml";
    private static final Pattern FORMULA = Pattern.compile("<c r=\"([A-Z]+[0-9]+)\"[^>]*><f>[^<]*</f>(?=</c>)");

    private static final Pattern MERGED = Pattern.compile("(<mergeCell ref=\"[A-Z0-9:]+\"(/>|></mergeCell>))+");

    private final SortedMap<String, byte[]> parts;
    private int charts;
    private int drawings;

    ChartParts(SortedMap<String, byte[]> parts) {
        this.parts = parts;
    }

    /** @param number of the sheet, from 1 */
    void add(int number, CellSheet sheet) {
        String part = "xl/worksheets/sheet" + number + ".xml";
        String xml = inOrder(withValues(text(part), sheet.asRun()));
        if (!sheet.charts().isEmpty()) {
            String relations = "xl/worksheets/_rels/sheet" + number + ".xml.rels";
            if (parts.containsKey(relations)) {
                throw new IllegalStateException("a sheet with charts has no notes: " + part);
            }
            put(relations, relations("drawing", List.of("../" + drawing(sheet.charts()))));
            xml = xml.replace("</worksheet>", "<drawing xmlns:r=\"" + DOCUMENT + "\" r:id=\"rId1\"/></worksheet>");
        }
        put(part, xml);
    }

    private static String withValues(String sheet, Map<String, String> values) {
        return FORMULA.matcher(sheet)
                .replaceAll(formula ->
                        Matcher.quoteReplacement(formula.group() + "<v>" + values.get(formula.group(1)) + "</v>"));
    }

    private static String inOrder(String sheet) {
        return MERGED.matcher(sheet)
                .replaceFirst(all -> Arrays.stream(all.group().split("(?=<)"))
                        .filter(tag -> tag.startsWith("<mergeCell "))
                        .sorted()
                        .collect(Collectors.joining()));
    }

    private String drawing(List<PlacedChart> placed) {
        List<String> drawn = new ArrayList<>();
        for (PlacedChart one : placed) {
            String chart = "charts/chart" + ++charts + ".xml";
            drawn.add("../" + chart);
            put("xl/" + chart, HEAD + Html.render("workbookchart.jte", one.chart()));
            declare("/xl/" + chart, "drawingml.chart+xml");
        }
        String name = "drawing" + ++drawings + ".xml";
        put("xl/drawings/" + name, HEAD + Html.render("workbookdrawing.jte", placed));
        put("xl/drawings/_rels/" + name + ".rels", relations("chart", drawn));
        declare("/xl/drawings/" + name, "drawing+xml");
        return "drawings/" + name;
    }

    private static String relations(String type, List<String> targets) {
        StringBuilder all = new StringBuilder(HEAD)
                .append("<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
        for (int i = 0; i < targets.size(); i++) {
            all.append("<Relationship Id=\"rId" + (i + 1) + "\" Type=\"" + DOCUMENT + "/" + type + "\" Target=\""
                    + targets.get(i) + "\"/>");
        }
        return all.append("</Relationships>").toString();
    }

    private void declare(String part, String type) {
        String override = "<Override PartName=\"" + part + "\" ContentType=\"" + TYPE + type + "\"/>";
        put(TYPES, text(TYPES).replace("</Types>", override + "</Types>"));
    }

    private String text(String part) {
        return new String(parts.get(part), StandardCharsets.UTF_8);
    }

    private void put(String part, String xml) {
        parts.put(part, xml.getBytes(StandardCharsets.UTF_8));
    }
}
