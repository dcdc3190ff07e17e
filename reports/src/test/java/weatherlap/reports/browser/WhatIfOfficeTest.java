package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.analysis.choice.EvenPrice;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Comparison;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.output.OutputRequest;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Simulator;

/** What the workbook computes in a spreadsheet is what a run with the changed settings gives, to the cent. */
class WhatIfOfficeTest {
    private static final Offset<Double> CENT = within(0.005);

    /** A change of settings, and of the cells of the sheet What if that it stands for. */
    private record Change(List<String> settings, Map<String, String> cells) {}

    private static final Map<String, Change> CHANGES = Map.of(
            "none", new Change(List.of(), Map.of()),
            "margin", new Change(List.of("gross_margin=0.35"), Map.of("B6", "0.35")),
            "wage",
                    new Change(
                            List.of("wage.national.carpenter=39.5", "burden.valley_county.helper=0.61"),
                            Map.of("B14", "39.5", "E15", "0.61")),
            "one", new Change(List.of("crew_size=1"), Map.of("B7", "1")),
            "four", new Change(List.of("crew_size=4"), Map.of("B7", "4")),
            "years", new Change(List.of("horizon_years=10"), Map.of("B8", "10")),
            "all",
                    new Change(
                            List.of(
                                    "gross_margin=0.47",
                                    "service_reserve=0.01",
                                    "crew_size=3",
                                    "horizon_years=30",
                                    "glass_value_usd_per_ft2_year=9",
                                    "wage.national.helper=19"),
                            Map.of("B6", "0.47", "B9", "0.01", "B7", "3", "B8", "30", "B11", "9", "D14", "19")));

    @TempDir
    Path folder;

    @Test
    void everyChangeGivesWhatARunWithItGives() throws Exception {
        Path office = Tools.office();
        Path houses = write(folder.resolve("in"));
        Path report = folder.resolve("report");
        new Compare(paths(houses, List.of()), new OutputRequest(report, false), 1).run(HandoutFiles.SILENT);
        Path changed = Files.createDirectory(folder.resolve("changed"));
        for (Map.Entry<String, Change> change : CHANGES.entrySet()) {
            change(
                    report.resolve("workbook.xlsx"),
                    change.getValue().cells(),
                    changed.resolve(change.getKey() + ".xlsx"));
        }
        Path computed = Files.createDirectory(folder.resolve("computed"));
        try (Stream<Path> books = Files.list(changed)) {
            Tools.convert(office, folder, "xlsx", computed, books.toList());
        }
        for (Map.Entry<String, Change> change : CHANGES.entrySet()) {
            check(
                    change.getKey(),
                    computed.resolve(change.getKey() + ".xlsx"),
                    paths(houses, change.getValue().settings()));
        }
        check("as written", report.resolve("workbook.xlsx"), paths(houses, List.of()));
    }

