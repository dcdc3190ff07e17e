package weatherlap.datasets.shortform;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;

/** The columns of the short table. */
public final class ShortTable {
    /** Its name in a folder. */
    public static final String FILE = "windows.csv";

    /** The eight, which must be filled. */
    public static final List<Column> EIGHT = List.of(
            Column.key("house", "any short name"),
            Column.numberBelow(
                    "wall_faces", "degrees", 0, 360, "the way the wall faces: S, SW or degrees clockwise from north"),
            Column.key("window", "any short name, within the house"),
            Column.number("width", "inches", 8, 144, "the existing frame, outside to outside"),
            Column.number("height", "inches", 8, 144, "the same, height"),
            Column.word("opens", Operation.class, "how the existing window opens"),
            Column.word("frame", FrameMaterial.class, "what the existing frame is made of"),
            Column.word("siding", Cladding.class, "what covers the walls of the house"));

    /** What the eight are called in the three tables. */
    static final Map<String, String> CALLED = called();

    /** With every other column of the three tables, each of which may be left out or empty. */
    public static final Schema SCHEMA =
            new Schema(FILE, "the short start: one row a window", columns(), List.of("house", "window"));

    private static final Set<String> TELLING = Set.of("house", "wall_faces", "window");

    private ShortTable() {}

    private static Map<String, String> called() {
        Map<String, String> called = new LinkedHashMap<>();
        called.put("house_id", "house");
        called.put("elevation_id", "wall_faces");
        called.put("bearing_deg", "wall_faces");
        called.put("opening_id", "window");
        called.put("frame_width_in", "width");
        called.put("frame_height_in", "height");
        called.put("operation", "opens");
        called.put("existing_material", "frame");
        called.put("cladding", "siding");
        return called;
    }

    private static List<Column> columns() {
        Stream<Column> others = PortfolioTables.ALL.stream()
                .flatMap(table -> table.columns().stream())
                .filter(column -> !CALLED.containsKey(column.name()))
                .map(Column::optional);
        return Stream.concat(EIGHT.stream(), others).toList();
    }

    /** What the column of one of the three tables is called here. */
    public static String called(String column) {
        return CALLED.getOrDefault(column, column);
    }

    /** Whether the header of a text is that of the short table. */
    public static boolean isHeadedSo(Source source) {
        return CsvRows.open(source, SCHEMA, new Problems())
                .map(rows -> {
                    try (rows) {
                        return rows.headings().containsAll(TELLING);
                    }
                })
                .orElse(false);
    }

    /** What messages call the columns of the three tables, by file, where the short table goes by a name of its own. */
    public static SheetNames names(SheetNames.Sheet sheet) {
        SheetNames.Sheet own = new SheetNames.Sheet(sheet.name(), sheet.letters(), CALLED);
        return new SheetNames(Map.of(
                FILE,
                own,
                PortfolioTables.HOUSES.file(),
                own,
                PortfolioTables.ELEVATIONS.file(),
                own,
                PortfolioTables.OPENINGS.file(),
                own));
    }
}
