package weatherlap.reports.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.sorting.Scratch;
import weatherlap.reports.format.Content;

class OutputFolderTest {
    private static final RunRecord RUN = new RunRecord("1", "test", Map.of("seed", 7), new TreeMap<>());

    @TempDir
    private Path parent;

    private Path target;

    @BeforeEach
    void name() throws IOException {
        parent = parent.toRealPath();
        target = parent.resolve("out");
    }

    @Test
    void appearsOnlyWhenItIsWhole() throws IOException {
        try (OutputFolder folder = open(false)) {
            folder.write("a.csv", text("a"));
            folder.write("charts/rose.svg", text("b"));
            assertThat(target).doesNotExist();
            folder.commit(RUN);
        }
        assertThat(target.resolve("a.csv")).hasContent("a");
        assertThat(target.resolve("charts/rose.svg")).hasContent("b");
        assertThat(Files.readString(target.resolve("run.json")))
                .contains("\"program\" : \"weatherlap\"", "\"seed\" : 7", Checksum.ofText("a"));
        assertNothingBeside();
    }

    @Test
    void leavesNothingWhenItIsGivenUp() throws IOException {
        try (OutputFolder folder = open(false)) {
            folder.write("a.csv", text("a"));
        }
        assertThat(target).doesNotExist();
        assertNothingBeside();
    }

    @Test
    void theEarlierOutputStandsUntilTheNewOneIsWhole() throws IOException {
        writeOut("old.csv", "old");
        try (OutputFolder folder = open(true)) {
            folder.write("new.csv", text("new"));
            assertThat(target.resolve("old.csv")).hasContent("old");
            assertThatThrownBy(() -> folder.write("bad.csv", out -> {
                        throw new IOException("no space left");
                    }))
                    .isInstanceOf(IOException.class);
        }
        assertThat(target.resolve("old.csv")).hasContent("old");
        assertThat(target.resolve("new.csv")).doesNotExist();
        assertNothingBeside();
    }

    @Test
    void whatIsSetAsideIsGoneWithTheRun() throws IOException {
        for (boolean committed : new boolean[] {true, false}) {
            try (OutputFolder folder = open(false)) {
                Scratch.Part part = folder.scratch().begin();
                try (var out = part.write()) {
                    out.write(7);
                }
                try (var in = part.read()) {
                    assertThat(in.readAllBytes()).containsExactly(7);
                }
                if (committed) {
                    folder.commit(RUN);
                    assertThat(target.toFile().list()).containsExactly("run.json");
                    Files.delete(target.resolve("run.json"));
                }
            }
            assertNothingBeside();
        }
    }

    @Test
    void replacesAnEarlierOutputWhole() throws IOException {
        writeOut("old.csv", "old");
        try (OutputFolder folder = open(true)) {
            folder.write("new.csv", text("new"));
            folder.commit(RUN);
        }
        assertThat(target.toFile().list()).containsExactlyInAnyOrder("new.csv", "run.json");
        assertNothingBeside();
    }

    @Test
    void refusesAFolderThatIsNotEmptyUnlessForced() throws IOException {
        writeOut("old.csv", "old");
        assertThatThrownBy(() -> open(false))
                .isInstanceOf(OutputRefused.class)
                .hasMessage(target + " is not empty; use --force to replace an earlier output");
    }

