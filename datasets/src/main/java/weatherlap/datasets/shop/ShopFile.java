package weatherlap.datasets.shop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.Toml;
import weatherlap.datasets.table.TomlTable;

/**
 * A shop as its files have it.
 *
 * @param read the bytes that it was read from, by the name of their file from the folder of the shop file
 */
public record ShopFile(Shop shop, SortedMap<String, Source> read) {
    /** Name of the file. */
    public static final String FILE = "shop.toml";

    /** A shop that nothing is known of. */
    public static final ShopFile NONE = new ShopFile(Shop.UNNAMED, new TreeMap<>());

    /** No such file is longer; what is longer is not read. */
    private static final int LONGEST = 100_000;

    public ShopFile {
        read = Collections.unmodifiableSortedMap(new TreeMap<>(read));
    }

    /** @param path a shop file, or a folder that holds {@value #FILE} */
    public static Loaded<ShopFile> read(Path path) {
        Path file = in(path);
        Problems problems = new Problems();
        ShopFolder folder = new ShopFolder(Folder.of(file.getParent()), problems);
        Optional<Shop> shop = folder.bytes(String.valueOf(file.getFileName()), LONGEST)
                .flatMap(source -> source.text(LONGEST, problems)
                        .flatMap(text -> TomlTable.of(new Toml(source.name(), text), problems)))
                .map(table -> new ShopText(table, folder).read());
        return Loaded.of(shop.map(whole -> new ShopFile(whole, folder.read())), problems);
    }

    /** The file that is meant, from the root. */
    public static Path in(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        return Files.isDirectory(whole) ? whole.resolve(FILE) : whole;
    }

    /** A file to fill in: every line of it is a comment. */
    public static byte[] template() {
        try (InputStream in = ShopFile.class.getResourceAsStream(FILE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Bytes in memory. */
    static Source source(String name, byte[] bytes) {
        return new Source(name, () -> new ByteArrayInputStream(bytes));
    }
}
