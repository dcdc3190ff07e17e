package weatherlap.reports.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.charts.kit.TemporaryFolder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.datasets.workbook.WorkbookTables;

/**
 * The workbooks that one run reads, each unpacked into a folder of tables of its own that only this user may enter. The folders are gone when
 * the run is.
 */
public final class InputWorkbooks implements AutoCloseable {
    private static final String SUFFIX = "\\.[^.]*$";

    private final Map<Path, Unpacked> unpacked = new LinkedHashMap<>();
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    private record Unpacked(Path folder, SheetNames names) {}

    /** The path itself; for a workbook, the folder of its tables. What is wrong with one is kept in {@link #problems}. */
    public Path folder(String asked) {
        Path path = Path.of(asked);
        if (!WorkbookTables.isNamedSo(path) || !Files.isRegularFile(path)) {
            return path;
        }
        Unpacked known = unpacked.get(path);
        return known != null ? known.folder() : unpack(path);
    }

    private Path unpack(Path workbook) {
        Loaded<WorkbookTables> read = WorkbookTables.read(workbook);
        read.errors().forEach(problem -> problems.add(problem.toString()));
        read.warnings().stream().map(Problem::toString).forEach(warnings::add);
        if (read.value().isEmpty()) {
            return workbook;
        }
        WorkbookTables tables = read.value().get();
        try {
            String name = workbook.getFileName().toString().replaceFirst(SUFFIX, "");
            Path folder = Files.createTempDirectory(TemporaryFolder.ofProcess(), "workbook")
                    .resolve(name.isEmpty() ? "workbook" : name);
            unpacked.put(workbook, new Unpacked(folder, tables.names()));
            Files.createDirectory(folder);
            for (Map.Entry<String, String> table : tables.texts().entrySet()) {
                Files.writeString(folder.resolve(table.getKey()), table.getValue());
            }
            Files.writeString(folder.resolve(SheetNames.FILE), tables.names().text());
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
