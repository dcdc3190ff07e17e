package weatherlap.sim.assumptions;

/** What a labour step or a material is counted by. */
public enum Driver {
    /** Once a house. */
    JOB("job", Level.HOUSE),
    /** Once a working day. */
    DAY("day", Level.HOUSE),
    /** Once an elevation that has openings. */
    ELEVATION("elevation", Level.ELEVATION),
    /** A siding panel taken down and put back. */
    PANEL("panel", Level.ELEVATION),
    /** A siding panel expected to break while it is handled. */
    BROKEN_PANEL("panel", Level.ELEVATION),
    OPENING("opening", Level.OPENING),
    /** A lite of a mulled opening. */
    UNIT("unit", Level.OPENING),
    /** Width + height of the unit, in. */
    UNITED_INCH("in.", Level.OPENING),
    PERIMETER_FT("ft", Level.OPENING),
    HEAD_FT("ft", Level.OPENING),
    /** Both jambs. */
    JAMB_FT("ft", Level.OPENING),
    SILL_FT("ft", Level.OPENING),
    CORNER("corner", Level.OPENING),
    /** Edge length of the interior returns × layers to cut. */
    RETURN_FT("ft", Level.OPENING),
    FASTENER("fastener", Level.OPENING),
    CAPPING_FT("ft", Level.OPENING),
    GLASS_FT2("ft²", Level.OPENING),
    /** Flashing tape with its laps and tails. */
    TAPE_FT("ft", Level.OPENING),
    /** Sealant by volume. */
    SEALANT_IN3("in³", Level.OPENING),
    /** Foam by volume of the gap it fills. */
    FOAM_IN3("in³", Level.OPENING),
    /** Coil stock with its stretch-out. */
    CAPPING_FT2("ft²", Level.OPENING);

    /** Where the quantity is counted; quantities of a higher level are shared by the openings below it. */
    public enum Level {
        HOUSE,
        ELEVATION,
        OPENING
    }

    private final String unit;
    private final Level level;

    Driver(String unit, Level level) {
        this.unit = unit;
        this.level = level;
    }

    public String unit() {
        return unit;
    }

    public Level level() {
        return level;
    }
}
