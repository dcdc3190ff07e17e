package weatherlap.reports.offer;

import java.util.List;

/**
 * The choices side by side, a box each.
 *
 * @param heads one a choice
 * @param lines what is told of each
 * @param notes below the boxes
 */
public record OfferTable(List<Head> heads, List<Line> lines, List<String> notes) {
    public OfferTable {
        heads = List.copyOf(heads);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    /**
     * The head of a box.
     *
     * @param style of the method that does it all; empty where several do
     * @param badge that it is what the shop advises, or the family's own; empty: neither
     */
    public record Head(String title, String style, String badge) {}

    /**
     * One thing told of every choice.
     *
     * @param kind for its look: price, text, warning or initials
     * @param cells one a choice
     */
    public record Line(String label, String kind, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }
}
