package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.disk.Act;
import weatherlap.datasets.disk.FaultyDisk;

/** What this user may not see is not said to be missing. */
class FolderTest {
    @TempDir
    private Path folder;

    private FaultyDisk disk;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("houses.csv"), "house_id\n");
        disk = new FaultyDisk(folder);
    }

    /** A folder of mode 444: its names can be listed, nothing in it can be asked for. */
    @Test
    void aFolderThatMayNotBeEntered() {
        deny(Act.LOOK, folder.resolve("houses.csv"));
        assertThat(said()).startsWith("houses.csv: cannot be reached; check the permissions of the folder \"");
        assertThat(Folder.denied(disk.path(folder.resolve("houses.csv")))).startsWith("cannot be reached");
    }

    @Test
    void aFolderInOneThatMayNotBeEntered() {
        deny(Act.LOOK, folder);
        assertThat(said()).startsWith("houses.csv: cannot be reached; check the permissions of the folders around \"");
    }

    @Test
    void aFileThatMayNotBeRead() {
        deny(Act.READ, folder.resolve("houses.csv"));
        assertThat(said()).isEqualTo("houses.csv: cannot be opened; check its permissions");
        assertThat(Folder.denied(disk.path(folder.resolve("houses.csv")))).startsWith("cannot be opened");
    }

    @Test
    void nothingIsDeniedOfWhatIsNotThere() {
        assertThat(Folder.denied(folder.resolve("houses.csv"))).isEmpty();
        assertThat(Folder.denied(folder.resolve("nothing"))).isEmpty();
    }

    private void deny(Act denied, Path what) {
        disk.set((act, path) -> {
            if (act == denied && path.startsWith(what)) {
                throw new AccessDeniedException(path.toString());
            }
        });
    }

    private String said() {
        Problems problems = new Problems();
        assertThat(Folder.of(disk.path(folder)).find("houses.csv", problems)).isEmpty();
        return problems.errors().get(0).toString();
    }
}
