package weatherlap.datasets.shortform;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;

/** A short table on disk: a file that is headed so, or a folder with one in the place of the three tables. */
public final class ShortFile {
    private ShortFile() {}

    /** The file; empty where the path leads to none. */
    public static Optional<Path> at(Path path) {
        if (Files.isDirectory(path)) {
            boolean alone = PortfolioTables.FILES.stream().noneMatch(file -> Files.exists(path.resolve(file)));
            return Optional.of(path.resolve(ShortTable.FILE)).filter(file -> alone && isShort(file));
        }
        String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
        boolean text = Stream.of(".csv", ".tsv", ".txt").anyMatch(name::endsWith);
        return Optional.of(path).filter(file -> text && isShort(file));
    }

    private static boolean isShort(Path file) {
        return Files.isRegularFile(file)
                && Folder.file(file, new Problems())
                        .filter(ShortTable::isHeadedSo)
                        .isPresent();
    }
}
