package weatherlap.reports.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicInteger;
import weatherlap.datasets.sorting.Scratch;

/** Parts of a sort as numbered files of a folder, which is made when the first one comes. */
final class ScratchFolder implements Scratch {
    private final Path folder;
    private final AtomicInteger count = new AtomicInteger();

    ScratchFolder(Path folder) {
        this.folder = folder;
    }

    private record OnDisk(Path file) implements Part {
        @Override
        public OutputStream write() throws IOException {
            return Files.newOutputStream(file, StandardOpenOption.CREATE_NEW);
        }

        @Override
        public InputStream read() throws IOException {
            return Files.newInputStream(file);
        }

        @Override
        public void drop() throws IOException {
            Files.deleteIfExists(file);
        }
    }

    @Override
    public Part begin() throws IOException {
        Files.createDirectories(folder);
        return new OnDisk(folder.resolve(count.incrementAndGet() + ".part"));
    }
}
