package weatherlap.datasets.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the files lie that belong beside the tables of a portfolio: in their folder, or beside the workbook that they came from. */
public final class Beside {
    /** How the temporary folders begin in which such tables lie. */
    public static final String TEMPORARY = "workbook";

    /** Name of the file beside the tables. */
    public static final String FILE = ".weatherlap-beside";

    private Beside() {}

    /** The folder for such files of tables in a folder. */
    public static Path of(Path tables) {
        return from(tables).map(Path::getParent).orElse(tables);
    }

    /** The workbook, or the short table, from which the tables of a folder came, if they did. */
    public static Optional<Path> from(Path tables) {
        Path parent = tables.toAbsolutePath().normalize().getParent();
        boolean unpacked = parent != null
                && parent.getFileName() != null
                && parent.getFileName().toString().startsWith(TEMPORARY)
                && parent.startsWith(
                        Path.of(System.getProperty("java.io.tmpdir")).toAbsolutePath())
                && Files.isRegularFile(tables.resolve(FILE));
        try {
            return unpacked ? Optional.of(Path.of(Files.readString(tables.resolve(FILE)))) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
