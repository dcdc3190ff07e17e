package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --all}: a folder of sheets for a portfolio. */
class AllSheetsTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]+)\"");

    @TempDir
    private Path folder;

    @Test
    void everyHouseHasTheSheetThatItHasAlone() throws IOException {
        Path houses = SmallPortfolio.write(folder.resolve("houses"));
        for (List<Object> command :
                List.of(List.<Object>of("handout"), List.<Object>of("crewsheet", "--method", "plan"))) {
            String name = command.get(0).toString();
            Path all = folder.resolve("all-" + name);
            Path one = folder.resolve("one-" + name);
            Cli cli = run(command, houses, "--all", "--out", all);
            assertThat(cli.status()).as(cli.err()).isZero();
            assertThat(cli.err()).contains("open " + all.resolve("index.html"));
            assertThat(run(command, houses, "--house", "h2", "--out", one).status())
                    .isZero();
            for (String file : List.of(name + ".html", name + ".pdf")) {
                assertThat(all.resolve("h2").resolve(file)).hasSameBinaryContentAs(one.resolve(file));
            }
            String index = Files.readString(all.resolve("index.html"));
            assertThat(index).contains("&lt;script&gt;").doesNotContain("<script");
            Matcher links = LINK.matcher(index);
            int count = 0;
            while (links.find()) {
                assertThat(all.resolve(links.group(1))).isNotEmptyFile();
                count++;
            }
            assertThat(count).isEqualTo(2 * 2);
        }
    }

    @Test
    void aHouseThatCanHaveNoneSaysWhy() throws IOException {
        Path houses = SmallPortfolio.write(folder.resolve("houses"));
        Path out = folder.resolve("out");
        Cli cli = Cli.run("crewsheet", houses, "--all", "--method", "full_flange", "--out", out);
        assertThat(cli.status()).as(cli.err()).isZero();
        assertThat(cli.err()).contains("no sheet for h2: ", "no flanged unit fits behind brick veneer");
        assertThat(Files.readString(out.resolve("index.html"))).contains("no flanged unit fits", "h1/crewsheet.html");
        assertThat(out.resolve("h2")).doesNotExist();
    }

    @Test
    void oneHouseAndAllAreNotAskedForTogether() {
        Cli cli = Cli.run("handout", "--all", "--house", "gable", "--out", folder.resolve("out"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("--all and --house");
    }

    private static Cli run(List<Object> command, Object... more) {
        return Cli.run(java.util.stream.Stream.concat(command.stream(), java.util.stream.Stream.of(more))
                .toArray());
    }
}
