package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;

/**
 * What a disk, an operating system or another run can do to a run. After each: the earlier output whole or the new one, never a mixture;
 * a message that helps; and the next run works. Killing is done {@code weatherlap.kills} times (many in the profile fuzz).
 */
class FaultTest {
    private static final int KILLS = Integer.getInteger("weatherlap.kills", 3);

    @TempDir
    private Path folder;

    @TempDir
    private Path logs;

    private Path out;

    @BeforeEach
    void name() throws IOException {
        folder = folder.toRealPath();
        out = folder.resolve("results");
    }

    @Test
    void killedAtAnyMoment() throws Exception {
        long start = System.nanoTime();
        assertThat(generate(1).ended().status()).isZero();
        long wholeMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
        SplittableRandom random = new SplittableRandom(7);
        int seed = seedOf(out);
        for (int i = 0; i < KILLS; i++) {
            OwnProcess run = generate(100 + i);
            if (i % 2 == 0) {
                run.process().waitFor(random.nextLong(wholeMs + 1), TimeUnit.MILLISECONDS);
            } else {
                waitForTheLastFile(run, random.nextLong(3_000_000));
            }
            run.kill();
            seed = assertWhole(seed, 100 + i);
        }
        Cli last = generate(999).ended();
        assertThat(last.status()).as(last.err()).isZero();
        assertThat(assertWhole(seed, 999)).isEqualTo(999);
        assertThat(namesIn(folder)).containsExactly("results");
    }

    private OwnProcess generate(int seed) throws IOException {
        return OwnProcess.start(
                logs, List.of(), "generate", "--houses", 40, "--seed", seed, "--out", out, "--force", "--quiet");
    }

    /** Until run.json, the last file, is there: what comes then is the exchange of the folders. */
    private void waitForTheLastFile(OwnProcess run, long thenNanos) {
        Path last = folder.resolve(".results.weatherlap-new/run.json");
        while (run.process().isAlive() && !Files.exists(last)) {
            Thread.onSpinWait();
        }
        long until = System.nanoTime() + thenNanos;
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
    }

    /** Which of the two outputs stands; between the two renamings the earlier one stands aside, where the next run finds it. */
    private int assertWhole(int earlier, int fresh) throws IOException {
        Path standing = Files.exists(out) ? out : folder.resolve(".results.weatherlap-earlier");
        int seed = seedOf(standing);
        assertThat(seed).isIn(standing.equals(out) ? List.of(earlier, fresh) : List.of(earlier));
        List<String> named = new ArrayList<>(List.of("run.json"));
        for (Map.Entry<String, String> file : run(standing).outputs().entrySet()) {
            named.add(file.getKey());
            assertThat(Checksum.of(standing.resolve(file.getKey()))).isEqualTo(file.getValue());
        }
        assertThat(namesIn(standing)).containsExactlyInAnyOrderElementsOf(named);
        return seed;
    }

    private static RunFile run(Path output) throws IOException {
        return RunFile.read(output.resolve("run.json")).orElseThrow();
    }

    private static int setting(Path output, String name) throws IOException {
        return Integer.parseInt(run(output).settings().get(name));
    }

    private static int seedOf(Path output) throws IOException {
        return setting(output, "seed");
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void anotherRunHoldsTheFolder() throws Exception {
        try (OutputFolder ignored = new OutputRequest(out, false).open(List.of())) {
            Cli second = OwnProcess.start(folder, List.of(), "generate", "--houses", 1, "--out", out)
                    .ended();
            assertThat(second).isEqualTo(new Cli(2, "", "another run is writing " + out + "; wait for it to end\n"));
            assertThat(out).doesNotExist();
        }
        assertThat(Cli.run("generate", "--houses", 1, "--out", out).status()).isZero();
    }

    @Test
    void ofTwoRunsAtOnceOneWins() throws Exception {
        List<OwnProcess> runs = new ArrayList<>();
        for (int seed : new int[] {1, 2}) {
            runs.add(OwnProcess.start(
                    folder, List.of(), "generate", "--houses", 300, "--seed", seed, "--out", out, "--quiet"));
        }
        List<Cli> ended = List.of(runs.get(0).ended(), runs.get(1).ended());
        assertThat(ended).extracting(Cli::status).containsExactlyInAnyOrder(0, 2);
        int winner = ended.get(0).status() == 0 ? 1 : 2;
        assertThat(ended.get(2 - winner).err()).containsAnyOf("another run is writing", "is not empty");
        assertThat(assertWhole(winner, winner)).isEqualTo(winner);
    }

    /** A limit on the size of files fails a write in the middle, as a full disk does, and needs no rights. */
    @Test
    void aWriteThatFailsHalfWay() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no shell to set limits with");
        assertThat(Cli.run("generate", "--houses", 1, "--out", out).status()).isZero();
        Cli cli = OwnProcess.startUnder(
                        List.of("/bin/bash", "-c", "ulimit -f 128; exec \"$@\"", "limited"),
                        Files.createDirectory(folder.resolve("logs")),
                        List.of("-XX:-UsePerfData"),
                        "generate",
                        "--houses",
                        3000,
                        "--out",
                        out,
                        "--force")
                .ended();
        assertThat(cli.status()).isEqualTo(1);
        assertThat(cli.err())
                .startsWith("cannot read or write: ")
                .contains("nothing was written")
                .hasLineCount(1);
        assertThat(setting(out, "houses")).isEqualTo(1);
        assertThat(namesIn(folder)).containsExactly("logs", "results");
    }

