package weatherlap.reports.diff;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.io.csv.CsvReadOptions;
import weatherlap.reports.format.Csv;
import weatherlap.reports.inputs.BadInput;

/**
 * Rows of a result table that a run wrote, of this version or an earlier one, all as text. A column that the table does not have is
 * empty.
 */
final class ResultRows {
    /** About half a million houses; what is longer would not fit into memory twice. */
    private static final long LONGEST = 300_000_000;

    private static final String METHOD = "method";
    private static final String HOUSE = "house_id";

    private final Table table;

    private ResultRows(Table table) {
        this.table = table;
    }

    /** @throws BadInput if the file is missing, too long, or no such table */
    static ResultRows read(Path csv) throws IOException {
        if (!Files.isRegularFile(csv)) {
            throw new BadInput(List.of(csv + ": is missing"));
        }
        if (Files.size(csv) > LONGEST) {
            throw new BadInput(List.of(csv + ": is too long to compare (more than 300 MB)"));
        }
        try {
            CsvReadOptions options = CsvReadOptions.builder(new StringReader(Files.readString(csv)))
                    .columnTypes(name -> ColumnType.STRING)
                    .missingValueIndicator("")
                    .build();
            return new ResultRows(Table.read().usingOptions(options));
        } catch (RuntimeException | java.nio.charset.CharacterCodingException e) {
            throw new BadInput(List.of(csv + ": is not a table of results (" + e.getMessage() + ")"));
        }
    }

    /** Numbers of the rows, from 0. */
    Stream<Integer> rows() {
        return IntStream.range(0, table.rowCount()).boxed();
    }

    String text(int row, String column) {
        return table.containsColumn(column)
                ? Csv.undefused(table.stringColumn(column).get(row))
                : "";
    }

    /** Empty where the cell holds no number. */
    OptionalDouble number(int row, String column) {
        try {
            String cell = text(row, column);
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** Houses that have a row of a method. */
    Set<String> houses(String method) {
        return rows().filter(row -> text(row, METHOD).equals(method))
                .map(row -> text(row, HOUSE))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Mean of a column over the rows of a method of some houses; empty where none holds a number. */
    OptionalDouble mean(String column, String method, Set<String> houses) {
        return rows().filter(row -> text(row, METHOD).equals(method) && houses.contains(text(row, HOUSE)))
                .map(row -> number(row, column))
                .flatMapToDouble(OptionalDouble::stream)
                .average();
    }
}
