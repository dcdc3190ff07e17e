package weatherlap.reports.page;

import java.util.List;

/**
 * A page that lists the sheets of a portfolio.
 *
 * @param title what they are
 * @param scope what they were made of, a line
 */
public record SheetIndex(String title, String scope, List<Entry> entries) {
    public SheetIndex {
        entries = List.copyOf(entries);
    }

    /**
     * A house.
     *
     * @param id its key, untrusted text
     * @param label untrusted text
     * @param sheet path of its sheet without the ending; empty where it has none
     * @param remark why it has none, or what there is to know of it; may be empty
     */
    public record Entry(String id, String label, int windows, String sheet, String remark) {}
}
