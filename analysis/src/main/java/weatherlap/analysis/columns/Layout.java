package weatherlap.analysis.columns;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weatherlap.sim.Check;

/**
 * The columns of one result table, in order.
 *
 * @param <R> what a row is made from
 * @param file its CSV
 * @param title of its sheet in the workbook, at most 31 characters
 * @param meaning what one row is
 */
public record Layout<R>(String file, String title, String meaning, List<ResultColumn<R>> columns) {
    public Layout {
        Check.text("file", file);
        Check.within("length of the sheet title", title.length(), 1, 31);
        columns = List.copyOf(columns);
        Set<String> names = new HashSet<>();
        for (ResultColumn<R> column : columns) {
            if (!names.add(column.name())) {
                throw new IllegalArgumentException("The column " + column.name() + " stands twice in " + file + ".");
            }
        }
    }

    /** Begins one; {@link LayoutBuilder#build} ends it. */
    public static <R> LayoutBuilder<R> of(String file, String title, String meaning) {
        return new LayoutBuilder<>(file, title, meaning);
    }

    /** @throws IllegalArgumentException when there is no such column */
    public ResultColumn<R> column(String name) {
        return columns.stream()
                .filter(column -> column.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(file + " has no column " + name));
    }

    public List<String> names() {
        return columns.stream().map(ResultColumn::name).toList();
    }
}
