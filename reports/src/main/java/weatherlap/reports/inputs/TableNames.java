package weatherlap.reports.inputs;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Characters;
import weatherlap.datasets.workbook.Beside;
import weatherlap.datasets.workbook.SheetNames;

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

    private static String from(Path folder, String file) {
        Optional<SheetNames.Sheet> sheet =
                Optional.ofNullable(SheetNames.in(folder).sheets().get(file));
        return Beside.from(folder)
                .flatMap(book -> sheet.map(known -> Inputs.name(book)
                        + (known.letters().isEmpty() ? "" : ", sheet " + Characters.shown(known.name()))))
                .orElse(file);
    }
}
