package weatherlap.datasets.jobs;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;

/** Every problem of a file of job records is found at once. */
class JobCorpusTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();

    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badRecords() {
        return Corpus.JOBS.tests(
                "corpus/jobs.txt", temporary, folder -> JobReader.read(folder.resolve("jobs.csv"), BUNDLED));
    }
}
