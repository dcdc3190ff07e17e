package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.tables.Segmentation;
import weatherlap.analysis.tables.Segments;
import weatherlap.analysis.tables.Share;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;

/** The comparison by segment, as tables of a page. */
final class SegmentViews {
    private SegmentViews() {}

    static List<TableView> of(Segments segments) {
        List<TableView> views = new ArrayList<>();
        segments.bySegment().forEach((segmentation, shares) -> views.add(view(segmentation, shares, segments.whole())));
        return views;
    }

    private static TableView view(Segmentation segmentation, List<Share> shares, Share whole) {
        String first = whole.contrast().first().label();
        String second = whole.contrast().second().label();
        TableView.Builder table = TableView.of("By " + segmentation.title()
                        + ": means of an opening; cost difference is " + first + " less " + second
                        + ", so a minus favors "
                        + first)
                .texts(segmentation.title())
                .numbers(
                        "houses",
                        "openings",
                        "glass lost, " + first,
                        "glass lost, " + second,
                        "labor at the opening, " + first + " (person-min)",
                        "labor, " + second,
                        "leak chance, " + first,
                        "leak chance, " + second,
                        "cost difference over the years (USD)",
                        "houses for " + first);
        shares.forEach(share -> add(table, share));
        add(table, whole);
        return table.build();
    }

    private static void add(TableView.Builder table, Share share) {
        Share.Totals full = share.of(share.contrast().first());
        Share.Totals insert = share.of(share.contrast().second());
        double n = share.openings();
        table.row(
                share.label(),
                ReportWords.number(share.houses(), 0),
                ReportWords.number(share.openings(), 0),
                ReportWords.percent(full.glassLostPct() / 100, 1),
                ReportWords.percent(insert.glassLostPct() / 100, 1),
                ReportWords.number(full.labourMinutes() / n, 0),
                ReportWords.number(insert.labourMinutes() / n, 0),
                ReportWords.percent(full.leakScores() / n / 100, 1),
                ReportWords.percent(insert.leakScores() / n / 100, 1),
                Numbers.signedUsd(share.differencePerOpeningUsd()),
                ReportWords.number(share.housesForFirst(), 0));
    }
}
