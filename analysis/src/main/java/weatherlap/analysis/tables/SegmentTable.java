package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.columns.Layout;
import weatherlap.sim.method.Method;

/** The segments of a portfolio; in the workbook and {@code summary.json} only. */
public final class SegmentTable {
    public static final Layout<Row> LAYOUT = Layout.<Row>of(
                    "segments", "Segments", "One segment and method, means of an opening.")
            .text("kind", "told apart by", "portfolio, or what openings are told apart by", Row::kind)
            .text("segment", "segment", "what its openings have in common", row -> row.share()
                    .label())
            .method(Row::method)
            .whole("houses", "houses", "houses with at least one of its openings", row -> row.share()
                    .houses())
            .whole("openings", "openings", "how many", row -> row.share().openings())
            .glassLostShare(row -> row.totals().glassLostPct())
            .number(
                    "labour_minutes_mean",
                    "labor, mean",
                    "person-min",
                    1,
                    "labor at the opening and its share of its wall",
                    row -> row.totals().labourMinutes() / row.share().openings())
            .drivingRain(
                    "wind-driven rain on the opening",
                    row -> row.totals().drivingRain() / row.share().openings())
            .leakScore(
                    "chance of leak damage at the opening within the years looked at, in percent",
                    row -> row.totals().leakScores() / row.share().openings())
            .number(
                    "horizon_cost_usd_mean",
                    "cost over the years, mean",
                    "USD",
                    2,
                    "its share of its house's cost over the years",
                    row -> row.totals().horizonCostUsd() / row.share().openings())
            .whole(
                    "houses_for_full_flange",
                    "houses for the first, earlier name",
                    "the same as houses_for_first, by its earlier name",
                    row -> row.share().housesForFirst())
            .whole(
                    "houses_for_first",
                    "houses for the first",
                    "houses of these with the lower expected cost over the years under the first of the two methods",
                    row -> row.share().housesForFirst())
            .build();

    /** @param kind what the segment is told apart by */
    private record Row(String kind, Share share, Method method) {
        Share.Totals totals() {
            return share.of(method);
        }
    }

    private SegmentTable() {}

    /** One row a segment and method, the whole portfolio first. */
    static ResultTable of(Segments segments) {
        List<Row> rows = new ArrayList<>();
        add(rows, "portfolio", segments.whole());
        segments.bySegment()
                .forEach((segmentation, shares) -> shares.forEach(share -> add(rows, segmentation.title(), share)));
        return ResultTable.of(LAYOUT, rows);
    }

    private static void add(List<Row> rows, String kind, Share share) {
        for (Method method : share.contrast().both()) {
            rows.add(new Row(kind, share, method));
        }
    }
}
