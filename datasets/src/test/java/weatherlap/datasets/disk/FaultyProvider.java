package weatherlap.datasets.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The acts of a {@link FaultyDisk}: each asks first whether it may, then is done by the machine's own file system. */
final class FaultyProvider extends FileSystemProvider {
    private final FaultyDisk disk;
    private final FileSystemProvider real;

    FaultyProvider(FaultyDisk disk, FileSystemProvider real) {
        this.disk = disk;
        this.real = real;
    }

    private Path asked(Act act, Path path) throws IOException {
        Path own = FaultyPath.real(path);
        disk.before(act, own);
        return own;
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        boolean writes = options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
        Path own = asked(writes ? Act.OPEN : Act.READ, path);
        FileChannel channel = disk.opened(real.newFileChannel(own, options, attributes));
        return writes ? new FaultyChannel(channel, () -> disk.before(Act.WRITE, own)) : channel;
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> own = real.newDirectoryStream(asked(Act.READ, folder), path -> true)) {
            for (Path entry : own) {
                Path ours = disk.path(entry);
                if (filter.accept(ours)) {
                    entries.add(ours);
                }
            }
        }
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return entries.iterator();
            }

            @Override
            public void close() {
                // it was read whole
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        real.createDirectory(asked(Act.MAKE_FOLDER, folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        real.delete(asked(Act.DELETE, path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
        real.move(asked(Act.MOVE, source), FaultyPath.real(target), options);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return real.isSameFile(FaultyPath.real(one), FaultyPath.real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.isHidden(FaultyPath.real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.getFileStore(asked(Act.LOOK, path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        real.checkAccess(asked(modes.length == 0 ? Act.LOOK : Act.READ, path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return real.getFileAttributeView(FaultyPath.real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return real.readAttributes(asked(Act.LOOK, path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options) throws IOException {
        return real.readAttributes(asked(Act.LOOK, path), names, options);
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options) throws IOException {
        real.setAttribute(FaultyPath.real(path), name, value, options);
    }

    @Override
    public String getScheme() {
        return "faulty";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }
}
