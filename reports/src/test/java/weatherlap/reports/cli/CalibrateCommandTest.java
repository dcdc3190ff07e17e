package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Scalar;

class CalibrateCommandTest {
    private static final String CREW = "<b>north</b>";

    @TempDir
    private static Path folder;

    private static Path made;
    private static Path jobs;
    private static Path fitted;
    private static Cli run;

    /** Forty jobs of a made-up shop; job-0004 is made to take four times its hours, and a crew's name tries to be a tag. */
    @BeforeAll
    static void calibrate() throws IOException {
        made = folder.resolve("made");
        assertThat(Cli.run("generate", "--houses", 2, "--jobs", 40, "--seed", 3, "--out", made)
                        .status())
                .isZero();
        List<String> rows = Files.readAllLines(made.resolve("jobs.csv"));
        int hours = List.of(rows.get(0).split(",")).indexOf("person_hours");
        String[] cells = rows.get(4).split(",", -1);
        cells[hours] = Double.toString(4 * Double.parseDouble(cells[hours]));
        rows.set(4, String.join(",", cells));
        jobs = folder.resolve("shop.csv");
        Files.writeString(jobs, String.join("\n", rows).replace(",north,", "," + CREW + ",") + "\n");
        Files.copy(made.resolve("job-items.csv"), folder.resolve("job-items.csv"));
        fitted = folder.resolve("fitted");
        run = Cli.run("calibrate", jobs, "--out", fitted);
    }

    @Test
    void saysTheAnswerAndNamesWhatWasSetAside() {
        assertThat(run.err()).contains("the fitted rates are in ", "--assumptions ");
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains(
                        "on jobs that the fit had not seen they miss by",
                        "error on jobs that the fit had not seen (10 parts)")
                .containsPattern(
                        "Set aside, to be looked into: .*job-0004 \\(took [\\d.]+ person-hours where such a job by this crew takes [\\d.]+\\)");
    }

    @Test
    void writesWhatItPromises() throws IOException {
        assertThat(fitted.toFile().list())
                .containsExactlyInAnyOrder(
                        "labour-fit.csv",
                        "job-fit.csv",
                        "material-fit.csv",
                        "money-fit.csv",
                        "calibration.html",
                        "calibration.pdf",
                        "charts",
                        "assumptions",
                        "columns.json",
                        "run.json");
        assertThat(Files.readAllLines(fitted.resolve("labour-fit.csv")).get(0))
                .isEqualTo("step_id,prior_minutes,fitted_minutes,standard_error,low_90,high_90,jobs");
        assertThat(Files.readAllLines(fitted.resolve("job-fit.csv")))
                .hasSize(41)
                .filteredOn(row -> row.startsWith("job-0004,"))
                .singleElement()
                .asString()
                .endsWith(",yes,whole");
        assertThat(fitted.resolve("run.json"))
                .content()
                .contains("jobs/shop.csv", "jobs/job-items.csv", "\"command\" : \"calibrate\"");
        assertThat(run.out()).contains("Material paid, over the tables: ", "Gross margin: ");
        assertThat(fitted.resolve("assumptions/materials.csv")).content().contains(",own records,");
        assertThat(fitted.resolve("assumptions/scenario.toml"))
                .content()
                .containsPattern("\\[gross_margin\\]\\R.*\\R(.*\\R){4}basis = \"own records\"");
    }

