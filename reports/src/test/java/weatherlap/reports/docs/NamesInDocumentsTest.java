package weatherlap.reports.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the documents name is there: files that links lead to, classes, methods of tests, and folders of the project. */
class NamesInDocumentsTest {
    private static final Pattern CLASS =
            Pattern.compile("([A-Z][A-Za-z0-9]*[a-z][A-Za-z0-9]*)(?:\\.([a-z][A-Za-z0-9]*))?");
    private static final Pattern PATH = Pattern.compile("(sim|datasets|analysis|charts|reports)/[\\w./-]+");
    /** Written like classes and not ours. */
    private static final List<String> OTHERS = List.of("EXAMPLE");

    static List<Document> documents() throws IOException {
        return Document.all();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linksLeadSomewhere(Document document) {
        assertThat(document.links()).allSatisfy(link -> {
            String[] parts = link.split("#", 2);
            Path target = document.file().resolveSibling(parts[0]).normalize();
            assertThat(target).as(link).exists();
            if (parts.length == 2) {
                assertThat(Files.readAllLines(target).stream()
                                .filter(line -> line.startsWith("#"))
                                .map(NamesInDocumentsTest::anchor))
                        .as(link)
                        .contains(parts[1]);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linksFromClassesLeadToThem(Document document) {
        assertThat(document.classLinks())
                .allSatisfy((link, name) ->
                        assertThat(Path.of(link).getFileName()).hasToString(name.split("\\.", 2)[0] + ".java"));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void classesAndMethodsAreThere(Document document) throws IOException {
        Map<String, String> sources = sources();
        assertThat(document.code().stream().filter(word -> CLASS.matcher(word).matches()))
                .filteredOn(word -> !OTHERS.contains(word))
                .allSatisfy(word -> {
                    String[] parts = word.split("\\.", 2);
                    assertThat(sources).as(word).containsKey(parts[0]);
                    if (parts.length == 2) {
                        assertThat(sources.get(parts[0])).as(word).containsPattern("\\b" + parts[1] + "\\(");
                    }
                });
    }

    @ParameterizedTest
    @MethodSource("documents")
    void foldersAndFilesAreThere(Document document) {
        assertThat(document.code().stream().filter(word -> PATH.matcher(word).matches()))
                .filteredOn(word -> !word.contains("/target/"))
                .allSatisfy(word -> {
                    String[] parts = word.split("/", 2);
                    Path module = Document.ROOT.resolve(parts[0]);
                    assertThat(Stream.of(
                                    module.resolve(parts[1]),
                                    module.resolve("src/main/java/weatherlap/" + word),
                                    module.resolve("src/test/java/weatherlap/" + word)))
                            .as(word)
                            .anyMatch(Files::exists);
                });
    }

    /** The pages that matter are among those looked at, and hold what is looked for. */
    @Test
    void thePagesAreSeen() throws IOException {
        assertThat(documents())
                .extracting(
                        document -> Document.ROOT.relativize(document.file()).toString())
                .contains(
                        "README.md",
                        "DEVELOPERS.md",
                        "reports/README.md",
                        "sim/README.md",
                        "datasets/README.md",
                        "analysis/README.md");
        Document model = Document.of("sim/README.md");
        assertThat(model.code()).contains("FaultTreePublishedTest");
        assertThat(model.classLinks()).hasSizeGreaterThan(10);
    }

    private static String anchor(String heading) {
        return heading.replaceFirst("^#+ ", "")
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-');
    }

    /** Text of every class of the project by its name. */
    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new HashMap<>();
        for (String module : List.of("sim", "datasets", "analysis", "charts", "reports", "reports/bundle")) {
            try (Stream<Path> files = Files.walk(Document.ROOT.resolve(module).resolve("src"))) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
                }
            }
        }
        return sources;
    }
}
