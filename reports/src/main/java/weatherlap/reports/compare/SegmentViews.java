package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.tables.Segmentation;
import weatherlap.analysis.tables.Segments;
import weatherlap.analysis.tables.Share;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/** The comparison by segment, as tables of a page. */
final class SegmentViews {
    private SegmentViews() {}

    static List<TableView> of(Segments segments) {
        List<TableView> views = new ArrayList<>();
        segments.bySegment().forEach((segmentation, shares) -> views.add(view(segmentation, shares, segments.whole())));
        return views;
    }

    private static TableView view(Segmentation segmentation, List<Share> shares, Share whole) {
        TableView.Builder table = TableView.of(
                        "By " + segmentation.title()
                                + ": means of an opening; cost difference is full-flange less insert, so a minus favours full-flange")
                .texts(segmentation.title())
                .numbers(
                        "houses",
                        "openings",
                        "glass lost, full-flange",
                        "glass lost, insert",
                        "labour at the opening, full-flange (person-min)",
                        "labour, insert",
                        "leak chance, full-flange",
                        "leak chance, insert",
                        "cost difference over the horizon (USD)",
                        "houses for full-flange");
        shares.forEach(share -> add(table, share));
        add(table, whole);
        return table.build();
    }

    private static void add(TableView.Builder table, Share share) {
        Share.Totals full = share.of(Method.FULL_FLANGE);
        Share.Totals insert = share.of(Method.INSERT);
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
                ReportWords.number(share.housesForFullFlange(), 0));
    }
}