    @Test
    void thePageIsWholeEscapedAndFetchesNothing() throws Exception {
        String page = Files.readString(fitted.resolve("calibration.html"));
        assertThat(page)
                .contains(
                        "What the fitted rates leave unexplained",
                        "Which rates moved the most money",
                        "under 32",
                        "stories",
                        "job-0004")
                .doesNotContain(CREW)
                .doesNotContainPattern("(?i)(src|href)=\"(https?:|//|file:)");
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE html>", ""))))
                        .getElementsByTagName("svg")
                        .getLength())
                .isEqualTo(4);
        try (PDDocument pdf = Loader.loadPDF(fitted.resolve("calibration.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .containsSubsequence("Labor rates fitted to shop.csv", "The rates", "Jobs set aside", "SHA-256");
        }
    }

    @Test
    void theFittedTablesAreTakenByCompareAndMoveItsLabour() throws IOException {
        Path before = folder.resolve("before");
        Path after = folder.resolve("after");
        assertThat(Cli.run("compare", made, "--draws", 20, "--out", before).status())
                .isZero();
        Cli cli =
                Cli.run("compare", made, "--draws", 20, "--assumptions", fitted.resolve("assumptions"), "--out", after);
        assertThat(cli.err()).contains("the report is in");
        assertThat(Files.readString(after.resolve("assumptions/labour-steps.csv")))
                .isEqualTo(Files.readString(fitted.resolve("assumptions/labour-steps.csv")))
                .contains("the shop's own records of");
        assertThat(Files.readString(after.resolve("houses.csv")))
                .isNotEqualTo(Files.readString(before.resolve("houses.csv")));
    }

    @Test
    void tablesThatWereFittedBeforeAreWarnedOf() {
        Cli again = Cli.run(
                "calibrate", jobs, "--assumptions", fitted.resolve("assumptions"), "--out", folder.resolve("again"));
        assertThat(again.status()).isZero();
        assertThat(again.err())
                .contains("warning: labour-steps.csv: holds rates that were fitted to job records before");
    }

    /** The crew's rows of labor are those of an ordinary crew times its factor; a crew that is not there is named. */
    @Test
    void aCrewOfTheRecordsCanBePriced() throws IOException {
        Path assumptions = fitted.resolve("assumptions");
        List<String> crews = Files.readAllLines(assumptions.resolve("crews.csv"));
        assertThat(crews).hasSize(4).first().isEqualTo("crew,factor,low_90,high_90,jobs,basis,source");
        Path out = folder.resolve("south");
        String[] south = crews.stream()
                .filter(row -> row.startsWith("south,"))
                .findFirst()
                .orElseThrow()
                .split(",");
        Cli cli =
                Cli.run("compare", made, "--draws", 20, "--assumptions", assumptions, "--crew", "south", "--out", out);
        assertThat(cli.err()).contains("the report is in");
        assertThat(out.resolve("assumptions/crews.csv")).doesNotExist();
        assertThat(low(out.resolve("assumptions")) / low(assumptions))
                .isCloseTo(Double.parseDouble(south[1]), within(1e-6));
        assertThat(out.resolve("assumptions/labour-steps.csv")).content().contains("the pace of crew south");
        double unknown = Math.log(Double.parseDouble(south[3]) / Double.parseDouble(south[2])) / (2 * 1.645);
        assertThat(unknown).isGreaterThan(0.01);
        assertThat(crewSpread(out.resolve("assumptions")))
                .isCloseTo(Math.hypot(crewSpread(assumptions), unknown), within(1e-4));
        refused("did you mean \"south\"?", "compare", "--assumptions", assumptions, "--crew", "suoth", "--out", out);
        refused("hold no crews.csv", "compare", "--crew", "south", "--out", folder.resolve("none"));
    }

    private static double crewSpread(Path assumptions) {
        return AssumptionTables.read(assumptions)
                .orElseThrow()
                .assumptions()
                .scenario()
                .value(Scalar.CREW_SPREAD);
    }

    private static double low(Path assumptions) throws IOException {
        return Files.readAllLines(assumptions.resolve("labour-steps.csv")).stream()
                .filter(row -> row.startsWith("unload,"))
                .mapToDouble(row -> Double.parseDouble(row.split(",")[4]))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatChangedSinceAnEarlierRunIsSaid() throws IOException {
        Path later = folder.resolve("later");
        assertThat(Cli.run("calibrate", jobs, "--since", fitted, "--out", later).status())
                .isZero();
        assertThat(Files.readString(later.resolve("calibration.html")))
                .contains("Since the last fit", "no rate has moved further than chance");
        refused(
                "there is no folder",
                "calibrate",
                jobs,
                "--since",
                folder.resolve("nowhere"),
                "--out",
                later,
                "--force");
    }

    @Test
    void jobsOfMeasuredHousesAreTakenOffThem() throws IOException {
        String house = Files.readAllLines(made.resolve("houses.csv")).get(1).split(",")[0];
        long windows = Files.readAllLines(made.resolve("openings.csv")).stream()
                .filter(row -> row.startsWith(house + ","))
                .count();
        Path own = write(
                "own.csv",
                "job_id,house_id,method,openings,person_hours\nj1," + house + ",insert," + windows + ",60\n");
        Path out = folder.resolve("own");
        assertThat(Cli.run("calibrate", own, "--portfolio", made, "--out", out).err())
                .contains("the fitted rates are in");
        assertThat(Files.readString(out.resolve("calibration.html"))).contains("1 job taken off a measured house");
        assertThat(Files.readString(out.resolve("run.json"))).contains("portfolio/openings.csv");
    }

    @Test
    void theSameJobsGiveTheSameBytes() throws IOException {
        Path again = folder.resolve("same");
        assertThat(Cli.run("calibrate", jobs, "--out", again, "--quiet")).isEqualTo(new Cli(0, run.out(), ""));
        for (String file : List.of("labour-fit.csv", "calibration.html", "calibration.pdf", "run.json")) {
            assertThat(again.resolve(file)).hasSameBinaryContentAs(fitted.resolve(file));
        }
    }

    @Test
    void badInputIsNamedAndNothingIsWritten() throws IOException {
        Path out = folder.resolve("none");
        Path bad = Files.writeString(
                folder.resolve("bad.csv"),
                "job_id,date,method,openings,person_hours\nj1,yesterday,insert,4,12\nj1,,inserted,x,-2\n");
        Cli cli = Cli.run("calibrate", bad, "--out", out);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err())
                .contains("bad.csv:2:date:", "bad.csv:3:method:", "bad.csv:3:openings:", "bad.csv:3:person_hours:")
                .doesNotContain("\tat ");
        refused("has a header and no rows", "calibrate", write("empty.csv", "job_id,method,openings\n"), "--out", out);
        refused(
                "no job has person_hours",
                "calibrate",
                write("silent.csv", "job_id,method,openings\nj1,insert,4\n"),
                "--out",
                out);
        refused("is missing", "calibrate", folder.resolve("nowhere.csv"), "--out", out);
        refused("is a folder", "calibrate", Files.createDirectory(folder.resolve("bare")), "--out", out);
        refused("--out DIR is missing", "calibrate", jobs);
        refused("crew_size", "calibrate", jobs, "--set", "crew_sise=3", "--out", out);
        refused("holds the input", "calibrate", jobs, "--out", folder, "--force");
        assertThat(out).doesNotExist();
    }

    private static Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static void refused(String message, Object... arguments) {
        Cli cli = Cli.run(arguments);
        assertThat(cli.err()).contains(message).doesNotContain("\tat ");
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.out()).isEmpty();
    }
}
