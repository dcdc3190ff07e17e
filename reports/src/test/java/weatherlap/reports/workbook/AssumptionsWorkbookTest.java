package weatherlap.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

class AssumptionsWorkbookTest {
    private static final AssumptionTables BUNDLED = AssumptionTables.bundled();

    @TempDir
    private Path folder;

    private Path written(AssumptionTables tables) throws IOException {
        Path workbook = folder.resolve("shop.xlsx");
        try (OutputStream out = Files.newOutputStream(workbook)) {
            new AssumptionsWorkbook(tables).content().writeTo(out);
        }
        return workbook;
    }

    private AssumptionTables readBack(AssumptionTables tables) throws IOException {
        return said(written(tables)).tables();
    }

    /** What came of reading a workbook: the tables, or null, and everything that is said. */
    private record Said(AssumptionTables tables, List<String> errors, List<String> warnings) {}

    private static Said said(Path workbook) {
        try (InputWorkbooks workbooks = new InputWorkbooks()) {
            Path unpacked = workbooks.folder(workbook.toString());
            if (!workbooks.problems().isEmpty()) {
                return new Said(null, workbooks.problems(), workbooks.warnings());
            }
            Loaded<AssumptionTables> read = AssumptionTables.read(unpacked);
            return new Said(
                    read.value().orElse(null),
                    read.errors().stream()
                            .map(Problem::toString)
                            .map(workbooks::said)
                            .toList(),
                    Stream.concat(
                                    workbooks.warnings().stream(),
                                    read.warnings().stream().map(Problem::toString))
                            .toList());
        }
    }

    /** The workbook of the bundled tables with other values of settings. */
    private Said typed(Map<String, String> values) throws IOException {
        MadeWorkbook made = MadeWorkbook.of(written(BUNDLED));
        values.forEach((name, value) -> made.put("Settings", made.row("Settings", name), 1, value));
        return said(made.write(folder.resolve("typed.xlsx")));
    }

    /** Every number and word of every row, and of the scenario. */
    @Test
    void assumptionsAreTheSameAfterAWorkbook() throws IOException {
        AssumptionTables back = readBack(BUNDLED);
        assertThat(back.assumptions()).isEqualTo(BUNDLED.assumptions());
        assertThat(back.texts().keySet()).isEqualTo(BUNDLED.texts().keySet());
        Stream.concat(
                        AssumptionTables.SCHEMAS.stream().map(schema -> schema.file()),
                        Stream.of(AssumptionTables.NUMBERS))
                .forEach(file -> assertThat(back.rows(file)).as(file).isEqualTo(BUNDLED.rows(file)));
    }

    /** Values, ranges, bases, sources and choices of one's own, to the folder and back: nothing is lost and nothing more is changed. */
    @Test
    void whatWasChangedStaysChanged() throws IOException {
        AssumptionTables changed = BUNDLED.with(List.of(
                        "wage.national.carpenter=31",
                        "gross_margin=0.3",
                        "crew_size=3",
                        "horizon_years=25",
                        "methods=full_frame,insert",
                        "pricing=overhead_and_net"))
                .orElseThrow();
        AssumptionTables back = readBack(changed);
        assertThat(back.assumptions()).isEqualTo(changed.assumptions()).isNotEqualTo(BUNDLED.assumptions());
        assertThat(readBack(back).texts()).isEqualTo(back.texts());
    }

    @Test
    void settingsAreReadAsPeopleTypeThem() throws IOException {
        Said said = typed(Map.of(
                "gross_margin", "t:35%",
                "discount_rate", "t:6 %",
                "overhead_usd_per_crew_hour", "t:$34.00",
                "repair_cost_high_usd", "t:14,250",
                "setback_in", "t:7/8\"",
                "travel_minutes_per_day", "t:45 min",
                "hours_per_day", "v:9",
                "workmanship", "t:Careful",
                "methods", "t:Full frame, insert",
                "sill_flange", "t:SEALED"));
        assertThat(said.errors()).isEmpty();
        assertThat(said.warnings()).isEmpty();
        Scenario typed = said.tables().assumptions().scenario();
        Scenario set = BUNDLED.with(List.of(
                        "gross_margin=0.35",
                        "discount_rate=0.06",
                        "overhead_usd_per_crew_hour=34",
                        "repair_cost_high_usd=14250",
                        "setback_in=0.875",
                        "travel_minutes_per_day=45",
                        "hours_per_day=9",
                        "workmanship=careful",
                        "methods=full_frame,insert",
                        "sill_flange=sealed"))
                .orElseThrow()
                .assumptions()
                .scenario();
        assertThat(typed.choices()).isEqualTo(set.choices());
        for (Scalar scalar : Scalar.values()) {
            assertThat(typed.value(scalar)).as(scalar.key()).isEqualTo(set.value(scalar));
            assertThat(typed.settings().get(scalar).range())
                    .as(scalar.key())
                    .isEqualTo(set.settings().get(scalar).range());
        }
    }

