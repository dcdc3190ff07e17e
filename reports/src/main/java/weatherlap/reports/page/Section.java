package weatherlap.reports.page;

import java.util.List;

/**
 * A part of the report, on screen and on paper alike.
 *
 * @param id its name within the page; small letters
 * @param title its heading
 * @param shortTitle as the list of parts at the top has it
 * @param sheet how it stands on paper
 */
public record Section(String id, String title, String shortTitle, Sheet sheet, List<Block> blocks) {
    /** How a section stands on paper. */
    public enum Sheet {
        /** Follows the title of the document, without a heading of its own. */
        FIRST(false, "", ""),
        /** On a page of its own after the first. */
        SECOND(true, "", "new-page"),
        PLAIN(true, "", ""),
        /** On pages laid crosswise. */
        WIDE(true, "wide", ""),
        /** Crosswise, and on a page of its own. */
        WIDE_NEW_PAGE(true, "wide", "new-page");

        private final boolean heading;
        private final String part;
        private final String style;

        Sheet(boolean heading, String part, String style) {
            this.heading = heading;
            this.part = part;
            this.style = style;
        }

        public boolean hasHeading() {
            return heading;
        }

        /** Class of what holds the section. */
        public String part() {
            return part;
        }

        /** Class of its heading. */
        public String style() {
            return style;
        }
    }

    public Section {
        blocks = List.copyOf(blocks);
    }

    /** That a page opens with. */
    public static Section answer(List<Block> blocks) {
        return new Section("answer", "The answer", "Answer", Sheet.FIRST, blocks);
    }

    /** That follows what stands before it. */
    public static Section plain(String id, String title, String shortTitle, List<Block> blocks) {
        return new Section(id, title, shortTitle, Sheet.PLAIN, blocks);
    }
}
