package weatherlap.reports.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.disk.Act;
import weatherlap.datasets.disk.FaultyDisk;
import weatherlap.datasets.disk.Trouble;

/**
 * A run on a disk that is full from any write on, that refuses any one act, or that is killed before any one act: the earlier output
 * whole or the new one, and the next run works and leaves nothing else.
 */
class EveryStepTest {
    @TempDir
    private Path parent;

    private Path target;
    private FaultyDisk disk;
    private OutputFolder open;

    @BeforeEach
    void name() throws IOException {
        parent = parent.toRealPath();
        target = parent.resolve("results");
    }

    /** The process is gone: nothing after it happens either, not even what clears up. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1;
    }

    /** Fails the n-th act that changes the disk, and after it those that the trouble goes on for. */
    private final class From implements Trouble {
        private final int n;
        private final String kind;
        private int seen;
        private boolean struck;

        From(int n, String kind) {
            this.n = n;
            this.kind = kind;
        }

        @Override
        public void before(Act act, Path path) throws IOException {
            boolean counts = kind.equals("full") ? act.fills() : act.changes();
            boolean now = counts && seen++ == n;
            struck |= now;
            switch (kind) {
                case "killed" -> {
                    if (struck) {
                        throw new Killed();
                    }
                }
                case "full" -> {
                    if (struck && act.fills()) {
                        throw new FileSystemException(path.toString(), null, "No space left on device");
                    }
                }
                default -> {
                    if (now) {
                        throw new AccessDeniedException(path.toString());
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"killed", "full", "refused"})
    void aFirstOutputIsWholeOrNotThere(String kind) throws IOException {
        int steps = 0;
        while (strikes(steps, kind)) {
            assertThat(standing()).as(kind + " at step " + steps).isIn("", "new");
            nextRunWorks();
            Folders.deleteWhole(target);
            steps++;
        }
        assertThat(steps).as("steps tried").isGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"killed", "full", "refused"})
    void anEarlierOutputStandsUntilTheNewOneDoes(String kind) throws IOException {
        int steps = 0;
        write(parent, "old");
        while (strikes(steps, kind)) {
            assertThat(standing()).as(kind + " at step " + steps).isIn("old", "new");
            nextRunWorks();
            Folders.deleteWhole(target);
            write(parent, "old");
            steps++;
        }
        assertThat(steps).as("steps tried").isGreaterThan(8);
    }

    /** Whether the trouble came before the run was through. */
    private boolean strikes(int n, String kind) throws IOException {
        From trouble = new From(n, kind);
        disk = new FaultyDisk(parent);
        disk.set(trouble);
        String before = standing();
        try {
            write(disk.path(parent), "new");
            assertThat(standing()).isEqualTo("new");
        } catch (Killed e) {
            disk.closeAll();
        } catch (IOException | OutputRefused e) {
            assertThat(standing()).as("after a run that says that it failed").isEqualTo(before);
            if (kind.equals("full")) {
                assertThat(e).hasMessageContaining("No space left on device");
                assertThat(names())
                        .as("beside the output")
                        .isEqualTo(before.isEmpty() ? List.of() : List.of("results"));
            }
        }
        disk.set(Trouble.NONE);
        return trouble.struck;
    }

    private void write(Path where, String text) throws IOException {
        RunRecord run = new RunRecord("1", "test", Map.of("text", text), new TreeMap<>());
        try (OutputFolder folder = OutputFolder.open(where.resolve("results"), true, List.of())) {
            open = folder;
            folder.write("a.csv", out -> out.write(text.getBytes(UTF_8)));
            folder.write("charts/b.svg", out -> out.write(text.getBytes(UTF_8)));
            try (var part = folder.scratch().begin().write()) {
                part.write(7);
            }
            folder.commit(run);
        }
    }

    /** The text of the output that stands, or that the next run puts back; empty where there is none. It is whole, or it fails. */
    private String standing() throws IOException {
        Path aside = parent.resolve(".results.weatherlap-earlier");
        Path there = Files.exists(target) ? target : aside;
        if (!Files.exists(there)) {
            return "";
        }
        RunFile run = RunFile.read(there.resolve(RunRecord.FILE)).orElseThrow();
        SortedSet<String> files = Folders.files(there);
        assertThat(files).containsExactly("a.csv", "charts/b.svg", "run.json");
        for (Map.Entry<String, String> file : run.outputs().entrySet()) {
            assertThat(Checksum.of(there.resolve(file.getKey()))).isEqualTo(file.getValue());
        }
        return run.settings().get("text");
    }

    private void nextRunWorks() throws IOException {
        write(parent, "next");
        assertThat(standing()).isEqualTo("next");
        assertThat(names()).containsExactly("results");
        open.close();
    }

    private List<String> names() {
        return List.of(parent.toFile().list());
    }

    @Test
    void aSingleFileIsWholeOrNotThere() throws IOException {
        for (String kind : List.of("killed", "full", "refused")) {
            boolean struck = true;
            for (int n = 0; struck; n++) {
                From trouble = new From(n, kind);
                disk = new FaultyDisk(parent);
                disk.set(trouble);
                Path file = target.resolve("houses.xlsx");
                try {
                    OutputFile.write(disk.path(file), out -> out.write("whole".getBytes(UTF_8)));
                } catch (Killed e) {
                    disk.closeAll();
                } catch (OutputRefused e) {
                    assertThat(file).doesNotExist();
                }
                if (Files.exists(file)) {
                    assertThat(file).hasContent("whole");
                }
                disk.set(Trouble.NONE);
                struck = trouble.struck;
                Folders.deleteWhole(target);
            }
        }
    }
}
