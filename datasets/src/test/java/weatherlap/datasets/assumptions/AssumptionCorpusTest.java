package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.table.Loaded;

/** Every problem of an assumption folder is found at once. */
class AssumptionCorpusTest {
    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badAssumptions() {
        return Corpus.ASSUMPTIONS.tests("corpus/assumptions.txt", temporary, AssumptionTables::read);
    }

    @Test
    void theGoodFolderHasNoProblem() throws IOException {
        Corpus.ASSUMPTIONS.writeGood(temporary);
        Loaded<AssumptionTables> loaded = AssumptionTables.read(temporary);
        assertThat(loaded.errors()).isEmpty();
        assertThat(loaded.warnings()).isEmpty();
    }
}
