package weatherlap.bundle;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The runtime's archive of classes that are kept ready: those that the commands of every day load, taken down while these run.
 *
 * <p>Lambdas are kept where neither who makes them nor what they implement comes from an old class file: Java 17 ends in a fault over those.
 */
final class ReadyClasses {
    private static final Pattern LAMBDA = Pattern.compile("@lambda-proxy (\\S+) \\S+ \\([^)]*\\)L([^;]+);.*");

    /** Of Java 6, the first whose class files are verified in one pass (Java Virtual Machine Specification, 4.10.1). */
    private static final int NEW_ENOUGH = 50;

    private final List<String> program;
    private final Path module;
    private final Path work;

    private ReadyClasses(List<String> program, Path module, Path work) {
        this.program = program;
        this.module = module;
        this.work = work;
    }

    /**
     * Puts the archive in its place in the runtime, which the program starts from by {@code program}.
     *
     * @param module the folder of the classes that are not the JDK's
     */
    static void of(List<String> program, Path module, Path work) throws IOException {
        ReadyClasses classes = new ReadyClasses(program, module, work);
        String book = work.resolve("book.xlsx").toString();
        classes.run(List.of("generate", "--template", "--out", book));
        String town = work.resolve("town").toString();
        classes.run(List.of("generate", "--houses", "10", "--climate", "--out", town));
        String weather = Path.of(town, "climate.csv").toString();
        List<List<String>> everyDay = List.of(
                List.of("--help"),
                List.of("compare", book, "--draws", "64", "--out"),
                List.of("compare", town, "--climate", weather, "--draws", "64", "--out"),
                List.of("compare", "--draws", "64", "--out"),
                List.of("handout", "--house", "G0014", "--out"),
                List.of("handout", "--house", "G0046", "--out"),
                List.of("crewsheet", "--house", "G0046", "--method", "plan", "--out"),
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
                return lines.filter(line -> !line.startsWith("@lambda-proxy") || isKept(line))
                        .toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean isKept(String lambda) {
        Matcher parts = LAMBDA.matcher(lambda);
        return parts.matches() && isNew(parts.group(1)) && isNew(parts.group(2));
    }

    private boolean isNew(String type) {
        Path file = module.resolve(type + ".class");
        if (!Files.exists(file)) {
            return true; // the JDK's own
        }
        try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
            in.skipBytes(6);
            return in.readUnsignedShort() >= NEW_ENOUGH;
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
