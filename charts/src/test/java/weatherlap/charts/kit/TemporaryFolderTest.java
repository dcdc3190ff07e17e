package weatherlap.charts.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemporaryFolderTest {
    @TempDir
    private Path parent;

    @Test
    void whatADeadProcessLeftIsCleared() throws IOException {
        Path dead = leftBehind("dead");
        Path own = TemporaryFolder.make(parent);
        assertThat(dead).doesNotExist();
        assertThat(own).isDirectory().isNotEmptyDirectory();
    }

    @Test
    void whatALivingProcessHoldsStays() throws IOException {
        Path living = leftBehind("living");
        try (FileChannel lock = FileChannel.open(living.resolve(".lock"), StandardOpenOption.WRITE)) {
            assertThat(lock.tryLock()).isNotNull();
            TemporaryFolder.make(parent);
            assertThat(living.resolve("fonts/a.ttf")).exists();
        }
    }

    @Test
    void theLockOutlivesACollectionOfGarbage() throws Exception {
        Path own = TemporaryFolder.make(parent);
        for (int i = 0; i < 5; i++) {
            System.gc();
            TimeUnit.MILLISECONDS.sleep(20);
        }
        TemporaryFolder.make(parent);
        assertThat(own).isDirectory();
    }

    @Test
    void aFolderThatWasClearedBeforeItWasLockedIsNotHeld() throws IOException {
        Path file = leftBehind("begun").resolve(".lock");
        try (FileChannel lock = FileChannel.open(file, StandardOpenOption.WRITE)) {
            Files.delete(file);
            assertThat(TemporaryFolder.isHeld(lock, file)).isFalse();
        }
        Path kept = leftBehind("kept").resolve(".lock");
        try (FileChannel lock = FileChannel.open(kept, StandardOpenOption.WRITE)) {
            assertThat(TemporaryFolder.isHeld(lock, kept)).isTrue();
        }
    }

    @Test
    void nothingOfOthersIsTouched() throws IOException {
        Path noLock = Files.createDirectories(parent.resolve("weatherlap-own-begun"));
        Path otherName = Files.createDirectories(parent.resolve("somebody"));
        Path elsewhere = Files.createDirectory(parent.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve(".lock"), "");
        Path link = Files.createSymbolicLink(parent.resolve("weatherlap-own-link"), elsewhere);
        Path dead = leftBehind("dead");
        Files.createSymbolicLink(dead.resolve("inner"), elsewhere);
        TemporaryFolder.make(parent);
        assertThat(dead).doesNotExist();
        assertThat(noLock).isDirectory();
        assertThat(otherName).isDirectory();
        assertThat(link).isSymbolicLink();
        assertThat(elsewhere.resolve(".lock")).exists();
    }

    private Path leftBehind(String name) throws IOException {
        Path folder = parent.resolve("weatherlap-own-" + name);
        Files.createDirectories(folder.resolve("fonts"));
        Files.writeString(folder.resolve("fonts/a.ttf"), "glyphs");
        Files.writeString(folder.resolve(".lock"), "");
        return folder;
    }
}
