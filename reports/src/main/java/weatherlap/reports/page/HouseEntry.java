package weatherlap.reports.page;

/**
 * A house in the index of a report.
 *
 * @param id key
 * @param label what people call it
 * @param anchor of its rows in the page; letters and digits
 * @param words what the search looks through, in small letters
 * @param keys what the list is sorted and filtered by
 * @param facts year, cladding and the like, in a line
 * @param gains who gains how much by which method, in a line
 * @param plan the method to take, as text
 * @param houseTable both methods side by side
 * @param openings each opening, both methods
 */
public record HouseEntry(
        String id,
        String label,
        String anchor,
        String words,
        Keys keys,
        String facts,
        String gains,
        String plan,
        TableView houseTable,
        TableView openings) {
    /**
     * What a list of houses is sorted and filtered by.
     *
     * @param plan the method to take, in a word
     * @param gains who gains by which method
     * @param familyUsd what the family gains by its better method, USD
     * @param shopUsd what a crew day earns the shop more by its better method, USD
     */
    public record Keys(
            String cladding, String stories, String plan, String gains, int year, double familyUsd, double shopUsd) {}
}
