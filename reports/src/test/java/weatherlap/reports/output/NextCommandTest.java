package weatherlap.reports.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NextTest {
    @Test
    void quotesOnlyWhatNeedsIt() {
        assertThat(NextCommand.command("check", List.of("my-houses", "my houses")))
                .isEqualTo("weatherlap check my-houses \"my houses\"");
        assertThat(NextCommand.command("check", "C:\\houses\\1.2")).isEqualTo("weatherlap check C:\\houses\\1.2");
    }

    /** Validation: a POSIX shell reads the word back. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a b",
                "hall & porch",
                "a;b",
                "(2)",
                "it's",
                "5 $",
                "`x`",
                "say \"hi\"",
                "wow!",
                "it's $5",
                "über",
                "*",
                ""
            })
    void aShellReadsTheWordBack(String word) throws IOException, InterruptedException {
        Assumptions.assumeTrue(File.separatorChar == '/', "no POSIX shell");
        String line = NextCommand.command(word).replaceFirst("^weatherlap ", "");
        Process shell = new ProcessBuilder("sh", "-c", "printf %s " + line).start();
        assertThat(new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                .isEqualTo(word);
        assertThat(shell.waitFor()).isZero();
    }
}
