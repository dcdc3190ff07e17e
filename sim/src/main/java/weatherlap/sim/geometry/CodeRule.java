package weatherlap.sim.geometry;

/**
 * Rules of the International Residential Code that a window may touch, 2018 numbering; editions renumber and places amend.
 */
public enum CodeRule {
    /** Emergency escape and rescue opening of a sleeping room or a basement. */
    ESCAPE("IRC 2018 R310.2", "escape"),
    /** Glazing as a share of the floor. */
    LIGHT("IRC 2018 R303.1", "light"),
    /** Openable area as a share of the floor. */
    VENTILATION("IRC 2018 R303.1", "vent"),
    /** Glazing near a floor. */
    SAFETY_GLAZING("IRC 2018 R308.4.3", "safety_glazing"),
    /** Window fall protection. */
    FALL("IRC 2018 R312.2", "fall");

    private final String section;
    private final String key;

    CodeRule(String section, String key) {
        this.section = section;
        this.key = key;
    }

    public String section() {
        return section;
    }

    /** First word of its flags in tables. */
    public String key() {
        return key;
    }
}
