package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.Corpus;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;

/**
 * Whatever bytes come in: exit status 2 with a message for every line, or a result. Spoilt copies of good files, {@code weatherlap.fuzz} of
 * them (the profile fuzz tries many), and bytes that never were a table. Inputs that are still good are simulated, and a few of
 * them reported whole.
 */
class FuzzTest {
    private static final int TRIES = Integer.getInteger("weatherlap.fuzz", 150);
    private static final int REPORT_EVERY = 40;
    private static final long FIRST_SEED = Long.getLong("weatherlap.fuzz.seed", 1);

    /** {@code file:row:column: what}, or of a file as a whole. */
    private static final Pattern MESSAGE = Pattern.compile("[\\w-]+\\.(csv|toml)(:\\d+)?(:.+)?: .+");

    private static Path folder;
    private static List<Path> files;

    @BeforeAll
    @BeforeContainer
    static void writeGoodInput() throws IOException {
        folder = Files.createTempDirectory("fuzz");
        Corpus.PORTFOLIO.writeGood(folder.resolve("houses"));
        Corpus.CLIMATE.writeGood(folder);
        Corpus.MIX.writeGood(folder);
        Corpus.JOBS.writeGood(folder);
        assertThat(Cli.run("assumptions", "--out", folder.resolve("tables")).status())
                .isZero();
        Files.delete(folder.resolve("tables/run.json"));
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @AfterAll
    @AfterContainer
    static void clear() throws IOException {
        delete(folder);
    }

    @Test
    void spoiltFilesAreRefusedOrComputed() throws IOException {
        int accepted = 0;
        for (int i = 0; i < TRIES; i++) {
            long seed = FIRST_SEED + i;
            Path file = files.get(i % files.size());
            byte[] good = Files.readAllBytes(file);
            Files.write(file, new Mutator(seed).spoil(good));
            try {
                if (isAccepted(file, "seed " + seed + " in " + file.getFileName(), accepted)) {
                    accepted++;
                }
            } finally {
                Files.write(file, good);
            }
        }
        assertThat(accepted).as("inputs that are still good").isBetween(1, TRIES - 1);
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void bytesThatNeverWereATableAreRefused(@ForAll @Size(max = 300) byte[] bytes, @ForAll byte which)
            throws IOException {
        Path file = files.get(Math.floorMod(which, files.size()));
        byte[] good = Files.readAllBytes(file);
        Files.write(file, bytes);
        try {
            assertThat(isAccepted(file, file.getFileName() + " of noise", 1)).isFalse();
        } finally {
            Files.write(file, good);
        }
    }

    /** Whether the commands take the file, after holding what they say or make of it to the rules. */
    private static boolean isAccepted(Path file, String what, int acceptedBefore) throws IOException {
        Path out = folder.resolve("out");
        String name = file.getFileName().toString();
        Cli cli =
                switch (name) {
                    case "mix.csv" -> Cli.run("generate", "--houses", 3, "--mix", file, "--out", out);
                    case "jobs.csv" -> Cli.run("calibrate", file, "--out", out, "--quiet");
                    default -> Cli.run(arguments("check", List.of()));
                };
        assertThat(cli.err()).as(what).doesNotContain("\tat ", Failures.BROKE, "out of memory");
        if (cli.status() == 0) {
            if (Files.exists(out)) {
                assertThat(name.equals("jobs.csv") || Cli.run("check", out).status() == 0)
                        .as(what)
                        .isTrue();
                delete(out);
            } else {
                simulate(what);
                if (acceptedBefore % REPORT_EVERY == 0) {
                    report(out, what);
                }
            }
            return true;
        }
        assertThat(cli.status()).as(what + ": " + cli.err()).isEqualTo(2);
        assertThat(cli.notes()).as(what).isNotEmpty().allMatch(line -> MESSAGE.matcher(line)
                .matches());
        assertThat(cli.out()).as(what).isEmpty();
        assertThat(out).doesNotExist();
        return false;
    }

    private static Object[] arguments(String command, List<Object> more) {
        List<Object> arguments = new ArrayList<>(List.of(
                command,
                folder.resolve("houses"),
                "--assumptions",
                folder.resolve("tables"),
                "--climate",
                folder.resolve("climate.csv"),
                "--set",
                "draws=4"));
        arguments.addAll(more);
        return arguments.toArray();
    }

    private static void simulate(String what) {
        Inputs inputs = Inputs.read(new InputPaths(
                Optional.of(folder.resolve("houses")),
                Optional.of(folder.resolve("tables")),
                Optional.of(folder.resolve("climate.csv")),
                List.of("draws=4")));
        try {
            for (HouseResult house :
                    inputs.simulator().run(inputs.portfolio(), 1).houses()) {
                assertThat(house.methods()).as(what).hasSizeGreaterThan(1);
                for (MethodResult result : house.methods().values()) {
                    assertThat(List.of(
                                    result.priceUsd(),
                                    result.costUsd().mean(),
                                    result.horizonCostUsd().p90(),
                                    result.labourHours().p10(),
                                    result.leakScore().mean(),
                                    result.glassFt2()))
                            .as(what)
                            .allMatch(Double::isFinite);
                }
            }
        } catch (RuntimeException e) {
            throw new AssertionError(what, e);
        }
    }

    private static void report(Path out, String what) throws IOException {
        Cli cli = Cli.run(arguments("compare", List.of("--out", out)));
        assertThat(cli.status()).as(what + ": " + cli.err()).isZero();
        assertThat(out.resolve("report.pdf")).isNotEmptyFile();
        delete(out);
    }

    private static void delete(Path whole) throws IOException {
        try (Stream<Path> all = Files.walk(whole)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
