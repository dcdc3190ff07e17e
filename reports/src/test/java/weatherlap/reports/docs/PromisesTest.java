package weatherlap.reports.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every promise names tests that hold it, and these are tests. */
class PromisesTest {
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w*Test)(?:\\.(\\w+))?`");

    @Test
    void everyPromiseIsHeldByATest() throws IOException {
        List<String> promises = Document.of("reports/README.md")
                .text()
                .split("## What is promised\n", 2)[1]
                .lines()
                .filter(line -> line.startsWith("| ") && line.endsWith(". |") || line.contains("Test"))
                .toList();
        assertThat(promises).hasSizeGreaterThan(15);
        Map<String, String> sources = tests();
        for (String promise : promises) {
            List<Matcher> named = TEST.matcher(promise)
                    .results()
                    .map(found -> {
                        Matcher one = TEST.matcher(found.group());
                        one.matches();
                        return one;
                    })
                    .toList();
            assertThat(named).as(promise).isNotEmpty();
            for (Matcher test : named) {
                assertThat(sources).as(promise).containsKey(test.group(1));
                if (test.group(2) != null) {
                    assertThat(sources.get(test.group(1)))
                            .as(promise)
                            .containsPattern("@(Test|ParameterizedTest|Property)\\b[^{}]*(\\{[^{}]*}[^{}]*)?\\bvoid "
                                    + test.group(2) + "\\(");
                }
            }
        }
    }

    private static Map<String, String> tests() throws IOException {
        try (Stream<Path> files = Files.walk(Document.ROOT)) {
            return files.filter(path -> path.toString().contains("/src/test/java/"))
                    .filter(path -> path.toString().endsWith("Test.java"))
                    .collect(Collectors.toMap(
                            path -> path.getFileName().toString().replace(".java", ""),
                            PromisesTest::text,
                            (a, b) -> a));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
