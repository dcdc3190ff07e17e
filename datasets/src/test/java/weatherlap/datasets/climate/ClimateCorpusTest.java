package weatherlap.datasets.climate;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;

/** Every problem of a weather file is found at once. */
class ClimateCorpusTest {
    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badWeather() {
        return Corpus.CLIMATE.tests(
                "corpus/climate.txt", temporary, folder -> ClimateReader.read(folder.resolve("climate.csv")));
    }
}
