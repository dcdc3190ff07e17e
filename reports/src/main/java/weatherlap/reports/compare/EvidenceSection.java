package weatherlap.reports.compare;

import java.util.List;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.Section;

/** The pictures, in the order of the argument. */
final class EvidenceSection {
    private EvidenceSection() {}

    static Section of(CompareReport report) {
        List<Figure> figures = new ReportPictures(
                        report.comparison().results(),
                        report.decision(),
                        report.comparison().segments(),
                        report.assumptions().steps(),
                        report.years(),
                        report.simulator()::costUsd)
                .all(!report.climate().anyBearing());
        return new Section(
                "evidence",
                "The evidence",
                "Evidence",
                Section.Sheet.PLAIN,
                figures.stream().<Block>map(Block.Picture::new).toList());
    }
}
