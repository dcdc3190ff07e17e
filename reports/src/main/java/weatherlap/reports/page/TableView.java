package weatherlap.reports.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as a page shows it. The first cell of a row names it.
 *
 * @param caption what it holds
 * @param heads column headings
 * @param numbers for each column, whether it holds numbers
 * @param rows texts
 * @param marks for each row, its name within the page and where its first cell leads
 */
public record TableView(
        String caption, List<String> heads, List<Boolean> numbers, List<List<String>> rows, List<Mark> marks) {
    /**
     * How a row is found and where it leads.
     *
     * @param id name within the page; empty: none
     * @param link to a name within the page; empty: none
     */
    public record Mark(String id, String link) {
        static final Mark NONE = new Mark("", "");
    }

    public TableView {
        heads = List.copyOf(heads);
        numbers = List.copyOf(numbers);
        rows = List.copyOf(rows);
        marks = List.copyOf(marks);
        int columns = heads.size();
        if (numbers.size() != columns || rows.stream().anyMatch(row -> row.size() != columns)) {
            throw new IllegalArgumentException(
                    "The table \"" + caption + "\" must have a cell for each heading in each row.");
        }
    }

    public static Builder of(String caption) {
        return new Builder(caption);
    }

    /**
     * Itself in parts of at most so many rows, the first rows first.
     *
     * @param most 1 or more
     */
    public List<TableView> parts(int most) {
        List<TableView> parts = new ArrayList<>();
        for (int from = 0; from < rows.size(); from += most) {
            int to = Math.min(rows.size(), from + most);
            parts.add(new TableView(caption, heads, numbers, rows.subList(from, to), marks.subList(from, to)));
        }
        return parts;
    }

    /** Collects headings, then rows. */
    public static final class Builder {
        private final String caption;
        private final List<String> heads = new ArrayList<>();
        private final List<Boolean> numbers = new ArrayList<>();
        private final List<List<String>> rows = new ArrayList<>();
        private final List<Mark> marks = new ArrayList<>();

        private Builder(String caption) {
            this.caption = caption;
        }

        public Builder texts(String... titles) {
            return columns(false, titles);
        }

        public Builder numbers(String... titles) {
            return columns(true, titles);
        }

        public Builder row(String... cells) {
            rows.add(List.of(cells));
            marks.add(Mark.NONE);
            return this;
        }

        /** Names the last row. */
        public Builder named(String id) {
            Mark last = marks.get(marks.size() - 1);
            marks.set(marks.size() - 1, new Mark(id, last.link()));
            return this;
        }

        /** Lets the first cell of the last row lead to a name within the page. */
        public Builder leadsTo(String id) {
            Mark last = marks.get(marks.size() - 1);
            marks.set(marks.size() - 1, new Mark(last.id(), id));
            return this;
        }

        public TableView build() {
            return new TableView(caption, heads, numbers, rows, marks);
        }

        private Builder columns(boolean number, String... titles) {
            for (String title : titles) {
                heads.add(title);
                numbers.add(number);
            }
            return this;
        }
    }
}
