package weatherlap.datasets.shop;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;

/** Every problem of a shop file and its logo is found at once. */
class ShopCorpusTest {
    @TempDir
    Path temporary;

    @TestFactory
    Stream<DynamicTest> badShops() {
        return Corpus.SHOP.tests("corpus/shop.txt", temporary, ShopFile::read);
    }
}
