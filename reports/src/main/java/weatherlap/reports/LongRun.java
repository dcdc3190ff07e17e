package weatherlap.reports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import weatherlap.reports.jobs.SecondCompiler;

/**
 * A run so long that Java's second compiler pays. The launcher of the bundle starts Java with the first alone, which is faster up to some
 * thousand houses; such a run starts the program once more, with both.
 */
final class LongRun {
    /** Bytes of {@code openings.csv}; about 6,500 houses of 13 openings. */
    static final long LARGE = 11L << 20;

    /**
     * The second compiler is to inline less than it would: it compiles for half as long, and a house takes no longer. Of 6,000 houses a fifth
     * of the processor time is saved, by the first compiler alone no more than by both as they come. New objects may take
     * 150 MB: else they fill a quarter of the machine's memory, for no gain. Once the houses are done, the second compiler compiles nothing
     * more ({@link SecondCompiler}), which saves a twentieth of 10,000 houses. No counters for tools that watch Java, and the archive of
     * classes where it was made to lie, as the launcher has it: a tenth of a second.
     */
    private static final List<String> OPTIONS = List.of(
            "-XX:+UseParallelGC",
            "-XX:-UsePerfData",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=0",
            "-XX:MaxNewSize=150m",
            "-XX:MaxInlineLevel=4",
            "-XX:FreqInlineSize=80",
            "-XX:InlineSmallCode=800");

    private LongRun() {}

    /** The exit status of the other run; empty where this one goes on itself. */
    static OptionalInt status(String[] arguments) {
        String program = System.getProperty("weatherlap.launched");
        if (program == null || !readsLarge(arguments)) {
            return OptionalInt.empty();
        }
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(OPTIONS);
        command.add("-D" + SecondCompiler.AFTER_HOUSES + "="
                + Path.of(System.getProperty("java.home"), "conf", "after-houses.json"));
        command.addAll(List.of("-m", program));
        command.addAll(List.of(arguments));
        try {
            Process other = new ProcessBuilder(command).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> end(other)));
            return OptionalInt.of(other.waitFor());
        } catch (IOException e) {
            return OptionalInt.empty(); // no second Java can be started: slower, but the same
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(1);
        }
    }

    /** Whether any folder named is large, but for the one that an earlier output may stand in. */
    static boolean readsLarge(String[] arguments) {
        return IntStream.range(0, arguments.length)
                .anyMatch(i -> (i == 0 || !arguments[i - 1].equals("--out")) && isLarge(arguments[i]));
    }

    private static boolean isLarge(String argument) {
        try {
            return Files.size(Path.of(argument).resolve("openings.csv")) > LARGE;
        } catch (IOException | RuntimeException e) {
            return false; // not a folder of tables
        }
    }

    /** Whoever ends this run ends the other, which clears up after itself first. */
    private static void end(Process other) {
        other.destroy();
        try {
            other.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