    @Test
    void neverReplacesAFolderThatIsNotItsOwn() throws IOException {
        Files.createDirectory(target);
        Files.writeString(target.resolve("thesis.txt"), "years of work");
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class).hasMessageContaining("no run.json");
        Files.writeString(target.resolve("run.json"), "{\"program\": \"other\"}");
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class);
        assertThat(target.resolve("thesis.txt")).exists();
    }

    @Test
    void aMarkInAnotherEncodingOrWithoutEndIsNoMark() throws IOException {
        String mark = "{\"program\": \"weatherlap\", \"version\": \"%s\"}";
        Files.createDirectory(target);
        Files.write(target.resolve("run.json"), "\uFEFF{\"program\": \uD800".getBytes(Charset.forName("UTF-32BE")));
        assertThat(RunFile.read(target.resolve("run.json"))).isEmpty();
        Files.writeString(target.resolve("run.json"), mark.formatted("1".repeat(1_000_000)));
        assertThat(RunFile.read(target.resolve("run.json"))).isEmpty();
        Files.writeString(target.resolve("run.json"), mark.formatted("1"));
        assertThat(RunFile.read(target.resolve("run.json"))).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[", "null", "{\"program\": {}}", "{\"program\": \"weatherlap\"", "\u0000"})
    void aDamagedMarkIsNoMark(String mark) throws IOException {
        Files.createDirectory(target);
        Files.writeString(target.resolve("run.json"), mark);
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class);
    }

    @Test
    void neverDropsAFileThatSomebodyAddedOrEdited() throws IOException {
        writeOut("old.csv", "old");
        Files.writeString(target.resolve("notes.txt"), "call back on Friday");
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class).hasMessageContaining("notes.txt");
        Files.delete(target.resolve("notes.txt"));
        Files.writeString(target.resolve("old.csv"), "edited");
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class).hasMessageContaining("edited");
    }

    @Test
    void cleansUpAfterARunThatDied() throws IOException {
        writeOut("old.csv", "old");
        Files.createDirectories(parent.resolve(".out.weatherlap-new/charts"));
        Files.writeString(parent.resolve(".out.weatherlap-new/half.csv"), "ha");
        Files.createDirectories(parent.resolve(".out.weatherlap-earlier"));
        open(true).close();
        assertThat(target.resolve("old.csv")).hasContent("old");
        assertNothingBeside();
    }

    @Test
    void putsBackWhatARunKilledBetweenTwoRenamingsHadMovedAside() throws IOException {
        writeOut("old.csv", "old");
        Files.move(target, parent.resolve(".out.weatherlap-earlier"));
        open(true).close();
        assertThat(target.resolve("old.csv")).hasContent("old");
        assertNothingBeside();
    }

    @Test
    void ofTwoRunsIntoOneFolderOneWinsAndTheOtherSaysSo() throws IOException {
        try (OutputFolder first = open(false)) {
            assertThatThrownBy(() -> open(false))
                    .isInstanceOf(OutputRefused.class)
                    .hasMessageContaining("another run is writing");
            first.write("a.csv", text("a"));
            first.commit(RUN);
        }
        open(true).close();
        assertThat(target.resolve("a.csv")).exists();
    }

    @Test
    void refusesAFolderThatHoldsItsInput() throws IOException {
        writeOut("houses.csv", "house_id");
        assertThatThrownBy(() -> OutputFolder.open(target, true, List.of(target)))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("holds the input");
        assertThatThrownBy(() -> OutputFolder.open(parent, true, List.of(target.resolve("houses.csv"))))
                .isInstanceOf(OutputRefused.class);
        OutputFolder.open(target.resolve("report"), false, List.of(target)).close();
    }

    @Test
    void refusesAFileTheRootAndTheFolderOneStandsIn() throws IOException {
        Path file = Files.writeString(parent.resolve("file"), "");
        assertThatThrownBy(() -> OutputFolder.open(file, true, List.of())).isInstanceOf(OutputRefused.class);
        assertThatThrownBy(() -> OutputFolder.open(Path.of("/"), true, List.of()))
                .isInstanceOf(OutputRefused.class);
        assertThatThrownBy(() -> OutputFolder.open(Path.of("."), true, List.of()))
                .isInstanceOf(OutputRefused.class);
        assertThatThrownBy(() -> OutputFolder.open(Path.of(".."), true, List.of()))
                .isInstanceOf(OutputRefused.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../a", "/etc/passwd", "a/../../b", ".", "..", "", "a//b", "a\\b", "con", "nul.txt", "a:b", "é"})
    void neverWritesOutsideItself(String name) throws IOException {
        try (OutputFolder folder = open(false)) {
            assertThatThrownBy(() -> folder.write(name, text("x"))).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(parent).isEmptyDirectory();
    }

    @Test
    void aNameIsTakenOnce() throws IOException {
        try (OutputFolder folder = open(false)) {
            folder.write("a.csv", text("a"));
            assertThatThrownBy(() -> folder.write("a.csv", text("b"))).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> folder.write("run.json", text("b"))).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void followsALinkToTheFolderButDeletesNothingThroughALink() throws IOException {
        Path elsewhere = Files.createDirectory(parent.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("kept.txt"), "kept");
        writeOut("old.csv", "old");
        Path link = Files.createSymbolicLink(target.resolve("old-link"), elsewhere);
        assertThatThrownBy(() -> open(true)).isInstanceOf(OutputRefused.class).hasMessageContaining("old-link");
        Files.delete(link);
        Files.createDirectory(parent.resolve(".out.weatherlap-new"));
        Files.createSymbolicLink(parent.resolve(".out.weatherlap-new/link"), elsewhere);
        open(true).close();
        assertThat(elsewhere.resolve("kept.txt")).hasContent("kept");
    }

    @Test
    void neverDropsAFolderThatSomebodyMade() throws IOException {
        writeOut("old.csv", "old");
        Files.createDirectories(target.resolve("photos/front"));
        assertThatThrownBy(() -> open(true))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("empty folder photos/front");
        assertThat(target.resolve("photos/front")).exists();
    }

    @Test
    void aWayUpBehindALinkLeadsWhereTheSystemLeadsIt() throws IOException {
        Path elsewhere = Files.createDirectories(parent.resolve("far/away"));
        Files.createSymbolicLink(parent.resolve("link"), elsewhere);
        try (OutputFolder folder = OutputFolder.open(parent.resolve("link/../out"), false, List.of())) {
            folder.commit(RUN);
        }
        assertThat(parent.resolve("far/out/run.json")).exists();
        assertThat(target).doesNotExist();
        assertThatThrownBy(() -> OutputFolder.open(parent.resolve("not-there/../out"), false, List.of()))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("leads through a folder that is not there");
    }

    @Test
    void whatIsGivenUpLeavesNoParentsBehind() throws IOException {
        Path deep = parent.resolve("a/b/out");
        OutputFolder.open(deep, false, List.of()).close();
        assertThat(parent).isEmptyDirectory();
        try (OutputFolder folder = OutputFolder.open(deep, false, List.of())) {
            folder.commit(RUN);
        }
        assertThat(deep.resolve("run.json")).exists();
    }

    @Test
    void somethingElseUnderTheNameOfTheLockIsRefused() throws IOException {
        Files.createDirectory(parent.resolve(".out.weatherlap-lock"));
        assertThatThrownBy(() -> open(false))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining(".out.weatherlap-lock is not a file of this program");
    }

    private OutputFolder open(boolean force) {
        return OutputFolder.open(target, force, List.of());
    }

    private void writeOut(String name, String content) throws IOException {
        try (OutputFolder folder = open(false)) {
            folder.write(name, text(content));
            folder.commit(RUN);
        }
    }

    private void assertNothingBeside() {
        assertThat(parent.toFile().list()).as("files beside the target").allMatch("out"::equals);
    }

    private static Content text(String text) {
        return Content.of(text.getBytes(UTF_8));
    }
}
