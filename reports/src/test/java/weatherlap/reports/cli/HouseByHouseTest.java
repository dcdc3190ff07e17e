package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.jobs.BadInput;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.jobs.InputPaths;
import weatherlap.reports.output.OutputRequest;

/** A portfolio that is read house by house gives what one read whole gives: the same files to the byte, and the same messages. */
class HouseByHouseTest {
    private static final long WHOLE = Long.MAX_VALUE;
    private static final long HOUSE_BY_HOUSE = -1;

    @TempDir
    private Path temporary;

    @Test
    void filesAreTheSameToTheByte() throws IOException {
        Path town = generated(12);
        SortedMap<String, Path> whole = Outputs.files(compared(town, "whole", WHOLE));
        SortedMap<String, Path> streamed = Outputs.files(compared(town, "streamed", HOUSE_BY_HOUSE));
        assertThat(streamed.keySet()).isEqualTo(whole.keySet());
        for (String file : whole.keySet()) {
            assertThat(streamed.get(file)).as(file).hasSameBinaryContentAs(whole.get(file));
        }
    }

    @Test
    void unsortedTablesGiveTheSameOpeningsHouseForHouse() throws IOException {
        Path town = generated(3);
        List<String> sorted =
                Files.readAllLines(compared(town, "sorted", HOUSE_BY_HOUSE).resolve("openings.csv"));
        List<String> openings = new ArrayList<>(Files.readAllLines(town.resolve("openings.csv")));
        openings.add(openings.remove(1));
        Files.write(town.resolve("openings.csv"), openings);
        List<String> shuffled =
                Files.readAllLines(compared(town, "shuffled", HOUSE_BY_HOUSE).resolve("openings.csv"));
        assertThat(shuffled).hasSameSizeAs(sorted);
        assertThat(shuffled.stream().filter(line -> !line.startsWith("G0001")).toList())
                .isEqualTo(sorted.stream()
                        .filter(line -> !line.startsWith("G0001"))
                        .toList());
    }

    @TestFactory
    Stream<DynamicTest> problemsAreTheSame() {
        return Stream.of("corpus/portfolio.txt", "corpus/fit.txt")
                .flatMap(resource -> Corpus.PORTFOLIO.cases(resource).stream())
                .filter(each -> !each.errors().isEmpty())
                .map(each -> DynamicTest.dynamicTest(each.name(), () -> {
                    Path folder = Files.createTempDirectory(temporary, "case");
                    each.writeTo(folder);
                    assertThat(problems(folder, HOUSE_BY_HOUSE)).hasSameElementsAs(problems(folder, WHOLE));
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
