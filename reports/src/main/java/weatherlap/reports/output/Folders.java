package weatherlap.reports.output;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Small acts on whole folders. Symbolic links are never followed. */
final class Folders {
    private Folders() {}

    static boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    static boolean isEmpty(Path folder) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            return !entries.iterator().hasNext();
        }
    }

    /** Every file under a folder, as its path from there with {@code /} between the parts. */
    static SortedSet<String> files(Path folder) throws IOException {
        SortedSet<String> names = new TreeSet<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                names.add(folder.relativize(file).toString().replace('\\', '/'));
                return FileVisitResult.CONTINUE;
            }
        });
        return names;
    }

    /** The first folder under a folder that holds nothing, as its path from there. */
    static Optional<String> emptyFolder(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path inner : all.filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList()) {
                if (!inner.equals(folder) && isEmpty(inner)) {
                    return Optional.of(folder.relativize(inner).toString().replace('\\', '/'));
                }
            }
            return Optional.empty();
        }
    }

    /** Whether another file system begins there than that of the folder around it. */
    static boolean isMountPoint(Path folder) throws IOException {
        return !Files.getFileStore(folder).equals(Files.getFileStore(folder.getParent()));
    }

    /** Makes a folder and those around it; those that were not there, the outermost first. */
    static List<Path> create(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path path = folder; path != null && !Files.exists(path); path = path.getParent()) {
            missing.addFirst(path);
        }
        Files.createDirectories(folder);
        return List.copyOf(missing);
    }

    /** Deletes those that are empty, the last first. */
    static void deleteEmpty(List<Path> folders) throws IOException {
        for (int i = folders.size() - 1; i >= 0; i--) {
            if (exists(folders.get(i)) && isEmpty(folders.get(i))) {
                Files.delete(folders.get(i));
            }
        }
    }

    static void deleteWhole(Path folder) throws IOException {
        if (!exists(folder)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException failure) throws IOException {
                if (failure != null) {
                    throw failure;
                }
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
