package weatherlap.datasets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;

/**
 * Many small bad inputs, each a change to a good folder, and the messages it must bring: all of them, in order, and no others.
 *
 * <pre>
 * ## name of the case
 * FILE:LINE:COLUMN = cell            the cell, as it stands in the file
 * FILE:LINE = text                   the whole line
 * FILE + text                        one more line at the end
 * FILE := text                       the whole file
 * FILE bytes EFBBBF                  bytes before everything else in the file
 * FILE delete | folder | link        no file; a folder of its name; a link to a file outside
 * FILE dangling | loop               a link that leads nowhere; a link to itself
 * FILE swap x -> y                   every x in the file made y
 * > message                          an error
 * ? message                          a warning
 * </pre>
 *
 * In texts {@code \n}, {@code \r}, {@code \t}, {@code \0} and {@code \}{@code uXXXX} stand for characters and {@code {x*30}} for thirty x. Lines of
 * {@code scenario.toml} are written {@code #} in messages, folders {@code ...}.
 */
public final class Corpus {
    private static final Pattern EDIT = Pattern.compile(
            "(\\S+?\\.\\w+)(?::(\\d+))?(?::(\\w+))? (=|\\+|:=|bytes|swap|delete|folder|link|dangling|loop) ?(.*)");
    private static final Pattern REPEAT = Pattern.compile("\\{(.)\\*(\\d+)}");

    /** Portfolios: {@code corpus/portfolio.txt} and, held against assumptions, {@code corpus/fit.txt}. */
    public static final Corpus PORTFOLIO = new Corpus(Map.of(
            "houses.csv", "portfolio/houses.csv",
            "elevations.csv", "portfolio/elevations.csv",
            "openings.csv", "portfolio/openings.csv"));

    /** Assumption folders: {@code corpus/assumptions.txt}. */
    public static final Corpus ASSUMPTIONS = new Corpus(Map.of(
            "labour-steps.csv", "tables/labour-steps.csv",
            "materials.csv", "tables/materials.csv",
            "units.csv", "tables/units.csv",
            "sightlines.csv", "tables/sightlines.csv",
            "lap-faults.csv", "tables/lap-faults.csv",
            "wages.csv", "tables/wages.csv",
            "scenario.toml", "assumptions/scenario.toml"));

    /** Weather files: {@code corpus/climate.txt}. */
    public static final Corpus CLIMATE = new Corpus(Map.of("climate.csv", "climate/climate.csv"));

    /** Job records: {@code corpus/jobs.txt}. */
    public static final Corpus JOBS = new Corpus(Map.of("jobs.csv", "jobs/jobs.csv"));

    /** Service calls beside job records: {@code corpus/callbacks.txt}. */
    public static final Corpus CALLBACKS =
            new Corpus(Map.of("jobs.csv", "jobs/jobs.csv", "callbacks.csv", "jobs/callbacks.csv"));

    /** Shops: {@code corpus/shop.txt}. */
    public static final Corpus SHOP =
            new Corpus(Map.of("shop.toml", "shop/own-shop.toml", "logo.svg", "shop/logo.svg"));

    /** Mixes: {@code corpus/mix.txt}. */
    public static final Corpus MIX = new Corpus(Map.of("mix.csv", "generator/new-york.csv"));

    private final Map<String, String> goodFiles;

    /** @param goodFiles resource by file name: a folder that loads without a problem */
    private Corpus(Map<String, String> goodFiles) {
        this.goodFiles = goodFiles;
    }

    /** One case: its folder is written by {@link #writeTo}. */
    public record Case(String name, List<String> edits, List<String> errors, List<String> warnings, Corpus corpus) {
        static Case of(String block, Corpus corpus) {
            List<String> lines = block.lines().filter(line -> !line.isBlank()).toList();
            List<String> edits = lines.subList(1, lines.size()).stream()
                    .filter(line -> !line.startsWith("> ") && !line.startsWith("? "))
                    .toList();
            return new Case(lines.get(0), edits, marked(lines, "> "), marked(lines, "? "), corpus);
        }

        private static List<String> marked(List<String> lines, String mark) {
            return lines.stream()
                    .filter(line -> line.startsWith(mark))
                    .map(line -> line.substring(2))
                    .toList();
        }

        public void writeTo(Path folder) throws IOException {
            corpus.writeGood(folder);
            for (String line : edits) {
                edit(folder, line);
            }
        }
    }

