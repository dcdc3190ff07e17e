package weatherlap.datasets.portfolio;

import static weatherlap.datasets.table.Column.key;
import static weatherlap.datasets.table.Column.number;
import static weatherlap.datasets.table.Column.numberBelow;
import static weatherlap.datasets.table.Column.positive;
import static weatherlap.datasets.table.Column.text;
import static weatherlap.datasets.table.Column.whole;
import static weatherlap.datasets.table.Column.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Headings;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.Each;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.house.Terrain;

/** The three tables of a portfolio folder, column by column. */
public final class PortfolioTables {
    private static final String INCHES = "inches";

    /** One row a house. */
    public static final Schema HOUSES = new Schema(
            "houses.csv",
            "one row for each house",
            List.of(
                    key("house_id", "key"),
                    text("label", "what people call it; shown on sheets"),
                    whole("year_built", 1700, 9999, "calendar year, not after this year"),
                    word("terrain", Terrain.class, "upwind roughness, as in ISO 15927-3"),
                    word("cladding", Cladding.class, "what covers the walls outside"),
                    word("barrier", Barrier.class, "weather-resistive barrier behind the cladding; empty: unknown")
                            .optional(),
                    whole("storeys", 1, 4, "stories over grade"),
                    text("region", "looks up wages; empty: the scenario's").optional(),
                    word("lead_test", LeadTest.class, "result of a test of the old paint for lead; empty: unknown")
                            .optional(),
                    text("job_address", "for the crew sheet: where to go").optional(),
                    text("job_phone", "for the crew sheet: whom to call").optional(),
                    text("job_parking", "for the crew sheet: where the truck and the trailer stand")
                            .optional(),
                    text("job_pets", "for the crew sheet: pets, gates, people at home")
                            .optional()),
            List.of("house_id"));

    /** Prefix of the columns that the crew sheet prints as they are. */
    private static final String JOB = "job_";

    /** One row a wall. */
    public static final Schema ELEVATIONS = new Schema(
            "elevations.csv",
            "one row for each wall of a house",
            List.of(
                    key("house_id", "key of the house"),
                    key("elevation_id", "key within the house"),
                    numberBelow(
                            "bearing_deg",
                            "degrees",
                            0,
                            360,
                            "outward normal of the wall, clockwise from north; east: 90"),
                    positive("width_ft", "feet", 1000, "width of the wall"),
                    positive("eave_height_ft", "feet", 100, "height of the eave over grade"),
                    number(
                            "overhang_in",
                            INCHES,
                            0,
                            240,
                            "horizontal projection of the eave at this wall; 0 at a bare gable"),
                    number(
                                    "course_exposure_in",
                                    INCHES,
                                    3,
                                    16,
                                    "height that one panel or board covers, 8 for double-4 vinyl; empty: brick, stucco")
                            .optional(),
                    number("panel_length_in", INCHES, 24, 300, "length of one siding panel; empty: brick, stucco")
                            .optional(),
                    word(
                                    "siding_condition",
                                    SidingCondition.class,
                                    "brittle or badly hung siding breaks more and may not go back; empty: unknown")
                            .optional(),
                    positive(
                                    "obstruction_m",
                                    "meters",
                                    10_000,
                                    "distance to the nearest upwind obstacle as tall as the wall; empty: none")
                            .optional()),
            List.of("house_id", "elevation_id"));

    /** Names of the six readings that are given together or not at all. */
    static final List<String> READINGS = List.of(
            "width_top_in",
            "width_middle_in",
            "width_bottom_in",
            "height_left_in",
            "height_middle_in",
            "height_right_in");

    /** One row a window opening. */
    public static final Schema OPENINGS = new Schema(
            "openings.csv",
            "one row for each window opening",
            Stream.of(place(), sizes(), frame(), laps(), readings(), job())
                    .flatMap(List::stream)
                    .toList(),
            List.of("house_id", "elevation_id", "opening_id"));

    /** By file. */
    private static final Map<String, List<String>> JOB_COLUMNS =
            Map.of(HOUSES.file(), jobColumns(HOUSES), OPENINGS.file(), jobColumns(OPENINGS));

    /** All three, in the order in which they are filled in and read. */
    public static final List<Schema> ALL = List.of(HOUSES, ELEVATIONS, OPENINGS);

