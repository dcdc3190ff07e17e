package weatherlap.reports.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SecondCompilerTest {
    @TempDir
    private Path folder;

    @AfterEach
    void forget() {
        System.clearProperty(SecondCompiler.AFTER_HOUSES);
    }

    @Test
    void isLeftAloneUnlessAskedFor() {
        assertThat(SecondCompiler.afterHouses()).isFalse();
    }

    @Test
    void takesWhatTheFileSays() throws IOException {
        assertThat(told("[{match: \"no/such/place.*\", c2: {Exclude: true}}]")).isTrue();
    }

    @Test
    void goesOnWhereTheFileIsWrongOrMissing() throws IOException {
        assertThat(told("nothing that a compiler is told")).isFalse();
        System.setProperty(
                SecondCompiler.AFTER_HOUSES, folder.resolve("missing").toString());
        assertThat(SecondCompiler.afterHouses()).isFalse();
    }

    private boolean told(String directives) throws IOException {
        Path file = folder.resolve("with a space.json");
        Files.writeString(file, directives);
        System.setProperty(SecondCompiler.AFTER_HOUSES, file.toString());
        return SecondCompiler.afterHouses();
    }
}
