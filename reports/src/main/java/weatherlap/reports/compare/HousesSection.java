package weatherlap.reports.compare;

import java.util.List;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Section;

/** The houses, to be searched on screen. */
final class HousesSection {
    private HousesSection() {}

    static Section of(CompareReport report) {
        HouseViews houses = new HouseViews(report.years(), report.simulator()::look);
        return new Section(
                "houses",
                "House by house",
                "Houses",
                Section.Sheet.WIDE_NEW_PAGE,
                List.of(new Block.Houses(
                        houses.entries(report.comparison().shown()),
                        houses.summary(report.comparison().shown()))));
    }
}
