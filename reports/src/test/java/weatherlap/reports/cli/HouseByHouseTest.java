package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.datasets.portfolio.Shuffled;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunFile;

/** A portfolio that is read house by house gives what one read whole gives: the same files to the byte, and the same messages. */
class HouseByHouseTest {
    private static final long WHOLE = Long.MAX_VALUE;
    private static final long HOUSE_BY_HOUSE = -1;

    /** Of the input, which differ. */
    private static final Set<String> SHOW_CHECKSUMS =
            Set.of("run.json", "report.html", "report.pdf", "appendix.pdf", "workbook.xlsx");

    @TempDir
    private Path temporary;

    @Test
    void filesAreTheSameToTheByte() throws IOException {
        Path town = generated(12);
        Path streamed = compared(town, "streamed", HOUSE_BY_HOUSE);
        sameFiles(streamed, compared(town, "whole", WHOLE), name -> true);
        assertThat(repeated(streamed.resolve("run.json"), town, HOUSE_BY_HOUSE)).isTrue();
    }

    /** Tables longer than a run of the sort are merged from its parts: see {@code SortedPortfolioTest}, and the next but one here. */
    @Test
    void shuffledTablesGiveTheSameFilesAsSortedOnes() throws IOException {
        Path town = generated(12);
        Path shuffled = Shuffled.write(town, temporary.resolve("mixed/" + town.getFileName()), 1);
        Path ofSorted = compared(town, "sorted", HOUSE_BY_HOUSE);
        Path ofShuffled = compared(shuffled, "shuffled", HOUSE_BY_HOUSE);
        sameFiles(ofShuffled, ofSorted, name -> !SHOW_CHECKSUMS.contains(name));
        assertThat(ofSorted.resolve("openings.csv")).isNotEmptyFile();
        assertThat(temporary.toFile().list()).noneMatch(name -> name.startsWith("."));
        assertThat(repeated(ofShuffled.resolve("run.json"), shuffled, HOUSE_BY_HOUSE))
                .isTrue();
        assertThat(repeated(ofShuffled.resolve("run.json"), shuffled, WHOLE)).isFalse();
    }

    private static void sameFiles(Path one, Path other, Predicate<String> looked) throws IOException {
        SortedMap<String, Path> files = Outputs.files(one);
        assertThat(files.keySet()).isEqualTo(Outputs.files(other).keySet());
        for (String file : files.keySet()) {
            if (looked.test(file)) {
                assertThat(files.get(file)).as(file).hasSameBinaryContentAs(other.resolve(file));
            }
        }
    }

    private boolean repeated(Path run, Path portfolio, long largestWholeBytes) throws IOException {
        RunFile recorded = RunFile.read(run).orElseThrow();
        OutputRequest again = new OutputRequest(temporary.resolve("again"), true, List.of(), Optional.of(recorded));
        Optional<Path> assumptions = Optional.of(run.resolveSibling("assumptions"));
        InputPaths inputs = new InputPaths(Optional.of(portfolio), assumptions, Optional.empty(), List.of());
        new Compare(inputs, again, 2, largestWholeBytes).run(HandoutFiles.SILENT);
        RunFile made = RunFile.read(again.folder().resolve("run.json")).orElseThrow();
        return RunFile.differing(made.outputs(), recorded.outputs()).isEmpty();
    }

    /** Some 400 houses are more than a run of the sort. */
    @Test
    void aBadHouseOfMixedTablesLeavesNothing() throws IOException {
        Path shuffled = Shuffled.write(generated(400), temporary.resolve("mixed"), 4);
        List<String> openings = new ArrayList<>(Files.readAllLines(shuffled.resolve("openings.csv")));
        openings.set(4000, openings.get(4000).replaceFirst(",", ",nowhere"));
        Files.write(shuffled.resolve("openings.csv"), openings);
        assertThat(problems(shuffled, HOUSE_BY_HOUSE))
                .isEqualTo(problems(shuffled, WHOLE))
                .singleElement()
                .asString()
                .startsWith("openings.csv:4001:elevation_id: ");
        assertThat(temporary.toFile().list()).containsExactlyInAnyOrder("town400", "mixed");
    }

    @TestFactory
    Stream<DynamicTest> problemsAreTheSame() {
        return Stream.of("corpus/portfolio.txt", "corpus/fit.txt")
                .flatMap(resource -> Corpus.PORTFOLIO.cases(resource).stream())
                .filter(each -> !each.errors().isEmpty())
                .map(each -> DynamicTest.dynamicTest(each.name(), () -> {
                    Path folder = Files.createTempDirectory(temporary, "case");
                    each.writeTo(folder);
                    assertThat(problems(folder, HOUSE_BY_HOUSE)).isEqualTo(problems(folder, WHOLE));
                }));
    }

    private List<String> problems(Path portfolio, long largestWholeBytes) {
        return catchThrowableOfType(BadInput.class, () -> compared(portfolio, "refused", largestWholeBytes))
                .problems();
    }

    private Path generated(int houses) {
        Path town = temporary.resolve("town" + houses);
        assertThat(Cli.run("generate", "--houses", houses, "--seed", 3, "--out", town)
                        .status())
                .isZero();
        return town;
    }

    private Path compared(Path portfolio, String out, long largestWholeBytes) throws IOException {
        Path folder = temporary.resolve(out);
        InputPaths paths =
                new InputPaths(Optional.of(portfolio), Optional.empty(), Optional.empty(), List.of("draws=16"));
        new Compare(paths, new OutputRequest(folder, false), 2, largestWholeBytes).run(HandoutFiles.SILENT);
        return folder;
    }
}
