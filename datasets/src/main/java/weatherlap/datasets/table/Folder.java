package weatherlap.datasets.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the files of an input lie: a folder on disk, or the resources of a package. */
public sealed interface Folder {
    /** The file of that name; empty where it is missing or must not be read, which is reported. */
    Optional<Source> find(String file, Problems problems);

    /** The table of that schema, read whole; empty where there is none to speak of, which is reported. */
    default Optional<TextTable> table(Schema schema, Problems problems) {
        return find(schema.file(), problems).flatMap(source -> TextTable.read(source, schema, problems));
    }

    static Folder of(Path path) {
        return new OnDisk(path);
    }

    /** Tables in memory, text by file name. */
    static Folder of(Map<String, String> texts) {
        return new InMemory(texts);
    }

    /** Resources in the package of a class. */
    static Folder beside(Class<?> anchor) {
        return new Bundled(anchor, "");
    }

    /** Resources in a folder under the package of a class. */
    static Folder beside(Class<?> anchor, String path) {
        return new Bundled(anchor, path + "/");
    }

    /** A file that the user names by itself, wherever its links lead; empty where it must not be read, which is reported. */
    static Optional<Source> file(Path path, Problems problems) {
        Path whole = path.toAbsolutePath().normalize();
        String name = whole.getFileName() == null
                ? whole.toString()
                : whole.getFileName().toString();
        String fault = OnDisk.fault(whole, whole.getParent() == null ? whole : whole.getParent());
        if (!fault.isEmpty()) {
            problems.error(name, fault);
            return Optional.empty();
        }
        return Optional.of(new Source(name, () -> Files.newInputStream(whole)));
    }

    /** Why this user may not read what lies there, if so; empty where he may, or where nothing lies. */
    static String denied(Path path) {
        if (cannotBeReached(path)) {
            return "cannot be reached; check the permissions of the folders around it";
        }
        return Files.exists(path) && !Files.isReadable(path) ? "cannot be opened; check its permissions" : "";
    }

    /** Whether nobody tells this user if there is anything; in a file there is nothing, whoever asks. */
    private static boolean cannotBeReached(Path path) {
        return !Files.exists(path) && !Files.notExists(path) && !liesInFile(path);
    }

    private static boolean liesInFile(Path path) {
        Path around = path.toAbsolutePath().getParent();
        while (around != null && !Files.exists(around)) {
            around = around.getParent();
        }
        return around != null && !Files.isDirectory(around);
    }

    /** A folder on disk. Links are followed only within it. */
    record OnDisk(Path path) implements Folder {
        @Override
        public Optional<Source> find(String file, Problems problems) {
            try {
                return find(file, path.resolve(file), problems);
            } catch (InvalidPathException e) {
                problems.error(Quoted.bare(file), "is not a file name");
                return Optional.empty();
            }
        }

        private Optional<Source> find(String file, Path wanted, Problems problems) {
            String fault = fault(wanted, path);
            if (fault.isEmpty() && leadsOut(wanted)) {
                fault = "is a link that leads out of its folder";
            }
            if (!fault.isEmpty()) {
                problems.error(file, fault);
                return Optional.empty();
            }
            return Optional.of(new Source(file, () -> Files.newInputStream(wanted)));
        }

        private boolean leadsOut(Path wanted) {
            try {
                return !wanted.toRealPath().startsWith(path.toRealPath());
            } catch (IOException e) {
                return true;
            }
        }

        private static String fault(Path wanted, Path folder) {
            if (!Files.isDirectory(folder)) {
                return cannotBeReached(folder)
                        ? "cannot be reached; check the permissions of the folders around "
                                + Quoted.of(folder.toString())
                        : "there is no folder " + Quoted.of(folder.toString());
            }
            if (Files.isDirectory(wanted)) {
                return "is a folder, not a file";
            }
            if (Files.isSymbolicLink(wanted) && !Files.exists(wanted)) {
                return "is a link that leads nowhere";
            }
            if (cannotBeReached(wanted)) {
                return "cannot be reached; check the permissions of the folder " + Quoted.of(folder.toString());
            }
            if (!Files.exists(wanted)) {
                return "is missing from the folder " + Quoted.of(folder.toString()) + nearest(wanted, folder);
            }
            return !Files.isRegularFile(wanted) ? "is not a regular file" : denied(wanted);
        }

        private static String nearest(Path wanted, Path folder) {
            try (Stream<Path> files = Files.list(folder)) {
                List<String> names = files.limit(1000)
                        .map(file -> file.getFileName().toString())
                        .toList();
                return Nearest.hint(wanted.getFileName().toString(), names);
            } catch (IOException e) {
                return "";
            }
        }
    }

    /**
     * Resources of the program.
     *
     * @param path empty, or a folder with a slash at its end
     */
    record Bundled(Class<?> anchor, String path) implements Folder {
        @Override
        public Optional<Source> find(String file, Problems problems) {
            if (anchor.getResource(path + file) == null) {
                problems.error(file, "is missing from the program");
                return Optional.empty();
            }
            return Optional.of(new Source(file, () -> anchor.getResourceAsStream(path + file)));
        }
    }

    /** Texts by file name. */
    record InMemory(Map<String, String> texts) implements Folder {
        public InMemory {
            texts = Map.copyOf(texts);
        }

        @Override
        public Optional<Source> find(String file, Problems problems) {
            Optional<Source> found = Optional.ofNullable(texts.get(file)).map(text -> Source.of(file, text));
            if (found.isEmpty()) {
                problems.error(file, "is missing");
            }
            return found;
        }
    }
}
