package weatherlap.datasets.generator;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;

/** Every problem of a mix is found at once. */
class MixCorpusTest {
    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badMixes() {
        return Corpus.MIX.tests("corpus/mix.txt", temporary, folder -> Mix.read(folder.resolve("mix.csv")));
    }
}
