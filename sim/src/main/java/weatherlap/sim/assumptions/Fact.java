package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.method.Method;

/**
 * A fact that a {@link Condition} may ask about, with the level at which it is known and the values it takes.
 *
 * <p>Rows of labor and material ask of the wall an opening stands in, rows of lap faults of what was seen of the old laps and of the
 * method; all else both may ask.
 */
public enum Fact {
    CLADDING(Driver.Level.HOUSE, names(Cladding.values())),
    BARRIER(Driver.Level.HOUSE, names(Barrier.values())),
    STOREYS(Driver.Level.HOUSE, numbers(1, 4)),
    /** Calendar year. */
    YEAR_BUILT(Driver.Level.HOUSE, numbers(1700, 2200)),
    /** Of the wages: that of the house, else that of the scenario; any name. */
    REGION(Driver.Level.HOUSE, List.of(), Use.PLACE),
    /** yes where lead-safe work is presumed. */
    LEAD_SAFE(Driver.Level.HOUSE, List.of("yes", "no")),
    SIDING_CONDITION(Driver.Level.ELEVATION, names(SidingCondition.values()), Use.WORK),
    /** The storey the opening stands in, from 1. */
    STOREY(Driver.Level.OPENING, numbers(1, 4), Use.WORK),
    ROOM(Driver.Level.OPENING, names(Room.values())),
    OPERATION(Driver.Level.OPENING, names(Operation.values())),
    NEW_OPERATION(Driver.Level.OPENING, names(Operation.values())),
    UNITS(Driver.Level.OPENING, numbers(1, 4)),
    EXISTING_MATERIAL(Driver.Level.OPENING, names(FrameMaterial.values())),
    /** yes where the old sashes are taken to hang on weights. */
    SASH_WEIGHTS(Driver.Level.OPENING, List.of("yes", "no")),
    /** yes where the old unit is taken to have a nailing flange. */
    OLD_FLANGE(Driver.Level.OPENING, List.of("yes", "no")),
    FRAME_CONDITION(Driver.Level.OPENING, names(FrameCondition.values())),
    INTERIOR_RETURN(Driver.Level.OPENING, names(InteriorReturn.values())),
    HEAD_LAP(Driver.Level.OPENING, names(Lap.values()), Use.LAPS),
    JAMB_LAP(Driver.Level.OPENING, names(Lap.values()), Use.LAPS),
    SILL_LAP(Driver.Level.OPENING, names(Lap.values()), Use.LAPS),
    /** By which the opening is done. */
    METHOD(Driver.Level.OPENING, names(Method.values()), Use.LAPS);

    /** Which tables may ask about a fact. */
    private enum Use {
        WORK,
        LAPS,
        BOTH,
        /** Rows of labor and material, while job records do not keep it: a shop's jobs are where it works. */
        PLACE
    }

    private final Driver.Level level;
    private final List<String> values;
    private final Use use;
    /** Of whole numbers. */
    private final int first;

    Fact(Driver.Level level, List<String> values) {
        this(level, values, Use.BOTH);
    }

    Fact(Driver.Level level, List<String> values, Use use) {
        this.level = level;
        this.values = values;
        this.use = use;
        first = isNumber() ? Integer.parseInt(values.get(0)) : 0;
    }

    /** The facts of the work that job records keep. */
    public static List<Fact> ofWork() {
        return Arrays.stream(values())
                .filter(fact -> fact.use == Use.WORK || fact.use == Use.BOTH)
                .toList();
    }

    /** The facts that rows of labor and material may ask about. */
    public static List<Fact> ofRows() {
        return Arrays.stream(values()).filter(fact -> fact.use != Use.LAPS).toList();
    }

    /** The facts that lap faults may ask about. */
    public static List<Fact> ofLaps() {
        return Arrays.stream(values())
                .filter(fact -> fact.use == Use.LAPS || fact.use == Use.BOTH)
                .toList();
    }

    /** The lowest level at which the fact is known; a row counted at a higher level may not ask about it. */
    public Driver.Level level() {
        return level;
    }

    /** Every value the fact may take, as tables write it; none: any name. */
    public List<String> allowed() {
        return values;
    }

    /** The name that tables use. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one of some facts that tables write so. */
    static Fact of(String key, List<Fact> askable) {
        return askable.stream()
                .filter(fact -> fact.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is not a fact; known facts are "
                        + askable.stream().map(Fact::key).toList()));
    }

    /** Place of a number among the allowed ones. */
    int place(int number) {
        return number - first;
    }

    /** Whether its values are whole numbers without a gap. */
    public boolean isNumber() {
        return !values.isEmpty() && Character.isDigit(values.get(0).charAt(0));
    }

    void check(String value) {
        if (!values.isEmpty() && !values.contains(value)) {
            throw new IllegalArgumentException("\"" + value + "\" is not a " + key() + " "
                    + (isNumber() ? "[" + values.get(0) + " to " + values.get(values.size() - 1) + "]" : values));
        }
    }

    private static List<String> names(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static List<String> numbers(int low, int high) {
        return IntStream.rangeClosed(low, high).mapToObj(Integer::toString).toList();
    }
}
