package weatherlap.sim.method;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.Each;
import weatherlap.sim.house.Cladding;

/** A way to replace a window. Its facts are common practice of the trade; each is decided for every method. */
public enum Method {
    /** The old unit out whole, a unit with a nailing flange lapped into the barrier, siding put back over the flange. */
    FULL_FLANGE("full-flange", "full-flange", "full-flange"),
    /** The old unit out whole, siding and barrier left alone, a unit without a flange sealed to the opening and trimmed outside. */
    FULL_FRAME("full-frame", "full-frame", "full-frame"),
    /** A smaller unit set into the frame that stays. */
    INSERT("insert", "the insert", "inserts");

    private static final List<Method> ALL = List.of(values());

    private final String word = name().toLowerCase(Locale.ROOT);
    private final String label;
    private final String inSentence;
    private final String many;

    Method(String label, String inSentence, String many) {
        this.label = label;
        this.inSentence = inSentence;
        this.many = many;
    }

    /** Whether the old frame stays in the wall, with its sightlines, its lean and its rot; otherwise the rough opening is bared. */
    public boolean keepsOldFrame() {
        return switch (this) {
            case INSERT -> true;
            case FULL_FLANGE, FULL_FRAME -> false;
        };
    }

    /** Whether the unit has a nailing flange: screwed, bedded and taped along it. */
    public boolean hasFlange() {
        return switch (this) {
            case FULL_FLANGE -> true;
            case FULL_FRAME, INSERT -> false;
        };
    }

    /** Whether siding comes down around the opening and goes back. */
    public boolean takesSidingDown() {
        return switch (this) {
            case FULL_FLANGE -> true;
            case FULL_FRAME, INSERT -> false;
        };
    }

    /** Whether the laps of the barrier come to light, so that those at the opening are made anew. */
    public boolean reachesBarrier() {
        return switch (this) {
            case FULL_FLANGE -> true;
            case FULL_FRAME, INSERT -> false;
        };
    }

    /** Whether the interior returns are cut back for a unit that stands deeper in the wall than the old one. */
    public boolean cutsReturns() {
        return switch (this) {
            case FULL_FLANGE -> true;
            case FULL_FRAME, INSERT -> false;
        };
    }

    /** Whether bent coil covers what is seen of the old frame outside. */
    public boolean isCapped() {
        return switch (this) {
            case INSERT -> true;
            case FULL_FLANGE, FULL_FRAME -> false;
        };
    }

    /** Whether there is a way to the opening: siding that does not come down, as brick and stucco, leaves none for a flange. */
    public boolean isOpenTo(Cladding cladding) {
        return !takesSidingDown() || cladding.inCourses();
    }

    /** The methods that a house of that cladding is open to, in their order. */
    public static List<Method> openTo(Cladding cladding) {
        return Each.where(ALL, method -> method.isOpenTo(cladding));
    }

    /** Some methods as a set, in their order. */
    public static Set<Method> set(Collection<Method> some) {
        EnumSet<Method> set = EnumSet.noneOf(Method.class);
        set.addAll(some);
        return Collections.unmodifiableSet(set);
    }

    /** As the trade writes it, such as {@code full-flange}. */
    public String label() {
        return label;
    }

    /** The label as it stands in a sentence, with its article where it has one. */
    public String inSentence() {
        return inSentence;
    }

    /** The label as it stands in a sentence about many windows: inserts, full-flange. */
    public String many() {
        return many;
    }

    /** The method that tables write so; empty where there is none. */
    public static Optional<Method> of(String word) {
        return Arrays.stream(values())
                .filter(method -> method.word().equals(word))
                .findFirst();
    }

    /** As tables write it, such as {@code full_flange}. */
    public String word() {
        return word;
    }
}