    private static void check(String about, Path workbook, InputPaths paths) throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(workbook.toFile())) {
            List<HouseChoice> run = run(paths);
            jobs(about, book, run);
            windows(about, book, run);
            average(about, book, run);
        }
    }

    private static List<HouseChoice> run(InputPaths paths) throws IOException {
        Inputs inputs = Inputs.read(paths);
        Simulator simulator = inputs.simulator();
        double limit = inputs.scenario().value(Scalar.RISK_LIMIT);
        return inputs.portfolio().houses().stream()
                .map(house -> HouseChoice.of(simulator.simulateForPlans(house), limit))
                .toList();
    }

    private static void jobs(String change, ReadableWorkbook book, List<HouseChoice> run) throws IOException {
        List<Row> rows = rows(book, "Behind the what-if");
        rows = rows.subList(4, rows.size());
        int row = 0;
        for (HouseChoice choice : run) {
            for (MethodResult result : choice.result().methods().values()) {
                Row line = rows.get(row++);
                String about = change + ", " + choice.result().house().id() + " " + result.method();
                assertThat(line.getCellText(0))
                        .isEqualTo(choice.result().house().id());
                assertThat(line.getCellText(2)).isEqualTo(result.method().label());
                assertThat(number(line, 6)).as(about).isEqualTo(result.crewDays());
                assertThat(number(line, 10)).as(about).isCloseTo(result.priceUsd(), CENT);
                assertThat(number(line, 11)).as(about).isCloseTo(result.grossProfitUsd(), CENT);
                assertThat(number(line, 12)).as(about).isCloseTo(result.grossProfitPerCrewDayUsd(), CENT);
                assertThat(number(line, 15))
                        .as(about)
                        .isCloseTo(result.horizonCostUsd().mean(), CENT);
            }
        }
        assertThat(row).isEqualTo(rows.size());
    }

    /** A window is priced by each method that nothing closes there; else the reason stands in the cell. */
    private static void windows(String change, ReadableWorkbook book, List<HouseChoice> run) throws IOException {
        List<Row> rows = rows(book, "Price by window");
        int row = 3;
        int closed = 0;
        for (HouseChoice choice : run) {
            List<Map<Method, OpeningResult>> openings = choice.result().byOpening();
            for (int o = 0; o < openings.size(); o++) {
                Row line = rows.get(row++);
                for (OpeningResult opening : openings.get(o).values()) {
                    int column = 9 + opening.method().ordinal();
                    assertThat(line.getCellText(3)).isEqualTo(opening.opening().id());
                    if (choice.closed().get(o).containsKey(opening.method())) {
                        assertThat(line.getCellText(column)).isEqualTo("rotten frames");
                        closed++;
                    } else {
                        assertThat(number(line, column))
                                .as(change + ", " + opening.opening().id())
                                .isCloseTo(opening.priceUsd(), CENT);
                    }
                }
            }
        }
        assertThat(closed).isEqualTo(1);
    }

    private static void average(String change, ReadableWorkbook book, List<HouseChoice> run) throws IOException {
        List<Row> rows = rows(book, "What if");
        Comparison.Sum sum = new Comparison.Sum(50, run.size());
        run.forEach(sum::add);
        Answer answer = sum.comparison().answer();
        double service = number(rows.get(8), 1);
        EvenPrice even = EvenPrice.of(answer, service);
        for (Method method : answer.contrast().both()) {
            int column = 1 + answer.contrast().both().indexOf(method);
            assertThat(line(rows, "Price of a house", column))
                    .as(change)
                    .isCloseTo(answer.of(method).priceUsd(), CENT);
            assertThat(line(rows, "Crew days", column))
                    .as(change)
                    .isCloseTo(answer.of(method).crewDays(), CENT);
            assertThat(line(rows, "Gross profit a crew day", column))
                    .as(change)
                    .isCloseTo(answer.of(method).grossProfitPerCrewDayUsd(), CENT);
            assertThat(line(rows, "Family’s cost: the price and those two", column))
                    .as(change)
                    .isCloseTo(answer.of(method).horizonCostUsd(), CENT);
            assertThat(line(rows, "Add a window, to earn that of the other", column))
                    .as(change)
                    .isCloseTo(even.raised() == method ? even.perWindowUsd() : 0, CENT);
        }
    }

    private static double line(List<Row> rows, String name, int column) {
        return rows.stream()
                .filter(row -> row.getCellText(0).equals(name))
                .mapToDouble(row -> number(row, column))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + name));
    }

    /** By their numbers, so that an empty one counts. */
    private static List<Row> rows(ReadableWorkbook book, String name) throws IOException {
        Sheet sheet = book.findSheet(name).orElseThrow(() -> new AssertionError("no sheet " + name));
        List<Row> rows = new ArrayList<>();
        for (Row row : sheet.read()) {
            while (rows.size() < row.getRowNum() - 1) {
                rows.add(row);
            }
            rows.add(row);
        }
        return rows;
    }

    private static double number(Row row, int column) {
        return Double.parseDouble(row.getCell(column).getRawValue());
    }

    /** As a reader does who types into yellow cells: what formulas came to before is forgotten, so that they are worked out anew. */
    private static void change(Path workbook, Map<String, String> cells, Path changed) throws IOException {
        Files.copy(workbook, changed);
        try (FileSystem zip = FileSystems.newFileSystem(changed)) {
            for (int s = 1; s <= 4; s++) {
                Path sheet = zip.getPath("xl/worksheets/sheet" + s + ".xml");
                Files.writeString(sheet, Files.readString(sheet).replaceAll("</f><v>[^<]*</v>", "</f>"));
            }
            Path sheet = zip.getPath("xl/worksheets/sheet2.xml");
            String xml = Files.readString(sheet);
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                String typed = typed(xml, cell.getKey(), cell.getValue());
                assertThat(typed).as(cell.getKey()).isNotEqualTo(xml);
                xml = typed;
            }
            Files.writeString(sheet, xml);
        }
    }

    /** Cells do not say where they stand: the number is that of so many cells after the first of its row, none of which is left out. */
    private static String typed(String xml, String cell, String value) {
        int before = cell.charAt(0) - 'A';
        return xml.replaceFirst(
                "(<row r=\"" + cell.substring(1) + "\"[^>]*>(?:<c .*?</c>){" + before + "}<c [^>]*><v>)[^<]*",
                "$1" + value);
    }

    private static InputPaths paths(Path houses, List<String> settings) {
        return new InputPaths(
                Optional.of(houses),
                Optional.empty(),
                Optional.empty(),
                Stream.concat(Stream.of("draws=50"), settings.stream()).toList());
    }

    /** A house in siding with a rotten frame, and one in brick with wages of its own. */
    private static Path write(Path in) throws IOException {
        Files.createDirectories(in);
        Files.writeString(in.resolve("houses.csv"), """
                house_id,label,year_built,terrain,cladding,barrier,storeys,region
                h1,=1+1,1948,suburban,vinyl_siding,building_paper,2,
                h2,*,1962,farmland,brick_veneer,housewrap,1,valley_county
                """);
        Files.writeString(in.resolve("elevations.csv"), """
                house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in,course_exposure_in,panel_length_in
                h1,north,0,60,18,0,8,144
                h1,south,180,60,18,12,8,144
                h2,west,270,40,9,6,,
                """);
        String rest = ",drywall,1,unknown,unknown,unknown,unknown\n";
        Files.writeString(
                in.resolve("openings.csv"),
                "house_id,elevation_id,opening_id,room,operation,frame_width_in,frame_height_in,left_in,sill_height_in,"
                        + "existing_material,frame_condition,interior_return,return_layers,head_lap,jamb_lap,sill_lap,stain\n"
                        + "h1,north,a,living,double_hung,36,54,24,30,wood,rotten" + rest
                        + "h1,north,b,living,picture,72,60,96,24,wood,sound" + rest
                        + "h1,south,c,kitchen,slider,48,36,60,140,aluminum,sound" + rest
                        + "h1,south,d,living,double_hung,30,48,200,30,wood,sound" + rest
                        + "h2,west,e,bath,awning,24,24,24,60,aluminum,sound" + rest
                        + "h2,west,f,living,double_hung,36,60,90,24,wood,sound" + rest);
        return in;
    }
}
