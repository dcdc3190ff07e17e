package weatherlap.datasets.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A table that a sheet may hold.
 *
 * @param sheet how the sheet is called
 * @param file how the table is called in a folder
 */
public record SheetTable(String sheet, String file) {
    /** By which a workbook of assumptions is told. */
    static final SheetTable STEPS = new SheetTable("Labor steps", "labour-steps.csv");

    private static final SheetTable SETTINGS = new SheetTable("Settings", "settings.csv");

    /** All, in the order in which a workbook has them. */
    public static final List<SheetTable> ALL = List.of(
            new SheetTable("Houses", "houses.csv"),
            new SheetTable("Walls", "elevations.csv"),
            new SheetTable("Windows", "openings.csv"),
            new SheetTable("Jobs", "jobs.csv"),
            new SheetTable("Items", "job-items.csv"),
            new SheetTable("Callbacks", "callbacks.csv"),
            STEPS,
            new SheetTable("Materials", "materials.csv"),
            new SheetTable("Units", "units.csv"),
            new SheetTable("Sightlines", "sightlines.csv"),
            new SheetTable("Lap faults", "lap-faults.csv"),
            new SheetTable("Wages", "wages.csv"),
            new SheetTable("Price index", "price-index.csv"),
            new SheetTable("Crews", "crews.csv"),
            SETTINGS);

    /** Whether its name is so common that it is read beside other assumptions alone. */
    boolean goesWithOthers() {
        return equals(SETTINGS);
    }

    /** The table of a sheet, called as here or as its file; capitals and blanks around do not count. */
    static Optional<SheetTable> of(String sheet) {
        String name = sheet.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(table -> name.equals(table.sheet.toLowerCase(Locale.ROOT))
                        || name.equals(table.file.replace(".csv", "")))
                .findFirst();
    }
}
