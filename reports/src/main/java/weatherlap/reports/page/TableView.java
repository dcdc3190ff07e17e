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
 */
public record TableView(String caption, List<String> heads, List<Boolean> numbers, List<List<String>> rows) {
    public TableView {
        heads = List.copyOf(heads);
        numbers = List.copyOf(numbers);
        rows = List.copyOf(rows);
        int columns = heads.size();
        if (numbers.size() != columns || rows.stream().anyMatch(row -> row.size() != columns)) {
            throw new IllegalArgumentException(
                    "The table \"" + caption + "\" must have a cell for each heading in each row.");
        }
    }

    public static Builder of(String caption) {
        return new Builder(caption);
    }

    /** Collects headings, then rows. */
    public static final class Builder {
        private final String caption;
        private final List<String> heads = new ArrayList<>();
        private final List<Boolean> numbers = new ArrayList<>();
        private final List<List<String>> rows = new ArrayList<>();

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
            return this;
        }

        public TableView build() {
            return new TableView(caption, heads, numbers, rows);
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
