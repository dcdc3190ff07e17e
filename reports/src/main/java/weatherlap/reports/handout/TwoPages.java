package weatherlap.reports.handout;

import weatherlap.reports.output.Html;
import weatherlap.reports.output.Pdf;
import weatherlap.reports.page.Paper;

/** The printed sheet of a handout, on two pages. */
public final class TwoPages {
    private static final int PAGES = 2;

    private TwoPages() {}

    /** The sheet as XHTML: the roomiest layout that keeps to its pages. */
    public static String of(HandoutMaker handout, Paper paper) {
        String sheet = "";
        for (HandoutSheet layout : handout.sheets(paper)) {
            sheet = Html.render("handoutsheet.jte", layout);
            if (Pdf.pages(sheet) <= PAGES) {
                break;
            }
        }
        return sheet;
    }
}
