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
        assertThat(readsLarge("compare", folder.toString())).isFalse();
        write(LongRun.LARGE);
        assertThat(readsLarge("compare", folder.toString())).isFalse();
        write(LongRun.LARGE + 1);
        assertThat(readsLarge("compare", folder.toString())).isTrue();
    }

    @Test
    void anEarlierOutputIsNotRead() throws IOException {
        write(LongRun.LARGE + 1);
        assertThat(readsLarge("compare", "houses", "--out", folder.toString())).isFalse();
        assertThat(readsLarge("compare", folder.toString(), "--out", "report")).isTrue();
    }

    @Test
    void whatIsNoFolderIsNotLarge() {
        assertThat(readsLarge("compare", "--set=\0")).isFalse();
    }

    private static boolean readsLarge(String... arguments) {
        return LongRun.readsLarge(arguments);
    }

    private void write(long bytes) throws IOException {
        try (RandomAccessFile openings =
                new RandomAccessFile(folder.resolve("openings.csv").toFile(), "rw")) {
            openings.setLength(bytes);
        }
    }

    @Test
    void withoutTheLauncherNothingStartsAgain() {
        assertThat(LongRun.status(new String[] {"compare", folder.toString()})).isEmpty();
    }
}
