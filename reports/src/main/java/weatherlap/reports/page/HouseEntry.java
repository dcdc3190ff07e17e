package weatherlap.reports.page;

/**
 * A house in the index of a report.
 *
 * @param id key
 * @param label what people call it
 * @param anchor of its rows in the page; letters and digits
 * @param words what the search looks through, in small letters
 * @param facts year, cladding and the like, in a line
 * @param plan the method to take, as text
 * @param houseTable both methods side by side
 * @param openings each opening, both methods
 */
public record HouseEntry(
        String id,
        String label,
        String anchor,
        String words,
        String facts,
        String plan,
        TableView houseTable,
        TableView openings) {}
