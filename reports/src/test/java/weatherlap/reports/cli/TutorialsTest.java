package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import weatherlap.datasets.climate.BundledRecord;

/**
 * The commands of the documents do what the documents say.
 *
 * <p>A chapter runs in a folder of its own, from top to bottom: a block {@code csv FILE} is written as that file, lines that begin with
 * {@code weatherlap} run, a block {@code text} is among what they print, the lines of a block {@code rows FILE} are rows of that file, as
 * far as the columns of its first line go. Files that the chapter names in a folder are then there. The first of each command that reads
 * tables which the chapter has one type runs by a workbook of them too, and must give the same.
 * Other lines of a shell are left out: they build the program.
 */
class TutorialsTest {
    private static final Pattern BLOCK = Pattern.compile("(?m)^```(\\w+)(?: (\\S+))?\\n((?s:.*?))^```$|^    (\\S.*)$");
    private static final Pattern NAMED_FILE = Pattern.compile("`([\\w.-]+/[\\w./-]+\\.\\w+)`");

    private static final Pattern DESCRIPTION = Pattern.compile("(?s)<desc[^>]*>(.*?)</desc");

    @TempDir
    private Path folder;

    private final List<String> ran = new ArrayList<>();
    private final Set<String> ranByWorkbook = new HashSet<>();
    private final Set<String> written = new HashSet<>();
    private final StringBuilder printed = new StringBuilder();

    @ParameterizedTest
    @CsvSource(textBlock = """
                    reports/README.md, A shop owner with a spreadsheet of ten houses, 10, 2
                    reports/README.md, A salesperson with one family,                 5, 4
                    reports/README.md, An analyst with last year's job records,       6, 2
                    README.md,         Your own houses,                              11, 0
                    analysis/README.md, Why one house flips,                          2, 0
                    """, quoteCharacter = '"')
    void runsAsWritten(String document, String chapter, int commands, int byWorkbook) throws IOException {
        String text = chapter(document, chapter);
        for (MatchResult block : BLOCK.matcher(text).results().toList()) {
            if (block.group(4) != null) {
                run(block.group(4));
            } else if (block.group(1).equals("rows")) {
                assertThat(rows(folder.resolve(block.group(2)), block.group(3)))
                        .containsAll(block.group(3).lines().skip(1).toList());
            } else if (block.group(2) != null) {
                write(block.group(2), block.group(3));
            } else if (block.group(1).equals("text")) {
                assertThat(printed).contains(block.group(3).strip().lines().toList());
            } else {
                block.group(3).lines().forEach(this::run);
            }
        }
        assertThat(ran).hasSize(commands);
        assertThat(ranByWorkbook).as("by workbook").hasSize(byWorkbook);
        assertThat(NAMED_FILE.matcher(text).results().map(match -> match.group(1)))
                .filteredOn(file -> Files.isDirectory(folder.resolve(file.substring(0, file.indexOf('/'))))
                        || document.startsWith("reports/"))
                .allSatisfy(file -> assertThat(folder.resolve(file)).isNotEmptyFile());
    }

    /** Rows of a table that has no quoted cells, cut to the columns that a text begins with. */
    private static List<String> rows(Path table, String text) throws IOException {
        List<List<String>> all = Files.readAllLines(table).stream()
                .map(line -> List.of(line.split(",", -1)))
                .toList();
        List<Integer> places = text.lines()
                .findFirst()
                .map(columns ->
                        Stream.of(columns.split(",")).map(all.get(0)::indexOf).toList())
                .orElseThrow();
        return all.stream()
                .filter(row -> row.size() == all.get(0).size())
                .map(row -> places.stream().map(row::get).collect(Collectors.joining(",")))
                .toList();
    }

    /** The README's first command of all leaves what it says, and its pictures say what those of the README do. */
    @Test
    void theFirstCommandLeavesWhatTheReadmeNames() throws IOException {
        String text = chapter("README.md", "Two commands");
        String line = text.lines()
                .filter(words -> words.contains("weatherlap.jar compare"))
                .findFirst()
                .orElseThrow();
        run("weatherlap " + line.substring(line.indexOf("compare")));
        Path report = folder.resolve("demo-report");
        List<String> files = Pattern.compile("`([\\w-]+\\.\\w+)`")
                .matcher(text.substring(text.indexOf("The first writes")))
                .results()
                .map(match -> match.group(1))
                .toList();
        assertThat(files)
                .contains("report.html", "report.pdf", "workbook.xlsx", "run.json")
                .allSatisfy(file -> assertThat(report.resolve(file)).isNotEmptyFile());
        assertThat(Pattern.compile("\\]\\(reports/(pictures/(\\S+\\.svg))\\)")
                        .matcher(text)
                        .results())
                .hasSize(3)
                .allSatisfy(picture -> assertThat(said(Path.of(picture.group(1))))
                        .isEqualTo(said(report.resolve("charts").resolve(picture.group(2)))));
    }