    @Test
    void aFullDisk() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        try (Mount mount = Mount.of(disk, "size=256k")) {
            Path small = disk.resolve("results");
            assertThat(Cli.run("generate", "--houses", 1, "--out", small).status())
                    .isZero();
            Cli cli = Cli.run("generate", "--houses", 3000, "--out", small, "--force");
            assertThat(cli.status()).isEqualTo(1);
            assertThat(cli.err())
                    .startsWith("cannot read or write: ")
                    .containsIgnoringCase("no space left")
                    .contains("nothing was written");
            assertThat(setting(small, "houses")).isEqualTo(1);
            assertThat(namesIn(disk)).containsExactly("results");
        }
    }

    @Test
    void aFolderThatMayOnlyBeRead() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        try (Mount mount = Mount.of(disk, "ro")) {
            Cli cli = Cli.run("generate", "--houses", 1, "--out", disk.resolve("results"));
            assertThat(cli.status()).isEqualTo(2);
            assertThat(cli.err())
                    .startsWith("cannot write " + disk.resolve("results"))
                    .hasLineCount(1);
        }
    }

    @Test
    void housesDoNotNeedMemory() throws Exception {
        OwnProcess small = OwnProcess.start(folder, List.of("-Xmx32m"), "generate", "--houses", 20_000, "--out", out);
        assertThat(small.ended().status()).isZero();
    }

    @Test
    void tooLittleMemory() throws Exception {
        Cli cli = OwnProcess.start(
                        folder, List.of("-Xmx24m"), "generate", "--houses", 1, "--jobs", 100_000, "--out", out)
                .ended();
        assertThat(cli.err()).contains("out of memory", "-Xmx").doesNotContain("\tat ");
        assertThat(cli.status()).isEqualTo(1);
        assertThat(out).doesNotExist();
    }

    /** Less than anything can be done with; and so little that Java would collect garbage for ever and hear no signal. */
    @Test
    void tooLittleMemoryToRunOrToFail() throws Exception {
        for (String most : List.of("-Xmx16m", "-Xmx28m")) {
            Cli cli = OwnProcess.start(
                            folder, List.of(most, "-XX:+UseG1GC", "-XX:-UseSerialGC"), "compare", "--out", out)
                    .ended();
            assertThat(cli.err()).as(most).contains("out of memory", "-Xmx");
            assertThat(cli.status()).as(most).isEqualTo(1);
            assertThat(out).doesNotExist();
        }
    }

    /** A small file system of its own, where the tests may make one. */
    private record Mount(Path at) implements AutoCloseable {
        static Mount of(Path at, String options) throws Exception {
            boolean mounted = call("mount", "-t", "tmpfs", "-o", options, "tmpfs", at.toString());
            assumeTrue(mounted, "may not mount a file system here");
            return new Mount(at);
        }

        private static boolean call(String... command) throws Exception {
            try {
                return new ProcessBuilder(command)
                                .redirectErrorStream(true)
                                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                                .start()
                                .waitFor()
                        == 0;
            } catch (IOException e) {
                return false;
            }
        }

        @Override
        public void close() throws Exception {
            call("umount", at.toString());
        }
    }
}
