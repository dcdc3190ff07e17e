package weatherlap.reports.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.shop.Shop;
import weatherlap.reports.format.Html;
import weatherlap.reports.format.Pdf;
import weatherlap.reports.page.Paper;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.HouseTakeoff;

/** The sheet says what the takeoff says, for every house of the demo by every method and by several. */
class CrewSheetsTest {
    private static final Assumptions ASSUMPTIONS = AssumptionTables.bundled().assumptions();
    private static final RainClimate CLIMATE = RainClimate.of(DemoClimate.hourly(), ASSUMPTIONS.scenario());
    private static final LeakTables TABLES = LeakTables.of(ASSUMPTIONS);
    private static final List<HouseTakeoff> TAKEOFFS = DemoPortfolio.load().houses().stream()
            .map(house -> HouseTakeoff.of(house, ASSUMPTIONS, CLIMATE, TABLES))
            .flatMap(each -> Stream.concat(each.values().stream(), Stream.of(mixed(each))))
            .toList();

    /** The methods in turn, window by window. */
    private static HouseTakeoff mixed(Map<Method, HouseTakeoff> each) {
        List<Method> open = List.copyOf(each.keySet());
        int openings = each.get(open.get(0)).openings().size();
        return HouseTakeoff.mixed(
                each,
                IntStream.range(0, openings)
                        .mapToObj(o -> open.get(o % open.size()))
                        .toList());
    }

    private static Stream<CrewSheet> sheets() {
        return TAKEOFFS.stream().map(CrewSheetsTest::sheet);
    }

    private static CrewSheet sheet(HouseTakeoff takeoff) {
        return CrewSheets.of(
                Shop.UNNAMED.letterhead(), takeoff, Optional.empty(), Optional.empty(), Paper.LETTER, "", "");
    }

    @Test
    void aRottenFrameIsToldBeforeAnInsertIsSetInIt() {
        assertThat(TAKEOFFS.stream().filter(takeoff -> takeoff.methods().equals(Set.of(Method.INSERT))))
                .anyMatch(CrewSheetsTest::rotten)
                .allSatisfy(takeoff -> assertThat(sheet(takeoff).cautions().stream()
                                .anyMatch(caution -> caution.endsWith("mend it first, or do not set an insert there.")))
                        .isEqualTo(rotten(takeoff)));
    }

    private static boolean rotten(HouseTakeoff takeoff) {
        return takeoff.openings().stream()
                .anyMatch(opening -> opening.opening().frame().rotten());
    }

    @Test
    void countsAreThoseOfTheTakeoff() {
        assertThat(TAKEOFFS).hasSizeGreaterThan(100).allSatisfy(takeoff -> {
            CrewSheet sheet = sheet(takeoff);
            int panels = takeoff.panelsDown().stream().mapToInt(p -> p).sum();
            int screws = takeoff.openings().stream()
                    .mapToInt(o -> o.geometry().fasteners().size())
                    .sum();
            assertThat(sheet.figures())
                    .contains(Numbers.plain(
                                    Units.minutesToHours(takeoff.work().labour().value()), 1)
                            + " person-hours, travel included");
            if (takeoff.methods().contains(Method.FULL_FLANGE)) {
                assertThat(sheet.figures()).contains(Numbers.count(screws, "screw", "screws"));
            }
            if (panels > 0) {
                assertThat(sheet.figures()).anyMatch(figure -> figure.matches(panels + " (panel|board)s? down"));
                String walls = sheet.walls().stream()
                        .flatMap(wall -> wall.siding().stream())
                        .filter(line -> line.startsWith("From the top: "))
                        .map(line -> line.substring("From the top: ".length(), line.indexOf(". Back")))
                        .reduce("", (a, b) -> a + " " + b);
                assertThat(walls.trim().split("[ ,]+")).hasSize(panels);
            }
            assertThat(sheet.walls()).hasSize((int) takeoff.house().elevations().stream()
                    .filter(wall -> !wall.openings().isEmpty())
                    .count());
        });
    }