    /** Names of their files, likewise. */
    public static final List<String> FILES = ALL.stream().map(Schema::file).toList();

    private PortfolioTables() {}

    private static List<Column> place() {
        return List.of(
                key("house_id", "key of the house"),
                key("elevation_id", "key of the wall"),
                key("opening_id", "key within the wall"),
                word("room", Room.class, "what the opening lights"),
                text("room_id", "windows with the same one, in a house, are of one room; empty: unknown")
                        .optional(),
                word("operation", Operation.class, "how the existing unit opens"),
                word("new_operation", Operation.class, "what goes in instead; empty: the same")
                        .optional(),
                whole("units", 1, 4, "lites mulled side by side in this opening; empty: 1")
                        .optional());
    }

    private static List<Column> sizes() {
        return List.of(
                number("frame_width_in", INCHES, 8, 144, "the existing frame, outside to outside"),
                number("frame_height_in", INCHES, 8, 144, "the same, height"),
                number("left_in", INCHES, 0, 12_000, "left edge from the wall's left corner, seen from outside"),
                number("sill_height_in", INCHES, 0, 1200, "bottom of the frame over grade"),
                number("interior_sill_in", INCHES, 0, 144, "bottom of the clear opening over the room's floor")
                        .optional(),
                positive(
                                "floor_area_ft2",
                                "square feet",
                                10_000,
                                "of the room; light and air are checked where the room has room_id")
                        .optional());
    }

    private static List<Column> frame() {
        return List.of(
                word("existing_material", FrameMaterial.class, "what the existing frame is made of"),
                word("frame_condition", FrameCondition.class, "of the frame that an insert would keep; empty: unknown")
                        .optional(),
                word("interior_return", InteriorReturn.class, "what lines the opening on the room side"),
                whole("return_layers", 1, 3, "layers of the interior return to cut back"),
                number(
                                "setback_in",
                                INCHES,
                                0,
                                6,
                                "how far the new frame stands deeper than the old; empty: the scenario's")
                        .optional());
    }

    private static List<Column> laps() {
        return List.of(
                word("head_lap", Lap.class, "how the old unit laps the barrier at the head; empty: unknown")
                        .optional(),
                word("jamb_lap", Lap.class, "the same at the jambs").optional(),
                word("sill_lap", Lap.class, "the same at the sill").optional(),
                word("stain", Sighting.class, "water stain or soft wood seen; empty: unknown")
                        .optional());
    }

    private static List<Column> job() {
        return List.of(
                text("job_color", "for the crew sheet: color inside and outside, as ordered")
                        .optional(),
                text("job_grids", "for the crew sheet: grids between or on the panes")
                        .optional(),
                text("job_hinge", "for the crew sheet: side of the hinge, seen from outside")
                        .optional(),
                text("job_tempered", "for the crew sheet: which panes are tempered")
                        .optional());
    }

    /** What a row tells the crew, by column; nothing where its cell is empty. */
    static Map<String, String> jobOf(Schema schema, Row row) {
        Map<String, String> job = new LinkedHashMap<>();
        for (String name : JOB_COLUMNS.get(schema.file())) {
            if (row.has(name)) {
                job.put(name, row.text(name));
            }
        }
        job.putAll(notesOf(schema, row));
        return job;
    }

    /** The notes of a row that are not empty, in the order of their names. */
    static Map<String, String> notesOf(Schema schema, Row row) {
        return row.hasMoreThan(schema) ? row.filled(Headings.NOTE) : Map.of();
    }

    /** The cells of a row that tell the crew, in the order of the columns. */
    static Stream<String> jobCells(Schema schema, Map<String, String> job) {
        return JOB_COLUMNS.get(schema.file()).stream().map(name -> job.getOrDefault(name, ""));
    }

    private static List<String> jobColumns(Schema schema) {
        return Each.where(schema.names(), name -> name.startsWith(JOB));
    }

    private static List<Column> readings() {
        Stream<Column> six = READINGS.stream()
                .map(name -> number(name, INCHES, 8, 144, "tape reading of the opening; all six or none")
                        .optional());
        Stream<Column> diagonals = Stream.of("diagonal_rising_in", "diagonal_falling_in")
                .map(name -> number(name, INCHES, 11, 204, "tape reading of a diagonal; both or neither")
                        .optional());
        return Stream.concat(six, diagonals).toList();
    }
}
