package weatherlap.reports.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The parts of a workbook that the library which writes it does not know: charts, and the drawings that hold them. Merged cells, which it
 * lists in an order of chance, are put in one.
 *
 * @see "ISO/IEC 29500-1:2016, 12.3.8 drawings part, 14.2.1 chart part, 21.2 DrawingML charts"
 */
final class ChartParts {
    private static final String DOCUMENT = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String TYPES = "[Content_Types].xml";
    private static final Pattern MERGED = Pattern.compile("(<mergeCell ref=\"[A-Z0-9:]+\"(/>|></mergeCell>))+");

    private final SortedMap<String, Content> parts;
    private int charts;
    private int drawings;

    ChartParts(SortedMap<String, Content> parts) {
        this.parts = parts;
    }

    /** @param number of the sheet, from 1 */
    void add(int number, CellSheet sheet) {
        String part = WorkbookFile.sheet(number);
        change(part, ChartParts::inOrder);
        if (!sheet.charts().isEmpty()) {
            String relations = "xl/worksheets/_rels/sheet" + number + ".xml.rels";
            if (parts.containsKey(relations)) {
                throw new IllegalStateException("a sheet with charts has no notes: " + part);
            }
            put(relations, relations("drawing", List.of("../" + drawing(sheet.charts()))));
            String drawn = "<drawing xmlns:r=\"" + DOCUMENT + "\" r:id=\"rId1\"/></worksheet>";
            change(part, xml -> xml.replace("</worksheet>", drawn));
        }
        parts.computeIfPresent(part, (name, frame) -> sheet.in(frame));
    }

    private static String inOrder(String sheet) {
        int merged = sheet.indexOf("<mergeCells");
        return merged < 0
                ? sheet
                : sheet.substring(0, merged)
                        + MERGED.matcher(sheet.substring(merged))
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
        change(TYPES, xml -> xml.replace("</Types>", override + "</Types>"));
    }

    private void change(String part, UnaryOperator<String> change) {
        parts.computeIfPresent(part, (name, content) -> content.changed(change));
    }

    private void put(String part, String xml) {
        parts.put(part, Content.of(xml));
    }
}
