package weatherlap.reports.handout;

import java.util.stream.Stream;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.page.Paper;

/** The printed sheet of a handout, on two pages. */
public final class TwoPages {
    private static final int PAGES = 2;

    private TwoPages() {}

    /** The roomiest layout that keeps to its pages. */
    public static Content of(HandoutMaker handout, Paper paper) {
        return Pdf.fitting(handout.title(), () -> layouts(handout, paper).iterator(), PAGES);
    }

    private static Stream<String> layouts(HandoutMaker handout, Paper paper) {
        return handout.sheets(paper).map(layout -> Html.render("handoutsheet.jte", layout));
    }
}
