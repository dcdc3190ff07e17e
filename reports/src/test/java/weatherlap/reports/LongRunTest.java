package weatherlap.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongRunTest {
    @TempDir
    private Path folder;

    @Test
    void aFolderOfManyOpeningsIsLarge() throws IOException {
        assertThat(LongRun.isLarge(folder.toString())).isFalse();
        try (RandomAccessFile openings =
                new RandomAccessFile(folder.resolve("openings.csv").toFile(), "rw")) {
            openings.setLength(LongRun.LARGE);
            assertThat(LongRun.isLarge(folder.toString())).isFalse();
            openings.setLength(LongRun.LARGE + 1);
        }
        assertThat(LongRun.isLarge(folder.toString())).isTrue();
    }

    @Test
    void whatIsNoFolderIsNotLarge() {
        assertThat(LongRun.isLarge("compare")).isFalse();
        assertThat(LongRun.isLarge("--set=\0")).isFalse();
    }

    @Test
    void withoutTheLauncherNothingStartsAgain() {
        assertThat(LongRun.status(new String[] {"compare", folder.toString()})).isEmpty();
    }
}
