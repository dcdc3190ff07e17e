package weatherlap.bundle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The runtime's archive of classes that are kept ready: those that the commands of every day load, taken down while these run.
 *
 * <p>Lambdas are kept where both who makes them and what they implement are the JDK's own or the program's: Java 17 ends in a fault over those
 * that implement a type of an old class file.
 */
final class ReadyClasses {
    private static final Pattern KEPT_LAMBDA =
            Pattern.compile("@lambda-proxy (?:java|weatherlap)/\\S+ \\S+ \\([^)]*\\)L(?:java|weatherlap)/.*");

    private final List<String> program;
    private final Path work;
    private final Set<String> seen = new LinkedHashSet<>();

    private ReadyClasses(List<String> program, Path work) {
        this.program = program;
        this.work = work;
    }

    /** Puts the archive in its place in the runtime, which the program starts from by {@code program}. */
    static void of(List<String> program, Path work) throws IOException {
        ReadyClasses classes = new ReadyClasses(program, work);
        String book = work.resolve("book.xlsx").toString();
        classes.watch("--help");
        classes.watch(
                "handout", "--house", "G0014", "--out", work.resolve("handout").toString());
        classes.watch(
                "crewsheet",
                "--house",
                "G0014",
                "--method",
                "insert",
                "--out",
                work.resolve("crew").toString());
        classes.watch("generate", "--template", "--out", book);
        classes.watch(
                "compare",
                book,
                "--draws",
                "64",
                "--out",
                work.resolve("report").toString());
        Path list = work.resolve("classes.list");
        Files.write(list, classes.seen);
        classes.run("-Xshare:dump", "-XX:SharedClassListFile=" + list);
    }

    private void watch(String... command) throws IOException {
        Path loaded = work.resolve("loaded.list");
        run("-XX:TieredStopAtLevel=1", "-XX:DumpLoadedClassList=" + loaded, command);
        try (Stream<String> lines = Files.lines(loaded)) {
            lines.filter(line -> !line.startsWith("@lambda-proxy")
                            || KEPT_LAMBDA.matcher(line).matches())
                    .forEach(seen::add);
        }
    }

    private void run(String flag, String other, String... command) {
        List<String> whole = new ArrayList<>(program);
        whole.addAll(1, List.of(flag, other));
        whole.addAll(List.of(command));
        Tools.run(whole);
    }
}
