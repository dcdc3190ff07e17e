package weatherlap.charts.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a process lays into the temporary folder of the machine: a folder of its own that only its user may enter, gone with the process. A
 * process that is killed cannot clear its own; the next one that needs such a folder does, and leaves those of living processes, of other
 * users and of other programs alone.
 *
 * <p>A living process holds a lock on a file of its folder, which the system drops however the process ends. Links are not followed.
 */
public final class TemporaryFolder {
    private static final String PREFIX = "weatherlap-own-";
    private static final String LOCK = ".lock";

    /** Kept, since a channel that nobody holds is closed when memory is collected, and its lock dropped. */
    private static final List<FileChannel> LOCKS = new ArrayList<>();

    private static Path ours;

    private TemporaryFolder() {}

    /** The folder of this process, in the one that {@code java.io.tmpdir} names; made when it is first asked for. */
    public static synchronized Path ofProcess() throws IOException {
        if (ours == null) {
            ours = make(Path.of(System.getProperty("java.io.tmpdir")));
        }
        return ours;
    }

    static Path make(Path parent) throws IOException {
        Path own = locked(parent);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> clear(own)));
        try {
            clearAfterDead(parent, own);
        } catch (IOException e) {
            // what is left there is in nobody's way
        }
        return own;
    }

    private static Path locked(Path parent) throws IOException {
        while (true) {
            Path folder = Files.createTempDirectory(parent, PREFIX);
            FileChannel lock =
                    FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (isHeld(lock, folder.resolve(LOCK))) {
                LOCKS.add(lock);
                return folder;
            }
            lock.close();
        }
    }

    /** Not so where another process took the folder for a dead one's before it was locked, and clears it, or has. */
    static boolean isHeld(FileChannel lock, Path file) throws IOException {
        return lock.tryLock() != null && Files.exists(file);
    }

    private static void clearAfterDead(Path parent, Path own) throws IOException {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(parent, PREFIX + "*")) {
            for (Path other : all) {
                if (!other.equals(own) && isOfThisUser(other, own)) {
                    clearIfDead(other);
                }
            }
        }
    }

    private static boolean isOfThisUser(Path other, Path own) throws IOException {
        return Files.isDirectory(other, LinkOption.NOFOLLOW_LINKS)
                && Files.getOwner(other).equals(Files.getOwner(own))
                && Files.isRegularFile(other.resolve(LOCK), LinkOption.NOFOLLOW_LINKS);
    }

    private static void clearIfDead(Path folder) {
        try (FileChannel lock =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            if (lock.tryLock() != null) {
                clear(folder);
            }
        } catch (IOException | OverlappingFileLockException e) {
            // of a living process, or being cleared by another
        }
    }

    /** The lock last, so that a folder that is half cleared is still known for what it is. */
    private static void clear(Path folder) {
        Path lock = folder.resolve(LOCK);
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                if (!file.equals(folder) && !file.equals(lock)) {
                    Files.delete(file);
                }
            }
            Files.deleteIfExists(lock);
            Files.delete(folder);
        } catch (IOException | UncheckedIOException e) {
            // the next process tries again
        }
    }
}
