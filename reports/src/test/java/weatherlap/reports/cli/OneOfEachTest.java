package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where there is one house, one window, one year and one person, nothing says "1 houses"; and what is read is American English. */
class OneOfEachTest {
    /** Not after a scalar's key: there the unit stands in a column of its own. */
    private static final Pattern ONE_OF_MANY = Pattern.compile(".{0,60}(?<![\\w.,$-])(?<!_\\w{1,20} )1 (?:people"
            + "|(?:bearing|board|corner|cut-back|day|draw|elevation|fault|file|hour|house|job|opening|panel|point|question|record"
            + "|row|screw|step|story|unit|wall|warning|week|window|year)s)\\b(?! of)");

    /** Not in the names of columns and files, nor where a column is compared or listed: those keep their names. */
    private static final Pattern BRITISH = Pattern.compile(".{0,60}(?<![-_/\\w])(?i:labour(?![-_/.\\w])"
            + "|mould|licence|favours?|colour|storeys?(?! is \\d|[=&!,|\\w]))");

    @TempDir
    private Path folder;

    private final List<String> said = new ArrayList<>();

    @Test
    void aHouseWithOneWindowReadsLikeOne() throws IOException {
        Path house = folder.resolve("house");
        run("generate", "--template", "--out", house);
        run("check", house);
        String[] one = {"--set", "horizon_years=1", "--set", "warranty_years=1", "--set", "crew_size=1"};
        run("compare", house, one, "--draws", 16, "--out", folder.resolve("report"));
        run("compare", house, "--repeat", folder.resolve("report/run.json"), "--out", folder.resolve("again"));
        run("handout", house, one, "--out", folder.resolve("handout"));
        run("crewsheet", house, one, "--method", "full-flange", "--out", folder.resolve("full"));
        run("crewsheet", house, one, "--method", "insert", "--out", folder.resolve("insert"));
        run("breakeven", house, one, "--set", "draws=16", "--vary", "repair_cost_usd", "--out", folder.resolve("even"));
        assertThat(said).anyMatch(line -> line.contains("1 house, 1 opening"));
        assertThat(wrong()).isEmpty();
        assertThat(found(BRITISH, ".html")).isEmpty();
    }

    @Test
    void oneMadeHouseIsOneHouse() throws IOException {
        run("generate", "--houses", 1, "--jobs", 1, "--out", folder.resolve("made"));
        assertThat(said).anyMatch(line -> line.contains("1 house with "));
        assertThat(said).anyMatch(line -> line.contains("1 job in jobs.csv"));
        assertThat(wrong()).isEmpty();
    }

    /** Runs a command and looks through what it says; of arrays, every word is an argument. */
    private void run(Object... words) {
        List<Object> arguments = new ArrayList<>();
        for (Object word : words) {
            arguments.addAll(word instanceof String[] several ? List.of(several) : List.of(word));
        }
        Cli cli = Cli.run(arguments.toArray());
        assertThat(cli.status()).as(cli.err()).isZero();
        said.add(cli.out());
        said.add(cli.err());
    }

    private List<String> wrong() throws IOException {
        return found(ONE_OF_MANY, "");
    }

    /** What of the kind is in all that was said, and written to files of that ending, each with the words before it. */
    private List<String> found(Pattern kind, String ending) throws IOException {
        List<String> texts = new ArrayList<>(said);
        for (Path file : Outputs.files(folder).values()) {
            if (file.toString().endsWith(ending)) {
                texts.add(Outputs.text(file));
            }
        }
        return texts.stream()
                .flatMap(text -> kind.matcher(text).results().map(MatchResult::group))
                .toList();
    }
}
