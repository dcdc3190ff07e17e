package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GenerateCommandTest {
    @TempDir
    private Path folder;

    @Test
    void theSameSeedGivesTheSameHousesAndTheyAreClean() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        assertThat(Cli.run("generate", "--houses", 30, "--seed", 7, "--out", one)
                        .status())
                .isZero();
        assertThat(Cli.run("generate", "--houses", 30, "--seed", 7, "--out", two)
                        .status())
                .isZero();
        for (String file : new String[] {"houses.csv", "elevations.csv", "openings.csv", "run.json"}) {
            assertThat(one.resolve(file)).hasSameBinaryContentAs(two.resolve(file));
        }
        assertThat(Files.readAllLines(one.resolve("houses.csv"))).hasSize(31);
        assertThat(Cli.run("check", one).out()).startsWith("30 houses, ");
        Path other = folder.resolve("other");
        assertThat(Cli.run("generate", "--houses", 30, "--seed", 8, "--out", other)
                        .status())
                .isZero();
        assertThat(Files.readString(other.resolve("houses.csv")))
                .isNotEqualTo(Files.readString(one.resolve("houses.csv")));
    }

    @Test
    void jobsOfAKnownShopComeBesideAndTheSameSeedGivesTheSameBytes() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        for (Path out : List.of(one, two)) {
            assertThat(Cli.run("generate", "--houses", 1, "--jobs", 12, "--seed", 7, "--out", out)
                            .status())
                    .isZero();
        }
        for (String file : List.of(
                "jobs.csv", "true-rates.csv", "callbacks.csv", "true-callbacks.csv", "houses.csv", "run.json")) {
            assertThat(one.resolve(file)).hasSameBinaryContentAs(two.resolve(file));
        }
        assertThat(Files.readAllLines(one.resolve("jobs.csv")))
                .hasSize(13)
                .first()
                .asString()
                .contains("person_hours");
        assertThat(Files.readAllLines(one.resolve("true-rates.csv"))).first().isEqualTo("step_id,minutes");
        Path other = folder.resolve("other");
        assertThat(Cli.run("generate", "--houses", 1, "--jobs", 12, "--seed", 8, "--out", other)
                        .status())
                .isZero();
        assertThat(Files.readString(other.resolve("true-rates.csv")))
                .isNotEqualTo(Files.readString(one.resolve("true-rates.csv")));
        assertThat(Cli.run("check", one).out()).startsWith("1 house, ");
        assertThat(Cli.run("generate", "--houses", 1, "--jobs", -1, "--out", folder.resolve("a"))
                        .err())
                .contains("--jobs (-1)");
    }

    @Test
    void aComparisonNeverReplacesThePortfolioItReads() {
        Path houses = folder.resolve("houses");
        assertThat(Cli.run("generate", "--houses", 1, "--out", houses).status()).isZero();
        Cli cli = Cli.run("compare", houses, "--out", houses, "--force", "--quiet");
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("holds the input");
        assertThat(houses.resolve("openings.csv")).exists();
    }

    @Test
    void badNumbersAndMixesAreRefused() throws IOException {
        assertThat(Cli.run("generate", "--houses", 0, "--out", folder.resolve("a"))
                        .err())
                .contains("--houses (0)");
        assertThat(Cli.run("generate", "--houses", "x", "--out", folder.resolve("a"))
                        .status())
                .isEqualTo(2);
        Path mix = Files.writeString(folder.resolve("mix.csv"), "property,share\n");
        Cli cli = Cli.run("generate", "--houses", 1, "--mix", mix, "--out", folder.resolve("a"));
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).startsWith("mix.csv:1").doesNotContain("\tat ");
        assertThat(folder.resolve("a")).doesNotExist();
    }

    /** The records of the template are read as they are, and the made-up job is named as soon as another stands beside it. */
    @Test
    void tablesForJobsAndCallsComeOnRequest() throws IOException {
        Path template = folder.resolve("template");
        assertThat(Cli.run("generate", "--template", "--records", "--out", template)
                        .status())
                .isZero();
        assertThat(template.resolve("RECORDS.txt")).exists();
        assertThat(Files.readString(template.resolve("columns.csv"))).contains("callbacks.csv,called,yes,");
        Cli fit = Cli.run("callbacks", template, "--out", folder.resolve("fit"));
        assertThat(fit.status()).isZero();
        assertThat(fit.err()).doesNotContain("made-up job");
        Files.writeString(
                template.resolve("jobs.csv"),
                Files.readString(template.resolve("jobs.csv")) + "mine,,insert,8,2021-05-13,,,,,,,,,,\n");
        assertThat(Cli.run("callbacks", template, "--out", folder.resolve("two"))
                        .err())
                .contains("jobs.csv:2:job_id: this is the example job");
        assertThat(Cli.run("generate", "--houses", 1, "--records", "--out", folder.resolve("a"))
                        .status())
                .isEqualTo(2);
    }
}
