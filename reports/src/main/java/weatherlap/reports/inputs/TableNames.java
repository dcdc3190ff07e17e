package weatherlap.reports.inputs;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Characters;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.TextTable;
import weatherlap.datasets.workbook.Beside;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.reports.format.SourceNames;

/** What pages call a table that was read: its file, or the workbook that it came from and the sheet. */
public final class TableNames {
    private TableNames() {}

    /** {@code jobs.csv}, or {@code shop.xlsx, sheet Jobs}. */
    public static String of(Path table) {
        String file = Inputs.name(table);
        Path folder = table.toAbsolutePath().normalize().getParent();
        return folder == null ? file : from(folder, file);
    }

    /** The same of a table whose sum stands under {@code kind/file}, where a folder of that kind was named. */
    public static String ofSum(String sum, Map<String, Path> folders) {
        String[] parts = sum.split("/", 2);
        Path folder = folders.get(parts[0]);
        return folder == null || Beside.from(folder).isEmpty() ? sum : from(folder, parts[1]) + ", as " + parts[1];
    }

    /** Lines about tables, with the sheets of those that came from one. */
    public static List<String> said(List<String> lines, Path folder) {
        return lines.stream().map(SheetNames.in(folder)::said).toList();
    }

    /** What pages call the tables of houses and of assumptions that a run read. */
    public static SourceNames sources(Optional<Path> portfolio, Optional<Path> assumptions) {
        Map<String, String> tables = new LinkedHashMap<>();
        Map<String, Map<String, String>> headings = new LinkedHashMap<>();
        Map<String, Map<String, String>> cells = new LinkedHashMap<>();
        Stream.of(portfolio, assumptions)
                .flatMap(Optional::stream)
                .filter(folder -> Beside.from(folder).isPresent())
                .forEach(folder -> {
                    SheetNames names = SheetNames.in(folder);
                    names.sheets().forEach((file, sheet) -> {
                        tables.put(file, from(folder, names, file));
                        if (!sheet.called().isEmpty()) {
                            Map<String, String> own = new LinkedHashMap<>();
                            sheet.letters().keySet().forEach(heading -> own.put(heading, heading));
                            own.putAll(sheet.called());
                            headings.put(file, own);
                        }
                    });
                });
        assumptions.filter(folder -> Beside.from(folder).isPresent()).ifPresent(folder -> {
            SheetNames names = SheetNames.in(folder);
            names.sheets().forEach((file, sheet) -> cells.put(file, sheet.cells()));
            AssumptionTables.SCHEMAS.forEach(schema -> cells.put(schema.file(), cells(folder, names, schema)));
        });
        return new SourceNames(tables, headings, cells);
    }

    /** The first cell of each row of a table, whose lines are the rows of its sheet. */
    private static Map<String, String> cells(Path folder, SheetNames names, Schema schema) {
        SheetNames.Sheet sheet = names.sheets().get(schema.file());
        String letter = sheet == null ? null : sheet.letters().get(schema.key().get(0));
        Problems none = new Problems();
        return letter == null
                ? Map.of()
                : Folder.of(folder)
                        .find(schema.file(), none)
                        .flatMap(source -> TextTable.read(source, schema, none))
                        .map(table -> table.rows()
                                .collect(Collectors.toMap(
                                        row -> row.key(schema), row -> letter + row.line(), (first, second) -> first)))
                        .orElse(Map.of());
    }

    private static String from(Path folder, String file) {
        return from(folder, SheetNames.in(folder), file);
    }

    private static String from(Path folder, SheetNames names, String file) {
        Optional<SheetNames.Sheet> sheet = Optional.ofNullable(names.sheets().get(file));
        return Beside.from(folder)
                .flatMap(book -> sheet.map(known -> Inputs.name(book)
                        + (known.letters().isEmpty() ? "" : ", sheet " + Characters.shown(known.name()))))
                .orElse(file);
    }
}
