package weatherlap.datasets.disk;

import java.io.IOException;
import java.nio.channels.Channel;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The files of a folder of the machine, seen through a file system on which any act can go wrong. */
public final class FaultyDisk extends FileSystem {
    private final FileSystem real;
    private final FaultyProvider provider;
    private final List<Channel> open = new ArrayList<>();
    private Trouble trouble = Trouble.NONE;

    /** @param real a path of it */
    public FaultyDisk(Path real) {
        this.real = real.getFileSystem();
        provider = new FaultyProvider(this, this.real.provider());
    }

    /** A path of the machine as this disk has it. */
    public Path path(Path path) {
        return FaultyPath.of(this, path);
    }

    public void set(Trouble next) {
        trouble = next;
    }

    void before(Act act, Path path) throws IOException {
        trouble.before(act, path);
    }

    /** As when the process ends: what it holds open is closed, and its locks with it. */
    public void closeAll() throws IOException {
        for (Channel channel : open) {
            channel.close();
        }
    }

    <C extends Channel> C opened(C channel) {
        open.add(channel);
        return channel;
    }

    @Override
    public FileSystemProvider provider() {
        return provider;
    }

    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return real.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        return List.of(path(real.getRootDirectories().iterator().next()));
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        return real.getFileStores();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return real.supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
        return path(real.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
        PathMatcher matcher = real.getPathMatcher(pattern);
        return path -> matcher.matches(FaultyPath.real(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        return real.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() {
        throw new UnsupportedOperationException();
    }
}
