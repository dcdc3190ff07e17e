package weatherlap.datasets.shop;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Source;

/** The folder of a shop file, from which each file is read once. */
final class ShopFolder {
    /** No logo is longer. */
    private static final int LONGEST_LOGO = 1_000_000;

    private final Folder folder;
    private final Problems problems;
    private final SortedMap<String, Source> read = new TreeMap<>();

    ShopFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** What was read so far, by name. */
    SortedMap<String, Source> read() {
        return read;
    }

    /** A file of at most so many bytes; empty where it cannot be had, which is reported. */
    Optional<Source> bytes(String name, int longest) {
        try {
            if (Path.of(name).isAbsolute() || Path.of(name).normalize().startsWith("..")) {
                problems.error(Quoted.bare(name), "is outside the folder of the shop file");
                return Optional.empty();
            }
            Optional<Source> found = folder.find(name, problems);
            if (found.isPresent()) {
                return whole(found.get(), longest);
            }
        } catch (InvalidPathException e) {
            problems.error(Quoted.bare(name), "is not a file name");
        } catch (IOException e) {
            problems.error(Quoted.bare(name), "cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    private Optional<Source> whole(Source found, int longest) throws IOException {
        try (InputStream in = found.bytes().open()) {
            byte[] bytes = in.readNBytes(longest + 1);
            if (bytes.length > longest) {
                problems.error(Quoted.bare(found.name()), "is longer than " + longest + " bytes");
                return Optional.empty();
            }
            Source source = ShopFile.source(found.name(), bytes);
            read.put(source.name(), source);
            return Optional.of(source);
        }
    }

    /** The logo in a file, which lies in this folder or below it; empty where it is refused, which is reported. */
    Optional<Logo> logo(String file) {
        return bytes(file, LONGEST_LOGO).flatMap(this::logo);
    }

    private Optional<Logo> logo(Source source) {
        try (InputStream in = source.bytes().open()) {
            byte[] bytes = in.readAllBytes();
            return Optional.of(PngLogo.isPng(bytes) ? PngLogo.of(bytes) : SvgLogo.of(bytes));
        } catch (LogoRefused | IOException e) {
            problems.error(Quoted.bare(source.name()), e.getMessage());
            return Optional.empty();
        }
    }
}
