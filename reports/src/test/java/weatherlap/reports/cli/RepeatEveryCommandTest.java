package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever command wrote a folder, its {@code run.json} and the names of the files it read make the folder again. */
class RepeatEveryCommandTest {
    @TempDir
    private Path folder;

    private final TreeSet<String> repeated = new TreeSet<>();

    @Test
    void everyFolderIsMadeAgainToTheByte() throws IOException {
        Path town = folder.resolve("town");
        Path shop = folder.resolve("shop");
        List<String> few = List.of("--set", "draws=2");
        twice("generate", List.of(), List.of("--houses", 2, "--seed", 5, "--climate", "--jobs", 20), town);
        twice("assumptions", List.of(), List.of("--set", "crew_size=3"), shop);
        List<Object> own = List.of(town, "--assumptions", shop);
        twice("compare", own, thin(), out("thin"));
        twice("compare", List.of(town), few, out("base"));
        twice("compare", List.of(town), sets(few, shop), out("sets"));
        twice("handout", own, with(few, "--house", "G0001", "--language", "es", "--prices", "no"), out("handout"));
        twice("crewsheet", own, List.of("--all", "--method", "insert", "--paper", "a4"), out("crew"));
        twice("breakeven", own, with(few, "--vary", "workmanship", "--vary", "wages/all", "--houses", 1), out("even"));
        twice("drivers", List.of(town), drivers(), out("drivers"));
        twice("calibrate", List.of(town.resolve("jobs.csv")), List.of("--set", "crew_size=3"), out("fitted"));
        twice("calibrate", List.of(), List.of("--a-day", "insert=9", "--a-day", "full_flange=4"), out("mine"));
        twice("callbacks", List.of(town), List.of("--lag", 0.5), out("calls"));
        List<Object> done =
                List.of(town, "--jobs", town.resolve("jobs.csv"), "--callbacks", town.resolve("callbacks.csv"));
        twice("backtest", done, List.of("--set", "crew_size=3"), out("foreseen"));
        twice("exposure", List.of(town.resolve("climate.csv")), List.of("--set", "ground_limit_mm=0.2"), out("rain"));
        twice("site", List.of(), List.of("--near", "Newark,NJ", "--years", "2015-2016"), out("site"));
        twice("diff", List.of(out("base"), out("thin"), town), List.of("--houses", 1), out("moved"));
        assertThat(out("thin").resolve("report.html")).content().contains("rows stand as they are");
        assertThat(repeated).isEqualTo(commandsThatWrite());
    }

    private Path out(String name) {
        return folder.resolve(name);
    }

    /** With prices that cannot all be carried to the year, of which the page warns. */
    private static List<Object> thin() {
        return List.of("--draws", 2, "--set", "wage.national.carpenter=31", "--as-of", 2020);
    }

    private static List<Object> sets(List<String> few, Path shop) {
        return with(few, "--scenario", "base", "--scenario", "own=" + shop, "--scenario", "low=gross_margin=0.3");
    }

    private static List<Object> drivers() {
        return List.of("--houses", 1, "--draws", 2, "--points", 2, "--replicates", 2, "--rows", 1, "--information", 50);
    }

    private static List<Object> with(List<String> first, Object... more) {
        List<Object> words = new ArrayList<>(first);
        words.addAll(Arrays.asList(more));
        return words;
    }

    /** Writes a folder, then the same from its record, for which only what is read is named; compare has its tables beside the record. */
    private void twice(String command, List<?> read, List<?> options, Path out) throws IOException {
        ran(command, read, options, "--out", out);
        Path again = folder.resolve("again");
        List<?> besideTables = command.equals("compare") ? read.subList(0, 1) : read;
        Cli cli = ran(command, besideTables, List.of(), "--repeat", out.resolve("run.json"), "--out", again, "--force");
        assertThat(cli.out()).as(command).containsPattern("the same to the byte: \\d+ files?\n$");
        Map<String, Path> written = Outputs.files(out);
        assertThat(Outputs.files(again).keySet()).isEqualTo(written.keySet());
        for (var file : written.entrySet()) {
            if (!file.getKey().equals("run.json")) {
                assertThat(again.resolve(file.getKey())).as(command).hasSameBinaryContentAs(file.getValue());
            }
        }
        assertThat(Files.readString(out.resolve("run.json"))).doesNotContain(folder.toString());
        repeated.add(command);
    }

    private static Cli ran(String command, List<?> read, List<?> options, Object... rest) {
        List<Object> line = new ArrayList<>(List.of(command));
        line.addAll(read);
        line.addAll(options);
        line.addAll(Arrays.asList(rest));
        line.add("--quiet");
        Cli cli = Cli.run(line.toArray());
        boolean differ = command.equals("diff") && !line.contains("--repeat");
        assertThat(cli.status()).as(line + " " + cli.err()).isEqualTo(differ ? 1 : 0);
        return cli;
    }

    private static TreeSet<String> commandsThatWrite() {
        TreeSet<String> names = new TreeSet<>();
        Weatherlap.commandLine().getSubcommands().forEach((name, command) -> {
            if (command.getCommandSpec().findOption("--out") != null) {
                names.add(name);
            }
        });
        return names;
    }
}
