package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The README's table of commands and the command line name the same. */
class CommandsInReadmeTest {
    private static final Pattern CODE = Pattern.compile("`([^`\\n]+)`");
    private static final Map<String, CommandLine> COMMANDS =
            Weatherlap.commandLine().getSubcommands();

    @Test
    void everyCommandStandsInTheTable() throws IOException {
        assertThat(rows().map(row -> row.split(" ")[0]).distinct())
                .containsExactlyInAnyOrderElementsOf(COMMANDS.keySet());
    }

    /** In the table and wherever the page writes {@code weatherlap COMMAND}. */
    @Test
    void everyCommandAndOptionExists() throws IOException {
        List<String> written = Stream.concat(
                        rows(),
                        code(readme())
                                .filter(code -> code.startsWith("weatherlap "))
                                .map(code -> code.substring("weatherlap ".length())))
                .toList();
        assertThat(written).contains("generate --template", "compare --repeat run.json");
        assertThat(written).allSatisfy(line -> {
            String[] words = line.split(" ");
            assertThat(COMMANDS).containsKey(words[0]);
            assertThat(Stream.of(words).filter(word -> word.startsWith("-"))).allSatisfy(option -> assertThat(
                            COMMANDS.get(words[0]).getCommandSpec().findOption(option))
                    .isNotNull());
        });
    }

    /** The commands that head the rows of the table. */
    private static Stream<String> rows() throws IOException {
        String chapter = readme().split("\n## Commands\n", 2)[1].split("\n## ", 2)[0];
        return chapter.lines().filter(line -> line.startsWith("| `")).flatMap(line -> code(line.split("\\|")[1]));
    }

    private static Stream<String> code(String text) {
        return CODE.matcher(text).results().map(match -> match.group(1));
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("../README.md"));
    }
}
