package weatherlap.bundle;

import java.io.IOException;
import java.io.UncheckedIOException;
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

    private ReadyClasses(List<String> program, Path work) {
        this.program = program;
        this.work = work;
    }

    /** Puts the archive in its place in the runtime, which the program starts from by {@code program}. */
    static void of(List<String> program, Path work) throws IOException {
        ReadyClasses classes = new ReadyClasses(program, work);
        String book = work.resolve("book.xlsx").toString();
        classes.run(List.of("generate", "--template", "--out", book));
        List<List<String>> everyDay = List.of(
                List.of("--help"),
                List.of("compare", book, "--draws", "64", "--out"),
                List.of("handout", "--house", "G0014", "--out"),
                List.of("crewsheet", "--house", "G0014", "--method", "insert", "--out"),
                List.of("generate", "--template", "--out"));
        Set<String> seen = new LinkedHashSet<>();
        everyDay.parallelStream().map(classes::loaded).forEachOrdered(seen::addAll);
        Path list = work.resolve("classes.list");
        Files.write(list, seen);
        classes.run(List.of(), "-Xshare:dump", "-XX:SharedClassListFile=" + list);
    }

    /** The classes that a command loads, as Java lists them; an output to be named last gets a place. */
    private List<String> loaded(List<String> command) {
        try {
            Path place = Files.createTempDirectory(work, "watched");
            List<String> whole = new ArrayList<>(command);
            if (command.get(command.size() - 1).equals("--out")) {
                whole.add(place.resolve("output").toString());
            }
            Path list = place.resolve("loaded.list");
            run(whole, "-XX:TieredStopAtLevel=1", "-XX:DumpLoadedClassList=" + list);
            try (Stream<String> lines = Files.lines(list)) {
                return lines.filter(line -> !line.startsWith("@lambda-proxy")
                                || KEPT_LAMBDA.matcher(line).matches())
                        .toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void run(List<String> command, String... flags) {
        List<String> whole = new ArrayList<>(program);
        whole.addAll(1, List.of(flags));
        whole.addAll(command);
        Tools.run(whole);
    }
}
