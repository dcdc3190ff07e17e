package weatherlap.datasets.assumptions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.table.Loaded;

/** Every problem of an assumption folder is found at once. */
class AssumptionCorpusTest {
    private final Corpus corpus = new Corpus(Map.of(
            "labour-steps.csv", "tables/labour-steps.csv",
            "materials.csv", "tables/materials.csv",
            "units.csv", "tables/units.csv",
            "sightlines.csv", "tables/sightlines.csv",
            "lap-faults.csv", "tables/lap-faults.csv",
            "wages.csv", "tables/wages.csv",
            "scenario.toml", "assumptions/scenario.toml"));

    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badAssumptions() {
        return corpus.tests("corpus/assumptions.txt", temporary, AssumptionTables::read);
    }

    @Test
    void theGoodFolderHasNoProblem() throws IOException {
        corpus.writeGood(temporary);
        Loaded<AssumptionTables> loaded = AssumptionTables.read(temporary);
        assertThat(loaded.errors()).isEmpty();
        assertThat(loaded.warnings()).isEmpty();
    }
}
