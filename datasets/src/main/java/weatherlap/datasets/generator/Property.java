package weatherlap.datasets.generator;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Quoted;
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

/** What a mix draws, and the values it may take: a word, a whole number or a range of them written {@code 24..32}. */
enum Property {
    YEAR_BUILT(1700, 2100),
    STOREYS(1, 4),
    TERRAIN(words(Terrain.values())),
    CLADDING(words(Cladding.values())),
    BARRIER(words(Barrier.values())),
    LEAD_TEST(words(LeadTest.values())),
    BEARING_DEG(0, 359),
    WIDTH_FT(12, 200),
    DEPTH_FT(12, 200),
    EAVE_HEIGHT_FT(8, 60),
    OVERHANG_IN(0, 120),
    GABLE_OVERHANG_IN(0, 120),
    COURSE_EXPOSURE_IN(3, 16, "none"),
    PANEL_LENGTH_IN(24, 300, "none"),
    SIDING_CONDITION(words(SidingCondition.values())),
    OBSTRUCTION_M(1, 10_000, "none"),
    WINDOWS_IN_ROW(0, 12),
    ROOM(words(Room.values())),
    WINDOW_SIZE(List.of()),
    UNITS(1, 4),
    EXISTING_MATERIAL(words(FrameMaterial.values())),
    HOUSE_OPERATION(words(Operation.values())),
    OPERATION(plus(words(Operation.values()), "house")),
    NEW_OPERATION(plus(words(Operation.values()), "same")),
    FRAME_CONDITION(words(FrameCondition.values())),
    INTERIOR_RETURN(words(InteriorReturn.values())),
    RETURN_LAYERS(1, 3),
    SILL_FRAME_IN(0, 8),
    FLOOR_AREA_FT2(1, 10_000, "none"),
    LAPS_SEEN(List.of("yes", "no")),
    HEAD_LAP(words(Lap.values())),
    JAMB_LAP(words(Lap.values())),
    SILL_LAP(words(Lap.values())),
    STAIN(words(Sighting.values())),
    STREET(List.of()),
    STREET_NUMBER(1, 100_000),
    /** Not drawn: front, left, back or right, for rows that ask {@code given}. */
    WALL(List.of("front", "left", "back", "right")),
    /** Not drawn: the only storey, the ground or an upper one. */
    FLOOR(List.of("only", "ground", "upper"));

    /** Width by height of a window, in. */
    private static final Pattern SIZE = Pattern.compile("(\\d{1,3})x(\\d{1,3})");

    private static final Pattern RANGE = Pattern.compile("(\\d{1,6})(?:\\.\\.(\\d{1,6}))?");

    private final List<String> words;
    private final int low;
    private final int high;

    Property(List<String> words) {
        this(0, -1, words.toArray(String[]::new));
    }

    Property(int low, int high, String... words) {
        this.words = List.of(words);
        this.low = low;
        this.high = high;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Property> of(String key) {
        return Arrays.stream(values()).filter(p -> p.key().equals(key)).findFirst();
    }

    /** Whether a mix must say how it is shared out. */
    boolean isDrawn() {
        return this != WALL && this != FLOOR;
    }

    /** What is wrong with a value; empty: nothing. */
    String fault(String value) {
        if (this == WINDOW_SIZE) {
            Matcher size = SIZE.matcher(value);
            boolean sound = size.matches() && isSide(size.group(1)) && isSide(size.group(2));
            return sound ? "" : Quoted.of(value) + " is not a size such as 32x54 (inches, 8 to 144 each)";
        }
        if (words.contains(value) || this == STREET) {
            return "";
        }
        return high < low
                ? Quoted.of(value) + " is not one of " + String.join(", ", words) + Nearest.hint(value, words)
                : isRange(value)
                        ? ""
                        : Quoted.of(value) + " is not a whole number or a range such as 24..32 within " + low + " to "
                                + high + (words.isEmpty() ? "" : ", nor " + String.join(", ", words));
    }

    private static boolean isSide(String inches) {
        int side = Integer.parseInt(inches);
        return side >= 8 && side <= 144;
    }

    private boolean isRange(String value) {
        Matcher range = RANGE.matcher(value);
        if (!range.matches()) {
            return false;
        }
        int from = Integer.parseInt(range.group(1));
        int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
        return low <= from && from <= to && to <= high;
    }

    private static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static List<String> plus(List<String> words, String more) {
        return Stream.concat(words.stream(), Stream.of(more)).toList();
    }
}
