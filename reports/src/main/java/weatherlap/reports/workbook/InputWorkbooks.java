package weatherlap.reports.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.charts.kit.TemporaryFolder;
import weatherlap.datasets.shortform.HouseDefaults;
import weatherlap.datasets.shortform.ShortFile;
import weatherlap.datasets.shortform.ShortPortfolio;
import weatherlap.datasets.shortform.ShortTable;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.workbook.Beside;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.datasets.workbook.WorkbookTables;

/**
 * The workbooks and short tables that one run reads, each unpacked into a folder of tables of its own that only this user may enter. The folders are gone when
 * the run is.
 */
public final class InputWorkbooks implements AutoCloseable {
    private static final String SUFFIX = "\\.[^.]*$";
    private static final int LONGEST_SHORT = 20_000_000;
    private static final WorkbookTables.ToldTable SHORT =
            new WorkbookTables.ToldTable(ShortTable.FILE, ShortTable::isHeadedSo);

    private final Map<Path, Unpacked> unpacked = new LinkedHashMap<>();
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    private record Unpacked(Path folder, SheetNames names) {}

    /**
     * The path itself; for a workbook, or for a short table, the folder of its tables. What is wrong with one is kept in {@link #problems}.
     */
    public Path folder(String asked) {
        Path path = Path.of(asked);
        Unpacked known = unpacked.get(path);
        if (known != null) {
            return known.folder();
        }
        if (WorkbookTables.isNamedSo(path) && Files.isRegularFile(path)) {
            return workbook(path);
        }
        return ShortFile.at(path).map(table -> shortTable(path, table)).orElse(path);
    }

    private Path workbook(Path workbook) {
        Loaded<WorkbookTables> read = WorkbookTables.read(workbook, Optional.of(SHORT));
        read.errors().forEach(problem -> problems.add(problem.toString()));
        read.warnings().stream().map(Problem::toString).forEach(warnings::add);
        if (read.value().isEmpty()) {
            return workbook;
        }
        Problems found = new Problems();
        WorkbookTables tables = AssumptionsWorkbook.withNumbers(read.value().get(), found);
        found.warnings().forEach(problem -> warnings.add(tables.names().said(problem.toString())));
        if (found.hasErrors()) {
            found.errors().forEach(problem -> problems.add(tables.names().said(problem.toString())));
            return workbook;
        }
        String text = tables.texts().get(ShortTable.FILE);
        SheetNames.Sheet sheet = tables.names().sheets().get(ShortTable.FILE);
        return text == null
                ? unpack(workbook, workbook, tables.texts(), tables.names())
                : filled(workbook, workbook, Source.of(ShortTable.FILE, text), tables.texts(), ShortTable.names(sheet));
    }

    private Path shortTable(Path asked, Path table) {
        SheetNames names = ShortTable.names(new SheetNames.Sheet(String.valueOf(table.getFileName()), Map.of()));
        Problems found = new Problems();
        Optional<String> text = Folder.file(table, found).flatMap(source -> source.text(LONGEST_SHORT, found));
        found.errors().forEach(problem -> problems.add(problem.toString()));
        return text.map(known ->
                        filled(asked, table, Source.of(ShortTable.FILE, known), Map.of(ShortTable.FILE, known), names))
                .orElse(asked);
    }

    /** The tables of houses filled up from the short one. */
    private Path filled(Path asked, Path file, Source table, Map<String, String> texts, SheetNames names) {
        Problems found = new Problems();
        Optional<ShortPortfolio> read = ShortPortfolio.read(table, found);
        found.errors().forEach(problem -> problems.add(names.said(problem.toString())));
        found.warnings().forEach(problem -> warnings.add(names.said(problem.toString())));
        if (read.isEmpty()) {
            return asked;
        }
        Map<String, String> all = new LinkedHashMap<>(texts);
        all.putAll(read.get().texts(HouseDefaults.bundled()));
        return unpack(asked, file, all, names);
    }

    private Path unpack(Path asked, Path file, Map<String, String> texts, SheetNames names) {
        try {
            String name = String.valueOf(asked.toAbsolutePath().normalize().getFileName())
                    .replaceFirst(SUFFIX, "");
            Path folder = Files.createTempDirectory(TemporaryFolder.ofProcess(), Beside.TEMPORARY)
                    .resolve(name.isEmpty() ? "workbook" : name);
            unpacked.put(asked, new Unpacked(folder, names));
            Files.createDirectory(folder);
            for (Map.Entry<String, String> table : texts.entrySet()) {
                Files.writeString(folder.resolve(table.getKey()), table.getValue());
            }
            Files.writeString(folder.resolve(SheetNames.FILE), names.text());
            Files.writeString(
                    folder.resolve(Beside.FILE),
                    file.toAbsolutePath().normalize().toString());
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What keeps the run from going on. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    public List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** A line of a message, with workbooks and their cells in place of folders and lines of tables. */
    public String said(String line) {
        String said = line;
        for (Map.Entry<Path, Unpacked> one : unpacked.entrySet()) {
            said = one.getValue()
                    .names()
                    .said(said.replace("the folder \"" + one.getValue().folder(), "the workbook \"" + one.getKey()))
                    .replace(one.getValue().folder().toString(), one.getKey().toString());
        }
        return said;
    }

    @Override
    public void close() {
        for (Unpacked one : unpacked.values()) {
            try (Stream<Path> files = Files.list(one.folder())) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
                Files.delete(one.folder());
                Files.delete(one.folder().getParent());
            } catch (IOException e) {
                // it is gone with the process
            }
        }
    }
}