    /** As --set does; what was read of the range is said, since in a sheet it stands beside the value. */
    @Test
    void aRangeThatTheValueLeavesCountsForNothing() throws IOException {
        Said said = typed(Map.of("gross_margin", "t:30%"));
        assertThat(said.errors()).isEmpty();
        assertThat(said.tables()
                        .assumptions()
                        .scenario()
                        .settings()
                        .get(Scalar.GROSS_MARGIN)
                        .range())
                .isEmpty();
        assertThat(said.warnings())
                .containsExactly(
                        "Settings!B23:value: gross_margin 0.3 is outside low 0.33 and high 0.5, which count for nothing"
                                + " now; write your own, or leave both out");
    }

    @Test
    void badSettingsAreRefusedByTheirCells() throws IOException {
        Said said = typed(Map.of(
                "gross_margin",
                "40",
                "crew_size",
                "2.5",
                "methods",
                "t:insert",
                "horizon_years",
                "",
                "setback_in",
                "day:45050",
                "permit_usd",
                "t:about 80"));
        assertThat(said.errors())
                .containsExactlyInAnyOrder(
                        "Settings!B23:value: gross_margin \"40\" is out of range (fraction, 0 to 0.95); write 40% where percent"
                                + " is meant",
                        "Settings!B27:value: crew_size \"2.5\" is not a whole number (people, 1 to 8)",
                        "Settings!B66:value: setback_in \"2023-05-04\" is not a number (in., 0 to 6); a spreadsheet turned what was"
                                + " typed into a date, perhaps of 5/4, which is 1.25; write a decimal number",
                        "Settings!B30:value: permit_usd \"about 80\" is not a number (USD, 0 to 100000)",
                        "Settings!B15:value: horizon_years is missing (years, 1 to 60)",
                        "Settings!B3:value: methods \"insert\" is not one of "
                                + String.join(", ", Choice.METHODS.allowed())
                                + "; did you mean \"full_frame,insert\"?");
    }

    /** What only all tables together show is a cell too. */
    @Test
    void settingsThatContradictAreRefusedByTheirCells() throws IOException {
        Said said = typed(Map.of("gross_margin", "94%", "region", "t:Oz"));
        assertThat(said.errors())
                .anyMatch(error -> error.startsWith("Settings!B2:region: \"Oz\" is not a region of Wages"))
                .anyMatch(
                        error -> error.startsWith("Settings!B23:gross_margin: 0.94 and service_reserve 0.02 together"));
    }

    @Test
    void namesThatAreUnknownMissingOrTwiceAreSaid() throws IOException {
        MadeWorkbook made = MadeWorkbook.of(written(BUNDLED));
        made.put("Settings", made.row("Settings", "crew_size"), 0, "Crew siz");
        made.put("Settings", made.row("Settings", "hours_per_day"), 0, "Gross Margin");
        made.put("Settings", 200, 0, "wall_depth_in");
        made.put("Settings", made.row("Settings", "sill_flange"), 0, "sill flanges");
        assertThat(said(made.write(folder.resolve("typed.xlsx"))).errors())
                .contains(
                        "Settings!A27:setting: crew_siz is not known; did you mean \"crew_size\"?",
                        "Settings!A28:setting: gross_margin stands in row 23 too",
                        "Settings!A200:setting: wall_depth_in stands in row 65 too",
                        "Settings!A9:setting: sill_flanges is not known; did you mean \"sill_flange\"?",
                        "Settings: crew_size is missing (people, 1 to 8)");
    }

    @Test
    void aWorkbookFromBeforeTheSheetTakesTheBundledNumbers() throws IOException {
        MadeWorkbook made = MadeWorkbook.of(written(BUNDLED));
        made.sheets.remove("Settings");
        Said said = said(made.write(folder.resolve("typed.xlsx")));
        assertThat(said.errors()).isEmpty();
        assertThat(said.tables().assumptions().scenario())
                .isEqualTo(BUNDLED.assumptions().scenario());
    }

    /** The sheet is read where it goes with assumptions; a shop may call something else so in a workbook of houses. */
    @Test
    void aSheetOfThatNameAmongHousesIsLeftAlone() throws IOException {
        MadeWorkbook made = MadeWorkbook.template();
        made.put("Settings", 1, 0, "t:my list");
        made.put("Settings", 2, 3, "t:beside it");
        try (InputWorkbooks workbooks = new InputWorkbooks()) {
            workbooks.folder(made.write(folder.resolve("houses.xlsx")).toString());
            assertThat(workbooks.problems()).isEmpty();
            assertThat(workbooks.warnings()).isEmpty();
        }
    }
}
