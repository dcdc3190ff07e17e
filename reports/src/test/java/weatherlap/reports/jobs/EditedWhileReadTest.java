package weatherlap.reports.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputRequest;

class EditedWhileReadTest {
    @TempDir
    private Path folder;

    /** New rows would otherwise stand under the digest of the old ones. */
    @Test
    void aTableThatIsEditedDuringARunMakesNoResult() throws IOException {
        Path houses = folder.resolve("houses");
        Corpus.PORTFOLIO.writeGood(houses);
        Path out = folder.resolve("out");
        InputPaths paths = new InputPaths(Optional.of(houses), Optional.empty(), Optional.empty(), List.of("draws=16"));
        Compare compare = new Compare(paths, new OutputRequest(out, false), 1);
        Inputs inputs = compare.inputs();
        Files.writeString(houses.resolve("openings.csv"), Files.readString(houses.resolve("openings.csv")) + "\n");
        assertThatThrownBy(() -> compare.run(inputs, silent()))
                .isInstanceOfSatisfying(BadInput.class, bad -> assertThat(bad.problems())
                        .containsExactly("portfolio/openings.csv: somebody edited it while it was read; run again"
                                + " (nothing was written)"));
        assertThat(out).doesNotExist();
    }

    private static Messages silent() {
        return new Messages() {
            @Override
            public void note(String line) {}

            @Override
            public void result(String line) {}

            @Override
            public Progress progress(String task, int steps) {
                return new Progress() {
                    @Override
                    public void step() {}

                    @Override
                    public void close() {}
                };
            }
        };
    }
}