    /** What a picture says to those who cannot see it. */
    private static String said(Path picture) throws IOException {
        Matcher description = DESCRIPTION.matcher(Files.readString(picture));
        assertThat(description.find()).isTrue();
        return description.group(1);
    }

    /** Of the commands that take a moment; those of the others, and sheets of all houses, are run by tests of their own. */
    @Test
    void theExamplesOfTheHelpRun() {
        run("weatherlap generate --template --out my-houses");
        run("weatherlap assumptions --out my-assumptions");
        for (String command : List.of(
                "generate", "assumptions", "check", "explain", "handout", "crewsheet", "calibrate", "exposure")) {
            CommandLine parser = Weatherlap.commandLine().getSubcommands().get(command);
            Stream.of(parser.getCommandSpec().usageMessage().footer())
                    .map(String::strip)
                    .filter(line -> !line.contains(" --all "))
                    .map(line -> line.contains(" --out ") ? line + " --force" : line)
                    .forEach(this::run);
        }
        assertThat(ran).hasSizeGreaterThan(16);
    }

    private static String chapter(String document, String title) throws IOException {
        String text = Files.readString(Path.of("..").resolve(document));
        int begin = text.indexOf("## " + title + "\n");
        assertThat(begin).as("a chapter " + title).isNotNegative();
        int end = text.indexOf("\n## ", begin);
        return text.substring(begin, end < 0 ? text.length() : end);
    }

    private void write(String file, String text) throws IOException {
        Path target = folder.resolve(file);
        if (file.endsWith(".csv")) {
            written.add(file.replaceFirst("/.*", ""));
        }
        Files.createDirectories(target.getParent());
        Files.writeString(target, text);
    }

    private void run(String line) {
        if (!line.startsWith("weatherlap ")) {
            return;
        }
        ran.add(line);
        Cli cli = done(line);
        printed.append(cli.out()).append(cli.err());
        List<String> words = List.of(line.split(" "));
        Optional<String> tables = words.stream().filter(written::contains).findFirst();
        if (tables.isPresent() && ranByWorkbook.add(words.get(1))) {
            try {
                runByWorkbook(words, tables.get(), cli);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The same with a workbook of the tables, a site file beside it as beside them, has the same results and says the same. */
    private void runByWorkbook(List<String> words, String tables, Cli own) throws IOException {
        Path of = Files.isDirectory(folder.resolve(tables)) ? folder.resolve(tables) : folder;
        String workbook = "book/" + tables.replace(".csv", "") + ".xlsx";
        PlainWorkbook.write(of, folder.resolve(workbook));
        if (Files.exists(of.resolve("site.toml"))) {
            Files.copy(of.resolve("site.toml"), folder.resolve("book/site.toml"), StandardCopyOption.REPLACE_EXISTING);
        }
        int out = words.indexOf("--out") + 1;
        List<String> other = new ArrayList<>(words);
        other.replaceAll(word -> word.equals(tables) ? workbook : word);
        if (out == 0) {
            assertThat(done(String.join(" ", other)).out()).as(words.toString()).isEqualTo(own.out());
            return;
        }
        other.set(out, "book/" + words.get(out));
        done(String.join(" ", other));
        Map<String, Path> files = Outputs.files(folder.resolve(words.get(out)));
        boolean sheets = files.keySet().stream().noneMatch(file -> file.endsWith(".csv"));
        List<String> results = files.keySet().stream()
                .filter(file -> file.endsWith(sheets ? ".html" : ".csv"))
                .toList();
        assertThat(results).as(words.toString()).isNotEmpty();
        for (String file : results) {
            assertThat(folder.resolve(other.get(out)).resolve(file))
                    .as(words.toString())
                    .hasSameTextualContentAs(files.get(file));
        }
    }

    private Cli done(String line) {
        String[] words = line.substring("weatherlap ".length()).split(" ");
        Set<String> paths = paths(words);
        Object[] resolved = Arrays.copyOf(words, words.length, Object[].class);
        for (int i = 1; i < words.length; i++) {
            resolved[i] = paths.contains(words[i]) ? folder.resolve(words[i]).toString() : words[i];
        }
        Cli cli = Cli.run(resolved);
        assertThat(cli.status()).as(line + "\n" + cli.err()).isZero();
        return cli;
    }

    /** The words that name files or folders: those of arguments whose type is a path or some paths, but for what comes with the program. */
    private static Set<String> paths(String... words) {
        CommandLine.ParseResult parsed =
                Weatherlap.commandLine().parseArgs(words).subcommand();
        Set<String> paths = new HashSet<>();
        Stream.of(parsed.matchedOptions(), parsed.matchedPositionals())
                .flatMap(List::stream)
                .map(ArgSpec.class::cast)
                .filter(arg -> List.of(arg.auxiliaryTypes()).contains(Path.class))
                .forEach(arg -> paths.addAll(arg.originalStringValues()));
        paths.removeAll(BundledRecord.words());
        return paths;
    }
}
