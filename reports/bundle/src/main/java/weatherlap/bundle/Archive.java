package weatherlap.bundle;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.ArchiveEntry;
import org.apache.commons.compress.archivers.ArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorOutputStream;

/** A folder in one file: zip where files have no mode, tar elsewhere. */
final class Archive {
    private static final int RUNS = 0755;
    private static final int LIES = 0644;

    private Archive() {}

    /**
     * Writes it.
     *
     * @param name of the archive without its ending
     * @return the archive
     */
    static Path of(Path folder, Path name) throws IOException {
        boolean hasModes = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        Path archive = name.resolveSibling(name.getFileName() + (hasModes ? ".tar.gz" : ".zip"));
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(archive))) {
            if (hasModes) {
                try (TarArchiveOutputStream tar = new TarArchiveOutputStream(new GzipCompressorOutputStream(out))) {
                    tar.setLongFileMode(TarArchiveOutputStream.LONGFILE_POSIX);
                    fill(tar, folder, Archive::tarEntry);
                }
            } else {
                try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
                    fill(zip, folder, (file, path) -> new ZipArchiveEntry(file, path));
                }
            }
        }
        return archive;
    }

    private interface Maker<E extends ArchiveEntry> {
        E of(Path file, String path) throws IOException;
    }

    private static <E extends ArchiveEntry> void fill(ArchiveOutputStream<E> archive, Path folder, Maker<E> maker)
            throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> !Files.isDirectory(file)).sorted().toList();
        }
        for (Path file : files) {
            String path = folder.getParent().relativize(file).toString().replace('\\', '/');
            archive.putArchiveEntry(maker.of(file, path));
            Files.copy(file, archive);
            archive.closeArchiveEntry();
        }
        archive.finish();
    }

    private static TarArchiveEntry tarEntry(Path file, String path) throws IOException {
        TarArchiveEntry entry = new TarArchiveEntry(path);
        entry.setSize(Files.size(file));
        entry.setModTime(Files.getLastModifiedTime(file));
        entry.setMode(Files.isExecutable(file) ? RUNS : LIES);
        return entry;
    }
}
