package weatherlap.reports.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds one output folder for one run. The system drops the lock when the process ends, however it ends.
 *
 * <p>The lock file is deleted with the lock. A run that opened the file just before would then hold a lock that nobody else sees:
 * so each run gives its file a length of its own and looks whether the file under that name has it. (The length can be asked for
 * without opening the file; closing a second handle on it would drop the lock on POSIX systems, which is also why the locks of this
 * process are kept in a set.)
 */
final class FolderLock implements AutoCloseable {
    private static final int TRIES = 20;
    private static final int LONGEST = 1 << 16;
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();
    private static final SecureRandom LENGTHS = new SecureRandom();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** The lock, or nothing when another run holds it. */
    static Optional<FolderLock> take(Path file) throws IOException {
        if (!HELD.add(file)) {
            return Optional.empty();
        }
        Optional<FolderLock> lock = Optional.empty();
        try {
            lock = takeFromOtherProcesses(file);
            return lock;
        } finally {
            if (lock.isEmpty()) {
                HELD.remove(file);
            }
        }
    }

    private static Optional<FolderLock> takeFromOtherProcesses(Path file) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            if (Folders.exists(file) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new IOException(file.getFileName() + " is not a file of this program");
            }
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
            if (channel.tryLock() == null) {
                channel.close();
                return Optional.empty();
            }
            FolderLock lock = new FolderLock(file, channel);
            try {
                if (isStillNamed(file, channel)) {
                    return Optional.of(lock);
                }
                channel.close();
            } catch (IOException e) {
                lock.close();
                throw e;
            }
        }
        return Optional.empty();
    }

    private static boolean isStillNamed(Path file, FileChannel channel) throws IOException {
        int length = 1 + LENGTHS.nextInt(LONGEST);
        channel.truncate(0);
        channel.write(ByteBuffer.allocate(1), length - 1); // the rest is a hole, which takes no room on a disk
        try {
            return Files.size(file) == length;
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        } finally {
            HELD.remove(file);
        }
    }
}
