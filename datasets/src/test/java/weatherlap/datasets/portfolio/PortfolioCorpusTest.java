package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.Portfolio;

/** Every problem of a portfolio is found at once, and named by file, row and column. */
class PortfolioCorpusTest {
    private static final int THIS_YEAR = 2026;

    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badPortfolios() {
        return Corpus.PORTFOLIO.tests("corpus/portfolio.txt", temporary, PortfolioCorpusTest::read);
    }

    @TestFactory
    Stream<DynamicTest> portfoliosThatDoNotFitTheAssumptions() {
        Assumptions bundled = AssumptionTables.bundled().assumptions();
        return Corpus.PORTFOLIO.tests("corpus/fit.txt", temporary, folder -> Portfolios.read(folder, bundled));
    }

    @Test
    void theGoodPortfolioHasNoProblem() throws IOException {
        Corpus.PORTFOLIO.writeGood(temporary);
        Loaded<Portfolio> loaded = read(temporary);
        assertThat(loaded.errors()).isEmpty();
        assertThat(loaded.warnings()).isEmpty();
        assertThat(loaded.orElseThrow().openingCount()).isEqualTo(4);
    }

    private static Loaded<Portfolio> read(Path folder) {
        return Portfolios.read(Folder.of(folder), THIS_YEAR);
    }
}
