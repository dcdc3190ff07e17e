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
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;

/** A fact that a {@link Condition} may ask about, with the level at which it is known and the values it takes. */
public enum Fact {
    CLADDING(Driver.Level.HOUSE, names(Cladding.values())),
    BARRIER(Driver.Level.HOUSE, names(Barrier.values())),
    STOREYS(Driver.Level.HOUSE, numbers(1, 4)),
    /** yes where lead-safe work is presumed. */
    LEAD_SAFE(Driver.Level.HOUSE, List.of("yes", "no")),
    SIDING_CONDITION(Driver.Level.ELEVATION, names(SidingCondition.values())),
    /** The storey the opening stands in, from 1. */
    STOREY(Driver.Level.OPENING, numbers(1, 4)),
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
    INTERIOR_RETURN(Driver.Level.OPENING, names(InteriorReturn.values()));

    private final Driver.Level level;
    private final List<String> values;

    Fact(Driver.Level level, List<String> values) {
        this.level = level;
        this.values = values;
    }

    /** The lowest level at which the fact is known; a row counted at a higher level may not ask about it. */
    public Driver.Level level() {
        return level;
    }

    /** Every value the fact may take, as tables write it. */
    public List<String> allowed() {
        return values;
    }

    /** The name that tables use. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Fact of(String key) {
        return Arrays.stream(values())
                .filter(fact -> fact.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is not a fact; known facts are "
                        + Arrays.stream(values()).map(Fact::key).toList()));
    }

    void check(String value) {
        if (!values.contains(value)) {
            throw new IllegalArgumentException("\"" + value + "\" is not a " + key() + " " + values);
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
