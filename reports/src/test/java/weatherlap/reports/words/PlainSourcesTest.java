package weatherlap.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the program may say, it says in plain words: the texts in its sources and pages, and the messages of bad input. */
class PlainSourcesTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");
    private static final Pattern CHAIN =
            Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*\"(?:\\s*\\+\\s*\"(?:[^\"\\\\\n]|\\\\.)*\")*");
    private static final Pattern MESSAGE = Pattern.compile("(?m)^[>?] (\\S+: )(.*)$");

    @ParameterizedTest
    @ValueSource(strings = {"sim", "datasets", "analysis", "charts", "reports"})
    void noTextOfASourceHoldsAWordThatAShopShouldNotHaveToRead(String module) throws IOException {
        int texts = 0;
        for (Path file : files(ROOT.resolve(module).resolve("src/main/java"), ".java")) {
            Matcher chain =
                    CHAIN.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""));
            while (chain.find()) {
                String text = chain.group().replaceAll("\"\\s*\\+\\s*\"", "").replace("\"", "");
                if (text.contains(" ")) {
                    texts++;
                    PlainWords.unsaid(file.getFileName() + ": " + text, text);
                }
            }
        }
        assertThat(texts).isGreaterThan(40);
    }

    /** Only what goes wrong is said there; what is found is put into words above. */
    @Test
    void theSimulationHoldsNoSentence() throws IOException {
        for (Path file : files(ROOT.resolve("sim/src/main/java"), ".java")) {
            String source = COMMENT.matcher(Files.readString(file)).replaceAll("");
            for (String statement : source.split("[;{}]\\s*\n")) {
                if (!statement.contains("Exception(")) {
                    assertThat(statement)
                            .as(file.toString())
                            .doesNotContain("String.format(", ".formatted(")
                            .doesNotContainPattern("\"[A-Z][^\"\n]* [^\"\n]*\\.[ \"]");
                }
            }
        }
    }

    @Test
    void noPageDoes() throws IOException {
        List<Path> pages = Stream.concat(
                        files(Path.of("src/main/jte"), ".jte").stream(),
                        files(Path.of("src/main/resources"), ".txt").stream())
                .toList();
        assertThat(pages).hasSizeGreaterThan(10);
        for (Path page : pages) {
            PlainWords.unsaid(
                    page.toString(), Files.readString(page).replaceAll("(?s)<%--.*?--%>|@\\w+.*|<[^>]*>", " "));
        }
    }

    /** The name before the colon and what is quoted are the reader's own, and words that a table may hold keep their spelling. */
    @ParameterizedTest
    @ValueSource(strings = {"portfolio", "fit", "assumptions", "climate", "jobs", "callbacks", "shop", "mix"})
    void messagesOfBadInputReadEasily(String corpus) throws IOException {
        Matcher messages = MESSAGE.matcher(Files.readString(
                ROOT.resolve("datasets/src/test/resources/weatherlap/datasets/corpus/" + corpus + ".txt")));
        StringBuilder all = new StringBuilder();
        while (messages.find()) {
            String said = messages.group(2).replaceAll("\"[^\"]*\"|\\(expected: .*|is not one of .*", "it");
            PlainWords.unsaid(messages.group(), said);
            all.append("It ").append(said).append(". ");
        }
        PlainWords.hold(all.toString(), 9);
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
