package weatherlap.analysis.columns;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weatherlap.sim.Check;

/**
 * The columns of one result table, in order.
 *
 * @param file its CSV
 * @param title of its sheet in the workbook, at most 31 characters
 * @param meaning what one row is
 */
public record Schema(String file, String title, String meaning, List<Column> columns) {
    public Schema {
        Check.text("file", file);
        Check.within("length of the sheet title", title.length(), 1, 31);
        columns = List.copyOf(columns);
        Set<String> names = new HashSet<>();
        for (Column column : columns) {
            if (!names.add(column.name())) {
                throw new IllegalArgumentException("The column " + column.name() + " stands twice in " + file + ".");
            }
        }
    }

    /** @throws IllegalArgumentException when there is no such column */
    public Column column(String name) {
        return columns.stream()
                .filter(column -> column.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(file + " has no column " + name));
    }

    public List<String> names() {
        return columns.stream().map(Column::name).toList();
    }
}
