package weatherlap.reports.inputs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.workbook.Beside;
import weatherlap.reports.output.Checksum;

/** What a run reads of the shop. */
public final class ShopReading {
    private ShopReading() {}

    /** The shop file that is named, or that stands beside the tables of the portfolio. */
    public static Optional<Path> file(InputPaths paths) {
        return paths.shop().or(() -> paths.portfolio()
                .map(folder -> Beside.of(folder).resolve(ShopFile.FILE))
                .filter(Files::exists));
    }

    public static Loaded<ShopFile> read(InputPaths paths) {
        return file(paths).map(ShopFile::read).orElseGet(() -> Loaded.of(ShopFile.NONE));
    }

    /** SHA-256 of what was read, by kind and name. */
    public static SortedMap<String, String> checksums(ShopFile shop) {
        SortedMap<String, String> sums = new TreeMap<>();
        shop.read().forEach((name, source) -> {
            try {
                sums.put("shop/" + name, Checksum.of(source));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return sums;
    }
}
