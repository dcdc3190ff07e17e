package weatherlap.reports.spark;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.Shuffled;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.jobs.Generate;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputRequest;

/** A job of Spark against {@code compare} over the same tables, in no order and cut into several pieces each. */
class CompareOnSparkTest {
    private static final int HOUSES = 2000;
    private static final List<String> ROWS = List.of("houses.csv", "elevations.csv", "openings.csv", "leaks.csv");

    @TempDir
    private static Path folder;

    private static Path town;
    private static SparkSession spark;

    /** Says nothing. */
    private enum Silent implements Messages {
        HERE;

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
    }

    @BeforeAll
    static void begin() throws IOException {
        spark = SparkSession.builder()
                .master("local[2]")
                .config("spark.ui.enabled", "false")
                .config("spark.driver.bindAddress", "127.0.0.1")
                .config("spark.driver.host", "127.0.0.1")
                .config("spark.local.dir", folder.resolve("aside").toString())
                .config("spark.sql.files.maxPartitionBytes", "500000")
                .getOrCreate();
        Path inOrder = folder.resolve("in-order");
        new Generate(HOUSES, 5, Optional.empty(), false, 0, new OutputRequest(inOrder, false)).run(Silent.HERE);
        town = Shuffled.write(inOrder, folder.resolve("town"), 11);
    }

    @AfterAll
    static void end() {
        spark.stop();
    }

    @Test
    void rowsAreThoseOfCompareToTheByteAndSoIsWhatIsMadeFromTheirSums() throws IOException {
        Path own = folder.resolve("own");
        InputPaths paths =
                new InputPaths(Optional.of(town), Optional.empty(), Optional.empty(), List.of("draws=16"));
        new Compare(paths, new OutputRequest(own, false), 2).run(Silent.HERE);
        Path rows = folder.resolve("rows");
        Path report = folder.resolve("report");
        StringWriter said = new StringWriter();
        assertThat(CompareOnSpark.run(
                        new PrintWriter(said),
                        new PrintWriter(said),
                        town.toString(),
                        "--rows",
                        rows.toString(),
                        "--parquet",
                        "--out",
                        report.toString(),
                        "--houses-a-task",
                        "300",
                        "--set",
                        "draws=16"))
                .isZero();
        for (String file : ROWS) {
            List<Path> parts = parts(rows.resolve(file));
            assertThat(parts).as(file).hasSizeGreaterThan(3);
            assertThat(joined(parts)).as(file).isEqualTo(Files.readString(own.resolve(file), UTF_8));
            assertThat(spark.read()
                            .parquet(rows.resolve(file.replace("csv", "parquet")).toString())
                            .count())
                    .as(file)
                    .isEqualTo(Files.lines(own.resolve(file)).count() - 1);
        }
        for (String file : List.of("summary.json", "rule.csv", "season.csv", "price-list.csv")) {
            assertThat(report.resolve(file)).as(file).hasSameTextualContentAs(own.resolve(file));
        }
        assertThat(report.resolve("report.pdf")).exists();
    }

    @Test
    void aBadCellIsNamedWithItsHouseAndNothingIsWritten() throws IOException {
        Path bad = Files.createDirectory(folder.resolve("bad"));
        for (String file : PortfolioTables.FILES) {
            List<String> lines = Files.readAllLines(folder.resolve("in-order").resolve(file));
            Files.write(
                    bad.resolve(file),
                    lines.stream()
                            .filter(line -> line.startsWith("house_id") || line.startsWith("G000"))
                            .map(line -> line.startsWith("G0007,front,W1,") ? line.replace(",living,", ",lving,") : line)
                            .toList());
        }
        Path rows = folder.resolve("no-rows");
        Path report = folder.resolve("no-report");
        StringWriter said = new StringWriter();
        assertThat(CompareOnSpark.run(
                        new PrintWriter(said),
                        new PrintWriter(said),
                        bad.toString(), "--rows", rows.toString(), "--out", report.toString(), "--set", "draws=4"))
                .isEqualTo(2);
        assertThat(said.toString()).contains("house g0007: openings.csv:2:room: ", "lving", "living");
        assertThat(rows).doesNotExist();
        assertThat(report).doesNotExist();
    }

    private static List<Path> parts(Path table) throws IOException {
        try (Stream<Path> files = Files.list(table)) {
            return files.filter(file -> file.getFileName().toString().startsWith("part-"))
                    .sorted()
                    .toList();
        }
    }

    /** Files of one table as one, its header once. */
    private static String joined(List<Path> parts) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path part : parts) {
            String text = Files.readString(part, UTF_8);
            texts.add(texts.isEmpty() ? text : text.substring(text.indexOf('\n') + 1));
        }
        return texts.stream().collect(Collectors.joining());
    }
}
