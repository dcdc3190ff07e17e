package weatherlap.reports.handout;

import java.util.List;
import java.util.function.Supplier;
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
        List<Density> ladder = handout.ladder();
        return Pdf.fitting(
                handout.title(),
                ladder.stream()
                        .<Supplier<String>>map(density -> () -> page(handout, paper, density))
                        .toList(),
                Density.likely(ladder),
                PAGES);
    }

    private static String page(HandoutMaker handout, Paper paper, Density density) {
        return Html.render("handoutsheet.jte", handout.sheet(paper, density));
    }
}
