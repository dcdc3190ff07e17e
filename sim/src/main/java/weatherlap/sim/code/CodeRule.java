package weatherlap.sim.code;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Rules of the International Residential Code that a window may touch, 2018 numbering; editions renumber and places amend.
 */
public enum CodeRule {
    /** Emergency escape and rescue opening of a sleeping room or a basement; one a room. */
    ESCAPE("IRC 2018 R310.2", "escape"),
    /** Glazing as a share of the room's floor. */
    LIGHT("IRC 2018 R303.1", "light"),
    /** Openable area as a share of the room's floor. */
    VENTILATION("IRC 2018 R303.1", "vent"),
    /** Glazing near a floor. */
    SAFETY_GLAZING("IRC 2018 R308.4.3", "safety_glazing"),
    /** Glazing near a tub or shower. */
    WET_GLAZING("IRC 2018 R308.4.5", "wet_glazing"),
    /** Glazing beside a stair or at its foot. */
    STAIR_GLAZING("IRC 2018 R308.4.6 and .7", "stair_glazing"),
    /** Window fall protection. */
    FALL("IRC 2018 R312.2", "fall");

    /** How a new unit that does not pass stands to a rule. */
    enum Standing {
        LOST,
        RELIEVED,
        FAILS,
        CHECK
    }

    private final String section;
    private final String key;
    /** By standing. */
    private final List<String> flags;

    CodeRule(String section, String key) {
        this.section = section;
        this.key = key;
        flags = Arrays.stream(Standing.values())
                .map(standing -> key + "_" + standing.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Whether it is asked of a room, not of each of its windows. */
    public boolean ofRooms() {
        return switch (this) {
            case ESCAPE, LIGHT, VENTILATION -> true;
            case SAFETY_GLAZING, WET_GLAZING, STAIR_GLAZING, FALL -> false;
        };
    }

    public String section() {
        return section;
    }

    /** What tables have of it. */
    String flag(Standing standing) {
        return flags.get(standing.ordinal());
    }

    /** First word of its flags in tables. */
    public String key() {
        return key;
    }
}
