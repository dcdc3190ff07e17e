package weatherlap.reports.page;

import java.util.List;
import java.util.stream.Stream;

/**
 * The owner's report.
 *
 * @param title of the document
 * @param scope what was compared, in a line
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record ReportPage(String title, String scope, String notPrinted, List<Section> sections) {
    public ReportPage {
        sections = List.copyOf(sections);
    }

    /** All pictures, in the order of the argument. */
    public Stream<Figure> figures() {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .flatMap(block -> block instanceof Block.Picture picture
                        ? Stream.of(picture.figure())
                        : block instanceof Block.Dots dots ? Stream.of(dots.figure()) : Stream.empty());
    }

    /** Whether there is an index of houses to search. */
    public boolean hasHouses() {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .anyMatch(block -> block instanceof Block.Houses);
    }
}
