package weatherlap.reports.inputs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import weatherlap.datasets.portfolio.PortfolioTables;

/** Portfolios that are not held in memory whole. */
public final class LargePortfolio {
    /** Of {@code openings.csv}: some thousand houses. */
    public static final long LARGEST_WHOLE_BYTES = 2L << 20;

    private LargePortfolio() {}

    public static Optional<Path> in(InputPaths paths) {
        return in(paths, LARGEST_WHOLE_BYTES);
    }

    /** The folder, if it has all three tables and that of openings has more bytes. */
    public static Optional<Path> in(InputPaths paths, long largestWholeBytes) {
        return paths.portfolio().filter(folder -> isLarge(folder, largestWholeBytes));
    }

    private static boolean isLarge(Path folder, long largestWholeBytes) {
        try {
            return PortfolioTables.FILES.stream().allMatch(file -> Files.isRegularFile(folder.resolve(file)))
                    && Files.size(folder.resolve(PortfolioTables.OPENINGS.file())) > largestWholeBytes;
        } catch (IOException e) {
            return false;
        }
    }
}
