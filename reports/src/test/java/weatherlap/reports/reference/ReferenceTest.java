package weatherlap.reports.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.OpeningTable;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.portfolio.PortfolioText;
import weatherlap.reports.cli.Weatherlap;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.run.Simulator;

/**
 * Validation: what {@code compare} writes against the reference in numpy, which shares no code with it. Numbers without draws to 1e-6,
 * the rest within Monte Carlo error; {@code compare.py} says how and with what chance of a false alarm. Both sides have fixed seeds.
 */
class ReferenceTest {
    private static final int GENERATED_HOUSES = 5;

    @TempDir
    private static Path folder;

    private static Numpy numpy;
    private static Path portfolio;
    private static Path climate;
    private static Path site;

    @BeforeAll
    static void inputs() throws IOException, InterruptedException {
        numpy = Numpy.find();
        climate = folder.resolve("made").resolve("climate.csv");
        run("generate", "--houses", 1, "--climate", "--out", climate.getParent());
        portfolio = Files.createDirectory(folder.resolve("portfolio"));
        write(some(DemoPortfolio.load()), portfolio);
        site = Files.writeString(
                folder.resolve("made").resolve("elder-cove.toml"),
                "place = \"Elder Cove\"\nweather = [\"climate.csv\"]\n");
    }

    @Test
    void theBundledScenario() throws IOException, InterruptedException {
        Path report = compared("bundled", Optional.empty(), true, 2048);
        Numpy.Ended ended = numpy.run(
                "compare.py",
                report,
                portfolio,
                climate,
                "--draws",
                8192,
                "--full",
                fullDigits("bundled", Optional.empty(), true, List.of()));
        assertThat(ended.status()).as(ended.text()).isZero();
        aYearMoreIsNoticed(report);
    }

    private static void aYearMoreIsNoticed(Path report) throws IOException, InterruptedException {
        Path scenario = report.resolve("assumptions/scenario.toml");
        String text = Files.readString(scenario);
        String longer = text.replaceFirst("(?s)(\\[horizon_years].*?value = )20", "$121");
        assertThat(longer).isNotEqualTo(text);
        Files.writeString(scenario, longer);
        Numpy.Ended ended = numpy.run("compare.py", report, portfolio, climate, "--draws", 2048);
        assertThat(ended.status()).as(ended.text()).isEqualTo(1);
        assertThat(ended.text()).contains("THEY DISAGREE").doesNotContain("Traceback");
    }

    /** Every choice of the scenario another way round, a step and an item by region; rain of winds that are not those of the houses. */
    @Test
    void winterWorkOfOneHurriedPerson() throws IOException, InterruptedException {
        Optional<Path> tables = Optional.of(byRegion());
        String[] changes = {
            "region=valley_county",
            "temperature_f=25",
            "cold_curve=neca",
            "crew_size=1",
            "pricing=overhead_and_net",
            "workmanship=hurried",
            "shelter=wall_factor",
            "sill_flange=sealed",
            "warranty_covers=any_leak",
            "new_unit_material=wood",
            "reseal_years=6",
            "hours_per_day=6",
        };
        Path report = compared("winter", tables, false, 1024, changes);
        Numpy.Ended ended = numpy.run(
                "compare.py",
                report,
                portfolio,
                climate,
                "--draws",
                4096,
                "--full",
                fullDigits("winter", tables, false, List.of(changes)));
        assertThat(ended.status()).as(ended.text()).isZero();
    }

    /** Tables in which a step takes twice as long and an item costs twice as much in one region. */
    private static Path byRegion() throws IOException {
        Path tables = folder.resolve("by-region");
        run("assumptions", "--out", tables);
        twice(tables.resolve("labour-steps.csv"), "ff_out", ",3.5,6,12,,", ",7,12,24,,");
        twice(tables.resolve("materials.csv"), "foam", ",6,9,13,,", ",12,18,26,,");
        return tables;
    }