    /** Every case of a resource. */
    public List<Case> cases(String resource) {
        return Arrays.stream(resource(resource).split("(?m)^## "))
                .skip(1)
                .map(block -> Case.of(block, this))
                .toList();
    }

    /** One test for each case of a resource. */
    public Stream<DynamicTest> tests(String cases, Path temporary, Function<Path, Loaded<?>> read) {
        List<Case> all = cases(cases);
        return all.stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.name(), () -> run(each, temporary.resolve("case-" + all.indexOf(each)), read)));
    }

    private static void run(Case each, Path folder, Function<Path, Loaded<?>> read) throws IOException {
        each.writeTo(folder);
        Loaded<?> loaded = read.apply(folder);
        assertThat(loaded.errors().stream().map(Problem::toString).map(message -> neutral(message, folder)))
                .containsExactlyElementsOf(each.errors());
        assertThat(loaded.warnings().stream().map(Problem::toString)).containsExactlyElementsOf(each.warnings());
        assertThat(each.errors().isEmpty() && each.warnings().isEmpty())
                .as("a case expects something")
                .isFalse();
    }

    /** A message without what differs from machine to machine. */
    public static String neutral(String message, Path folder) {
        return message.replaceAll("from the folder \"[^\"]*\"", "from the folder \"...\"")
                .replace(folder.toString(), "...")
                .replaceAll("^scenario.toml:\\d+", "scenario.toml:#");
    }

    /** Writes the good folder. */
    public void writeGood(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : goodFiles.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), resource(file.getValue()));
        }
    }

    private static void edit(Path folder, String line) throws IOException {
        Matcher edit = EDIT.matcher(line);
        assertThat(edit.matches()).as(line).isTrue();
        Path file = folder.resolve(edit.group(1));
        String text = plain(edit.group(5));
        switch (edit.group(4)) {
            case "=" -> setLine(file, Integer.parseInt(edit.group(2)), edit.group(3), text);
            case "+" -> Files.writeString(file, Files.readString(file) + text + "\n");
            case ":=" -> Files.writeString(file, text);
            case "bytes" -> prepend(file, HexFormat.of().parseHex(text));
            case "swap" -> swap(file, text.split(" -> ", -1));
            default -> replaceFile(folder, file, edit.group(4));
        }
    }

    private static void setLine(Path file, int number, String column, String text) throws IOException {
        List<String> lines = new ArrayList<>(Files.readString(file).lines().toList());
        if (column == null) {
            lines.set(number - 1, text);
        } else {
            int place = List.of(lines.get(0).split(",", -1)).indexOf(column);
            assertThat(place).as("column %s", column).isNotNegative();
            String[] cells = lines.get(number - 1).split(",", -1);
            cells[place] = text;
            lines.set(number - 1, String.join(",", cells));
        }
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    private static void swap(Path file, String[] sides) throws IOException {
        String before = Files.readString(file);
        assertThat(before).contains(sides[0]);
        Files.writeString(file, before.replace(sides[0], sides[1]));
    }

    private static void prepend(Path file, byte[] start) throws IOException {
        byte[] rest = Files.readAllBytes(file);
        byte[] all = Arrays.copyOf(start, start.length + rest.length);
        System.arraycopy(rest, 0, all, start.length, rest.length);
        Files.write(file, all);
    }

    private static void replaceFile(Path folder, Path file, String by) throws IOException {
        Path outside = Files.createTempFile(folder.getParent(), "outside", ".csv");
        Files.writeString(outside, Files.readString(file));
        Files.delete(file);
        switch (by) {
            case "folder" -> Files.createDirectory(file);
            case "link" -> Files.createSymbolicLink(file, outside);
            case "dangling" -> Files.createSymbolicLink(file, folder.resolve("nowhere"));
            case "loop" -> Files.createSymbolicLink(file, file);
            default -> assertThat(by).isEqualTo("delete");
        }
    }

    private static String plain(String text) {
        String repeated =
                REPEAT.matcher(text).replaceAll(match -> match.group(1).repeat(Integer.parseInt(match.group(2))));
        String plain = repeated.replace("\\n", "\n")
                .replace("\\r", "\r")
                .replace("\\t", "\t")
                .replace("\\0", "\0");
        return Pattern.compile("\\\\u([0-9a-fA-F]{4})")
                .matcher(plain)
                .replaceAll(
                        match -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(match.group(1), 16))));
    }

    private static String resource(String name) {
        try (InputStream in = Corpus.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
