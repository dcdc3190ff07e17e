package weatherlap.reports.page;

import java.util.LinkedHashMap;
import java.util.Map;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;

/** The files of a page, by name. */
public final class PageFiles {
    private PageFiles() {}

    /** The pictures, the page, and the same printed. */
    public static Map<String, Content> of(String name, ReportPage page) {
        Map<String, Content> files = web(name, page);
        files.put(name + ".pdf", Pdf.of(page.title(), Html.render("reportsheet.jte", page)));
        return files;
    }

    /** The pictures and the page. */
    public static Map<String, Content> web(String name, ReportPage page) {
        Map<String, Content> files = new LinkedHashMap<>();
        page.figures().forEach(figure -> files.put("charts/" + figure.name() + ".svg", Content.svg(figure.svg())));
        files.put(name + ".html", Html.file("report.jte", page));
        return files;
    }
}