    @Test
    void thePickListIsTheMaterialsInWholePackages() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            List<List<String>> rows = sheet(takeoff).pickList().rows();
            List<List<String>> items = rows.stream()
                    .filter(row -> !row.get(0).startsWith("New unit"))
                    .toList();
            List<MaterialLine> bought = takeoff.work().materials().stream()
                    .filter(line -> line.packages() > 0)
                    .toList();
            assertThat(items).hasSameSizeAs(bought);
            for (int i = 0; i < items.size(); i++) {
                assertThat(items.get(i).get(0)).isEqualTo(bought.get(i).item().tradeName());
                assertThat(items.get(i).get(1))
                        .startsWith(Numbers.plain(bought.get(i).packages(), 0) + " "
                                + bought.get(i).item().soldAs());
            }
            assertThat(rows.stream()
                            .filter(row -> row.get(0).startsWith("New unit"))
                            .mapToInt(row -> Integer.parseInt(row.get(1)))
                            .sum())
                    .isEqualTo(takeoff.openings().stream()
                            .mapToInt(o -> o.geometry().order().units())
                            .sum());
        });
    }

    @Test
    void theStepsAddUpToTheLabourOfTheHouse() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            List<List<String>> rows = sheet(takeoff).labour().rows();
            List<Double> minutes = rows.stream()
                    .map(row -> Double.parseDouble(row.get(2).replace(",", "")))
                    .toList();
            double total = minutes.get(minutes.size() - 1);
            assertThat(total).isCloseTo(takeoff.work().labour().value(), org.assertj.core.api.Assertions.within(0.5));
            double steps = minutes.stream().mapToDouble(m -> m).sum() - total;
            assertThat(steps).isCloseTo(total, org.assertj.core.api.Assertions.within(0.5 * rows.size()));
        });
    }

    @Test
    void everyWindowStandsOnceAmongTheSizesTheEdgesAndTheDays() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            CrewSheet sheet = sheet(takeoff);
            assertThat(sheet.walls().stream()
                            .flatMap(wall -> wall.tables().stream().flatMap(own -> own.sizes().rows().stream())))
                    .hasSameSizeAs(takeoff.openings());
            assertThat(sheet.walls().stream()
                            .flatMap(wall -> wall.tables().stream().flatMap(own -> own.edges().rows().stream())))
                    .hasSameSizeAs(takeoff.openings());
            String days = sheet.days().rows().stream().map(row -> row.get(1)).reduce("", (a, b) -> a + " " + b);
            assertThat(days.replaceAll("\\D+", " ").trim().split(" ")).hasSameSizeAs(takeoff.openings());
        });
    }

    /** DOE Building America guidance and AAMA 2400 Method A: pan, unit, jambs, head, flap. */
    @Test
    void lapsGoOnFromBelow() {
        assertThat(sheets().filter(sheet ->
                        sheet.walls().get(0).tables().get(0).edges().heads().contains("Head strip")))
                .isNotEmpty()
                .allSatisfy(sheet -> assertThat(
                                String.join("\n", sheet.orders().get(0).laps()))
                        .containsSubsequence(
                                "\nSill: ",
                                "\nBead: ",
                                "\nUnit: ",
                                "\nJamb strips: ",
                                "\nHead strip: ",
                                "\nHead flap: last"));
    }

    @Test
    void oldHousesAreLeadSafeAndDustyWallsWarnOfSilica() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            House house = takeoff.house();
            String cautions = String.join("\n", sheet(takeoff).cautions());
            assertThat(cautions.contains("LEAD")).isEqualTo(house.leadSafe());
            assertThat(cautions.contains("Silica"))
                    .isEqualTo(
                            switch (house.cladding()) {
                                case BRICK_VENEER, STUCCO, FIBER_CEMENT -> true;
                                case VINYL_SIDING, ALUMINUM_SIDING, WOOD_LAP -> false;
                            });
            assertThat(cautions).contains("1926.501", "local code", "no legal limit");
        });
    }

    @Test
    void whereWindowsGetDifferentMethodsEachIsNamedWithItsOwn() {
        List<HouseTakeoff> mixed =
                TAKEOFFS.stream().filter(takeoff -> takeoff.single().isEmpty()).toList();
        assertThat(mixed).hasSizeGreaterThan(50).allSatisfy(takeoff -> {
            CrewSheet sheet = sheet(takeoff);
            assertThat(CrewSheets.title(sheet)).startsWith("Crew sheet, window by window: ");
            List<List<String>> rows = sheet.methods().orElseThrow().rows();
            for (int o = 0; o < takeoff.openings().size(); o++) {
                String label = takeoff.openings().get(o).geometry().method().label();
                assertThat(rows.get(o)).startsWith(Integer.toString(o + 1)).endsWith(label);
                String mark = Integer.toString(o + 1);
                assertThat(sheet.orders())
                        .filteredOn(order -> List.of(order.heading()
                                        .replaceAll("\\D+", " ")
                                        .trim()
                                        .split(" "))
                                .contains(mark))
                        .singleElement()
                        .satisfies(order -> assertThat(order.heading().toLowerCase(java.util.Locale.ROOT))
                                .startsWith(label));
            }
            assertThat(sheet.orders()).hasSameSizeAs(takeoff.methods());
            List<String> steps =
                    sheet.labour().rows().stream().map(row -> row.get(0)).toList();
            assertThat(steps).doesNotHaveDuplicates();
        });
    }

    /** A picture that only says that no siding comes down is left out. */
    @Test
    void aWallIsDrawnWhereItsSidingComesDown() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            List<Integer> drawn =
                    takeoff.panelsDown().stream().filter(panels -> panels > 0).toList();
            assertThat(sheet(takeoff).walls().stream()
                            .filter(wall -> !wall.svg().isEmpty()))
                    .hasSameSizeAs(drawn);
        });
    }

    /** Every step of a sheet of several methods stands in one of two columns, none so long that a page of paper across cannot hold it. */
    @Test
    void theStepsOfSeveralMethodsStandInTwoColumns() {
        assertThat(sheets()).allSatisfy(sheet -> {
            assertThat(sheet.labourColumns().stream().flatMap(column -> column.rows().stream()))
                    .containsExactlyElementsOf(sheet.labour().rows());
            assertThat(sheet.labourColumns())
                    .allSatisfy(column -> assertThat(column.rows()).hasSizeLessThanOrEqualTo(44));
        });
    }

    /** The sheet with most steps leaves no page to a heading or a line alone. */
    @Test
    void noPageHoldsALineAlone() throws IOException {
        CrewSheet longest = sheets().max(
                        Comparator.comparingInt(sheet -> sheet.labour().rows().size()))
                .orElseThrow();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Pdf.of("", Html.render("crewsheet.jte", longest)).writeTo(bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(pdf).split("\\s+"))
                        .as("words of page %d of %s", page, longest.title())
                        .hasSizeGreaterThan(50);
            }
        }
    }

    /** Boards of wood are no panels, and what saves nothing is not told. */
    @Test
    void aCrewsWordsForWhatItCounts() {
        for (HouseTakeoff takeoff : TAKEOFFS) {
            CrewSheet sheet = sheet(takeoff);
            String counted = sheet.labour().rows().toString();
            assertThat(counted).doesNotContainPattern("\\d (elevation|opening|fastener|in\\.)");
            if (!takeoff.house().cladding().hungInPanels()) {
                assertThat(counted).doesNotContain(" panel");
            }
            assertThat(sheet.walls()).allSatisfy(wall -> assertThat(String.join(" ", wall.siding()))
                    .doesNotContainPattern("^(\\d+) .* it would be \\1\\b"));
        }
    }

    @Test
    void whatNobodyWroteOfTheJobIsAsked() {
        assertThat(sheet(TAKEOFFS.get(0)).job())
                .containsExactly(
                        new CrewSheet.JobFact("Address", ""),
                        new CrewSheet.JobFact("Phone", ""),
                        new CrewSheet.JobFact("Parking", ""),
                        new CrewSheet.JobFact("Pets", ""));
    }

    /** A note of the house, and one of a wall with the wall's name. */
    @Test
    void notesStandUnderWhatIsAsked() {
        House house = TAKEOFFS.get(0).house();
        House noted = new House(
                house.id(),
                house.label(),
                house.yearBuilt(),
                house.terrain(),
                house.cladding(),
                house.barrier(),
                house.storeys(),
                house.region(),
                house.leadTest(),
                house.elevations(),
                Map.of("note_gate", "locked <b>", "note_ladder, back", "long one", "job_phone", "555"));
        assertThat(JobFacts.of(noted))
                .contains(new CrewSheet.JobFact("Phone", "555"))
                .endsWith(
                        new CrewSheet.JobFact("Gate", "locked <b>"), new CrewSheet.JobFact("Ladder, back", "long one"));
    }

    /** A drawing has its own size and its strokes keep theirs, and every page is well-formed. */
    @Test
    void everySheetIsWellFormedAndItsDrawingsFitThePaper() {
        assertThat(TAKEOFFS).allSatisfy(takeoff -> {
            CrewSheet sheet = sheet(takeoff);
            assertThat(sheet.walls()).allSatisfy(wall -> {
                if (wall.svg().isEmpty()) {
                    return;
                }
                String start = wall.svg().substring(0, wall.svg().indexOf('>'));
                assertThat(size(start, " width")).isLessThanOrEqualTo(Paper.LETTER.acrossWidthPx());
                assertThat(size(start, " height")).isLessThanOrEqualTo(Paper.LETTER.acrossHeightPx() * 0.8);
                assertThat(size(start, "stroke-width")).isEqualTo(1);
            });
            assertThat(new javax.xml.parsers.SAXParser[] {parser()})
                    .allSatisfy(parser -> parser.parse(
                            new org.xml.sax.InputSource(new java.io.StringReader(Html.render("crewsheet.jte", sheet))),
                            new org.xml.sax.helpers.DefaultHandler()));
        });
    }

    private static javax.xml.parsers.SAXParser parser() throws Exception {
        return javax.xml.parsers.SAXParserFactory.newInstance().newSAXParser();
    }

    private static double size(String start, String name) {
        return Double.parseDouble(start.replaceFirst("(?s).*" + name + "=\"([0-9.]+)\".*", "$1"));
    }
}
