package weatherlap.datasets.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Source;

/**
 * The tables of a workbook.
 *
 * @param texts CSV by file name
 * @param names how messages name them
 */
public record WorkbookTables(Map<String, String> texts, SheetNames names) {
    /** That a reader of XML begins its messages with. */
    private static final Pattern NAME_OF_A_CLASS = Pattern.compile("^([\\w.$]+(Exception|Error): )+");

    public WorkbookTables {
        texts = Map.copyOf(texts);
    }

    /** The same with the text of one more table. */
    public WorkbookTables with(String file, String text) {
        Map<String, String> more = new LinkedHashMap<>(texts);
        more.put(file, text);
        return new WorkbookTables(more, names);
    }

    /** The same with a name for one of the tables. */
    public WorkbookTables named(String file, SheetNames.Sheet sheet) {
        Map<String, SheetNames.Sheet> more = new LinkedHashMap<>(names.sheets());
        more.put(file, sheet);
        return new WorkbookTables(texts, new SheetNames(more));
    }

    /** Whether a file is called as workbooks are. */
    public static boolean isNamedSo(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Stream.of(".xlsx", ".xlsm", ".xls", ".ods").anyMatch(name::endsWith);
    }

    /** Every sheet that stands for a table; errors where the file cannot be read, or where two sheets stand for one table. */
    public static Loaded<WorkbookTables> read(Path file) {
        return read(file, Optional.empty());
    }

    /**
     * The same of a workbook that may also hold one table whose sheet goes by any name and is told by its headings.
     *
     * @param told by its header, where the workbook has no sheet for the first of all tables
     */
    public static Loaded<WorkbookTables> read(Path file, Optional<ToldTable> told) {
        String name = String.valueOf(file.getFileName());
        try {
            PackageCheck check = PackageCheck.of(file);
            if (!check.fault().isEmpty()) {
                return refused(name, check.fault());
            }
            try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile(), new ReadingOptions(true, true))) {
                return read(name, workbook, check.from1904(), told);
            }
        } catch (IOException | RuntimeException e) {
            return refused(name, "cannot be read as a workbook (" + reason(e) + "); save it again as .xlsx");
        }
    }

    /**
     * A table that is told by its header.
     *
     * @param file how it is called in a folder
     */
    public record ToldTable(String file, Predicate<Source> isHeadedSo) {}

    private static String reason(Exception e) {
        String message = e.getMessage() == null ? "it is damaged" : e.getMessage();
        return Quoted.bare(NAME_OF_A_CLASS.matcher(message).replaceFirst(""));
    }

    private static Loaded<WorkbookTables> refused(String name, String message) {
        return new Loaded<>(Optional.empty(), List.of(new Problem(name, 0, "", message)), List.of());
    }

    private static Loaded<WorkbookTables> read(
            String name, ReadableWorkbook workbook, boolean from1904, Optional<ToldTable> asked) throws IOException {
        CellText cells = new CellText(from1904);
        Map<String, String> texts = new LinkedHashMap<>();
        Map<String, SheetNames.Sheet> names = new LinkedHashMap<>();
        List<Problem> errors = new ArrayList<>();
        List<Problem> warnings = new ArrayList<>();
        List<Sheet> sheets = workbook.getSheets().toList();
        Optional<ToldTable> told = asked.filter(table -> sheets.stream()
                .noneMatch(sheet -> SheetTable.of(sheet.getName()).equals(Optional.of(SheetTable.ALL.get(0)))));
        for (Sheet sheet : sheets) {
            Optional<SheetTable> table = SheetTable.of(sheet.getName());
            if (table.isEmpty() && (told.isEmpty() || sheet.getVisibility() != SheetVisibility.VISIBLE)
                    || table.filter(SheetTable::goesWithOthers).isPresent() && !holdsAssumptions(sheets)) {
                continue;
            }
            SheetText text = new SheetText(sheet.getName(), cells);
            try (Stream<Row> rows = sheet.openStream()) {
                text.read(rows.iterator());
            }
            boolean isTold = told.isPresent()
                    && told.get().isHeadedSo().test(Source.of(told.get().file(), text.text()));
            if (table.isEmpty() && !isTold) {
                continue;
            }
            String file = isTold ? told.get().file() : table.get().file();
            if (texts.containsKey(file)) {
                errors.add(new Problem(sheet.getName(), 0, "", "is the same table as another sheet"));
                continue;
            }
            if (sheet.getVisibility() != SheetVisibility.VISIBLE) {
                warnings.add(new Problem(sheet.getName(), 0, "", "is hidden, but was read"));
            }
            errors.addAll(text.problems());
            texts.put(file, text.text());
            names.put(file, text.names());
        }
        if (texts.isEmpty()) {
            return refused(
                    name,
                    "has no sheet with the name of a table (" + known() + "); its sheets are "
                            + sheets.stream().map(s -> Quoted.of(s.getName())).collect(Collectors.joining(", ")));
        }
        return new Loaded<>(
                errors.isEmpty() ? Optional.of(new WorkbookTables(texts, new SheetNames(names))) : Optional.empty(),
                errors,
                warnings);
    }

    private static boolean holdsAssumptions(List<Sheet> sheets) {
        return sheets.stream()
                .flatMap(sheet -> SheetTable.of(sheet.getName()).stream())
                .anyMatch(SheetTable.STEPS::equals);
    }

    private static String known() {
        return SheetTable.ALL.stream().map(SheetTable::sheet).collect(Collectors.joining(", "));
    }
}
