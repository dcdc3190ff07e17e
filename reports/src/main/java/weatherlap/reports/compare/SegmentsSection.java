package weatherlap.reports.compare;

import weatherlap.reports.page.Block;
import weatherlap.reports.page.Section;

/** A table for each way of telling openings apart. */
final class SegmentsSection {
    private SegmentsSection() {}

    static Section of(CompareReport report) {
        return new Section(
                "segments",
                "By kind of house and wall",
                "By kind",
                Section.Sheet.WIDE,
                SegmentViews.of(report.comparison().segments()).stream()
                        .<Block>map(table -> new Block.Table(table, "", "fixed"))
                        .toList());
    }
}