    private static void twice(Path table, String id, String elsewhere, String there) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(table)) {
            if (line.startsWith(id + ",")) {
                assertThat(line).contains(elsewhere);
                lines.add(line.replace(
                        elsewhere, elsewhere.replaceFirst(",,$", ",region!=valley_county|upland_county,")));
                String own = there.replaceFirst(",,$", ",region=valley_county|upland_county,");
                lines.add(line.replace(elsewhere, own).replaceFirst(id, id + "_there"));
            } else {
                lines.add(line);
            }
        }
        Files.write(table, lines);
    }

    private static Path compared(String name, Optional<Path> tables, boolean atSite, int draws, String... changes) {
        Path report = folder.resolve(name);
        List<Object> command =
                new ArrayList<>(List.of("compare", portfolio, "--draws", draws, "--quiet", "--out", report));
        tables.ifPresent(own -> command.addAll(List.of("--assumptions", own)));
        command.addAll(atSite ? List.of("--site", site) : List.of("--climate", climate));
        for (String change : changes) {
            command.addAll(List.of("--set", change));
        }
        run(command.toArray());
        return report;
    }

    private static void run(Object... arguments) {
        StringWriter err = new StringWriter();
        String[] texts = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        int status = Weatherlap.run(texts, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
        assertThat(status).as(err.toString()).isZero();
    }

    /** The houses written by hand, with what is odd in them, and the first of the generated. */
    private static Portfolio some(Portfolio demo) {
        List<House> houses = demo.houses();
        Stream<House> generated =
                houses.stream().filter(ReferenceTest::isGenerated).limit(GENERATED_HOUSES);
        Stream<House> byHand = houses.stream().filter(house -> !isGenerated(house));
        return new Portfolio(Stream.concat(generated, byHand).toList());
    }

    private static boolean isGenerated(House house) {
        return house.id().matches("G\\d+");
    }

    private static void write(Portfolio some, Path folder) throws IOException {
        try (Writer houses = Files.newBufferedWriter(folder.resolve("houses.csv"));
                Writer elevations = Files.newBufferedWriter(folder.resolve("elevations.csv"));
                Writer openings = Files.newBufferedWriter(folder.resolve("openings.csv"))) {
            PortfolioText.write(some, houses, elevations, openings);
        }
    }

    /** The numbers of the openings as they are before they are rounded; those that rest on draws, of one draw. */
    private static Path fullDigits(String name, Optional<Path> tables, boolean atSite, List<String> changes)
            throws IOException {
        List<String> one = Stream.concat(changes.stream(), Stream.of("draws=1")).toList();
        Inputs inputs = Inputs.read(new InputPaths(
                Optional.of(portfolio),
                tables,
                atSite ? List.of() : List.of(climate),
                Optional.of(site).filter(path -> atSite),
                one));
        Simulator simulator = inputs.simulator();
        ResultTable table = OpeningTable.of(inputs.portfolio().houses().stream()
                .map(house -> HouseChoice.of(simulator.simulateForPlans(house), 1))
                .toList());
        List<? extends ResultColumn<?>> columns = table.layout().columns().stream()
                .filter(column -> !column.name().equals("leak_causes"))
                .toList();
        String header = columns.stream().map(ResultColumn::name).collect(Collectors.joining(","));
        Stream<String> rows = IntStream.range(0, table.rows())
                .mapToObj(row ->
                        columns.stream().map(column -> cell(table, row, column)).collect(Collectors.joining(",")));
        return Files.write(
                folder.resolve(name + "-full.csv"),
                Stream.concat(Stream.of(header), rows).toList());
    }

    private static String cell(ResultTable table, int row, ResultColumn<?> column) {
        return column.kind() == ResultColumn.Kind.TEXT
                ? '"' + table.text(row, column.name()) + '"'
                : Double.toString(table.number(row, column).orElseThrow());
    }
}
