package weatherlap.reports.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A reader takes in a room of 25 files and a file of 300 lines, not more. */
class SizesTest {
    private static final int MOST_FILES = 25;
    private static final int MOST_LINES = 300;

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String module : List.of("sim", "datasets", "analysis", "charts", "reports")) {
            try (Stream<Path> files = Files.walk(Document.ROOT.resolve(module).resolve("src/main/java"))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
            }
        }
        return sources;
    }

    @Test
    void noPackageIsCrowded() throws IOException {
        Map<Path, Long> files =
                sources().stream().collect(Collectors.groupingBy(Path::getParent, Collectors.counting()));
        assertThat(files).hasSizeGreaterThan(30).allSatisfy((folder, count) -> assertThat(count)
                .as("files in " + folder)
                .isLessThanOrEqualTo(MOST_FILES));
    }

    @Test
    void noFileIsLong() throws IOException {
        for (Path file : sources()) {
            assertThat(Files.readAllLines(file).size()).as("lines of " + file).isLessThanOrEqualTo(MOST_LINES);
        }
    }
}
