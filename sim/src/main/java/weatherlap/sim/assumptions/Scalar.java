package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The single numbers of a scenario: what each means, its unit and the range in which it makes sense. Values live in {@code
 * scenario.toml} with their basis and source.
 */
public enum Scalar {
    SEED("", 0, 9_007_199_254_740_991.0, "starts every random stream"),
    DRAWS("", 1, 1_000_000, "runs of the numbers for each house"),
    // the family
    HORIZON_YEARS("years", 1, 60, "how far ahead the family looks"),
    DISCOUNT_RATE("fraction/year", 0, 0.5, "what a dollar next year is worth less"),
    REPAIR_COST_USD("USD", 0, 1e6, "mending one leak-damaged opening, likely"),
    REPAIR_COST_LOW_USD("USD", 0, 1e6, "the same, low"),
    REPAIR_COST_HIGH_USD("USD", 0, 1e6, "the same, high"),
    GLASS_VALUE_USD_PER_FT2_YEAR(
            "USD/ft² year", 0, 1000, "what a family would pay a year to keep a square foot of glass"),
    RISK_LIMIT(
            "fraction",
            0,
            1,
            "largest chance of leak damage that a family should take, at any opening of a house"
                    + " within horizon_years"),
    // the shop
    OVERHEAD_USD_PER_CREW_HOUR("USD/h", 0, 1000, "overhead for each hour a crew is out"),
    GROSS_MARGIN("fraction", 0, 0.95, "gross profit as a share of the price"),
    NET_PROFIT("fraction", 0, 0.9, "net profit as a share of the price, where price is made from cost and overhead"),
    SERVICE_RESERVE("fraction", 0, 0.5, "share of the price kept for service other than leaks"),
    WARRANTY_YEARS("years", 0, 60, "how long the shop mends the leaks that its warranty covers"),
    CREW_SIZE("people", 1, 8, "people in a crew"),
    HOURS_PER_DAY("h", 1, 16, "working hours a day"),
    TRAVEL_MINUTES_PER_DAY("min", 0, 600, "crew time on the road a day, there and back"),
    PERMIT_USD("USD", 0, 1e5, "permit a house"),
    DISPOSAL_USD_PER_TON("USD/ton", 0, 10_000, "tipping fee"),
    TIPPING_LEAST_USD("USD", 0, 10_000, "least that a load to the tip is charged"),
    UNIT_PRICE_SPREAD("fraction", 0, 1, "half-width of the range of a unit's price about the table"),
    // the season
    CREWS("", 1, 100, "crews at work at the same time"),
    SEASON_WEEKS("weeks", 1, 53, "weeks of work in a year"),
    SEASON_DAYS_PER_WEEK("days", 1, 7, "working days in one of those weeks, before rain takes some"),
    JOBS_WAITING("", 1, 2000, "houses that wait to be done in a season; the houses of a portfolio stand for them"),
    // the work
    WORK_START_HOUR("h", 0, 23, "when the working day begins, local standard time"),
    RAIN_DAY_MM("mm", 0, 100, "rain within the working hours that loses the day"),
    TEMPERATURE_F("°F", -40, 120, "outside, on the day of the work"),
    LEARNING_SLOPE("fraction", 0.5, 1, "time of a crew's next opening when its count in a house doubles"),
    HEIGHT_FACTOR_SECOND("", 1, 5, "times the minutes of a height-sensitive step on the second story"),
    HEIGHT_FACTOR_THIRD("", 1, 5, "the same on the third story and above"),
    CREW_SPREAD("fraction", 0, 1, "coefficient of variation of a crew's pace from house to house"),
    OPENING_SPREAD("fraction", 0, 1, "coefficient of variation of the time of one opening about its house"),
    RECORDS_HALF_LIFE_YEARS(
            "years",
            0.1,
            1000,
            "age at which a job record counts half of one of today, where rates are fitted to records"),
    JOB_WINDOW_WIDTH_IN("in.", 8, 144, "frame of a window of a job, where its record does not say"),
    JOB_WINDOW_HEIGHT_IN("in.", 8, 144, "the same, height"),
    JOB_GLASS_SHARE("fraction", 0, 1, "visible glass of a new unit over its frame, where a record does not say"),
    JOB_PANELS_PER_WINDOW("", 0, 100, "siding panels taken down at a window, where a record does not say"),
    JOB_WINDOWS_PER_WALL(
            "", 1, 100, "windows on a wall of a job, where a record does not say; a house has four walls at most"),
    JOB_WINDOWS_A_DAY_FULL_FLANGE("", 0.1, 1000, "full-flange windows a day, where a record does not give the days"),
    JOB_WINDOWS_A_DAY_FULL_FRAME("", 0.1, 1000, "the same, full-frame"),
    JOB_WINDOWS_A_DAY_INSERT("", 0.1, 1000, "the same, inserts"),
    LEAD_SAFE_FACTOR(
            "", 1, 5, "times the minutes in a contained work area: at an opening, and on panels or boards around it"),
    BREAKAGE_FRACTION("fraction", 0, 1, "share of handled siding panels that break when warm and sound"),
    BREAKAGE_FREEZING_FACTOR("", 1, 100, "times that share at 32 °F"),
    BREAKAGE_COLD_FACTOR("", 1, 100, "times that share at 20 °F and below"),
    BREAKAGE_UNKNOWN_FACTOR("", 1, 100, "times that share where nobody has looked at the siding"),
    BREAKAGE_BRITTLE_FACTOR("", 1, 100, "times that share for brittle siding"),
    SASH_WEIGHTS_UNTIL_YEAR(
            "year", 1700, 2100, "wood hung windows of houses built before it hang on weights in pockets"),
    FLANGE_FROM_YEAR("year", 1700, 2100, "metal and vinyl units of houses built from it on have a nailing flange"),
    WOOD_FLANGE_FROM_YEAR("year", 1700, 2100, "wood units of houses built from it on have a nailing flange"),
    ASBESTOS_UNTIL_YEAR(
            "year", 1700, 2200, "sheets warn of asbestos in siding, putty and paper of houses built before it"),
    // the opening
    WALL_DEPTH_IN("in.", 2, 24, "sheathing face to interior face of the wall"),
    SETBACK_IN("in.", 0, 6, "how far the new frame stands deeper into the room than the old one"),
    RETURN_THICKNESS_IN("in.", 0, 2, "one layer of drywall, plaster or jamb"),
    ROUGH_GAP_IN("in.", 0, 2, "rough opening less frame, both sides together"),
    ORDER_STEP_IN("in.", 0.015625, 1, "sizes are rounded down to a multiple of this"),
    READING_TOLERANCE_IN("in.", 0, 2, "widths or heights that differ by more are out of square"),
    DIAGONAL_TOLERANCE_IN("in.", 0, 2, "diagonals that differ by more are out of square"),
    MULL_POST_IN("in.", 0, 12, "seen width of the post between mulled units, beside their own jambs"),
    FLANGE_SETBACK_IN("in.", 0, 6, "outer face of a flanged frame to its flange"),
    TRAVEL_LOSS_IN(
            "in.", 0, 12, "clear opening that stops, lifts and balances keep from a sliding sash along its travel"),
    HINGE_LOSS_IN("in.", 0, 12, "clear opening that an open casement sash and its hinge take in width"),
    AWNING_OPEN_DEG("°", 5, 90, "how far an awning sash swings out"),
    MEAN_ROOF_RISE_FT("ft", 0, 40, "mean height of a roof over its eave, for the wind on the house"),
    GLASS_BITE_IN("in.", 0, 2, "edge of a lite that its sash hides"),
    FASTENER_SPACING_IN("in.", 2, 24, "between screws along the flange"),
    FASTENER_EDGE_IN("in.", 0, 12, "from a corner to its first screw"),
    PANE_THICKNESS_MM("mm", 2, 12, "one lite of glass"),
    PANES("", 1, 3, "lites in a glazing unit"),
    FRAME_LB_PER_FT("lb/ft", 0, 10, "frame and sash of a new unit, by its perimeter"),
    LIFT_LIMIT_LB("lb", 10, 150, "one person's lift"),
    SEALANT_BEAD_IN("in.", 0.125, 1, "diameter of a round bead behind a flange or along a joint"),
    TAPE_TAIL_IN("in.", 0, 24, "sill strip past each end"),
    TAPE_TAIL_JAMB_IN("in.", 0, 24, "jamb strip past each end"),
    TAPE_TAIL_HEAD_IN("in.", 0, 24, "head strip past each end"),
    COIL_STRETCH_OUT_IN("in.", 1, 24, "capping at head and jambs, unfolded"),
    COIL_STRETCH_OUT_SILL_IN("in.", 1, 24, "capping at the sill, unfolded"),
    COIL_TAIL_IN("in.", 0, 24, "capping past each end"),
    FOAM_GAP_DEPTH_IN("in.", 0, 12, "depth of gap filled with foam"),
    FOAM_FILL("fraction", 0, 1, "share of the gap filled"),
    // rain
    WALL_FACTOR_BARE("", 0.05, 2, "share of free-wind driving rain that an unsheltered wall catches"),
    GROUND_LIMIT_MM("mm", 0, 1, "rain below which an hour counts as dry"),
    SPELL_DRY_HOURS("h", 1, 1000, "hours without rain on a wall that end a spell"),
    SPELL_QUANTILE("fraction", 0.01, 0.99, "share of years in which the design spell is not exceeded"),
    RUNOFF_HEIGHT_FT("ft", 0, 100, "wall above the head whose water runs down to it"),
    RUNOFF_FRACTION("fraction", 0, 1, "share of the rain on that wall that runs down rather than sticks or splashes"),
    JOINT_STRIP_IN("in.", 0, 12, "width of wall or sill beside a joint whose water reaches the joint"),
    FIELD_STRIP_IN("in.", 0, 48, "width of wall around an opening that counts as its field"),
    YEAR_SPREAD(
            "fraction",
            0,
            2,
            "coefficient of variation of the annual driving rain, where the climate holds less than three years"),
    // leaks
    SOUND_SEAL_PASSES("fraction", 0, 1, "share of arriving water that passes a sound first line"),
    FAILED_SEAL_PASSES("fraction", 0, 1, "share of arriving water that passes a first line whose seal has failed"),
    CLADDING_PASSES("fraction", 0, 1, "share of arriving water that passes the cladding, where it is hung in panels"),
    BOARDS_PASS("fraction", 0, 1, "the same for wood or fiber-cement boards"),
    BRICK_PASSES("fraction", 0, 1, "the same for brick veneer"),
    STUCCO_PASSES("fraction", 0, 1, "the same for stucco"),
    SEALANT_LIFE_SHAPE("", 0.3, 10, "Weibull shape of sealant life"),
    SEALANT_LIFE_YEARS("years", 1, 100, "Weibull scale of sealant life"),
    CAPPING_LIFE_SHAPE("", 0.3, 10, "Weibull shape of the life of the seal around capping"),
    CAPPING_LIFE_YEARS("years", 1, 100, "Weibull scale of it"),
    RESEAL_YEARS("years", 0, 60, "sealant is renewed every so many years; 0: never"),
    DRYING_L_PER_YEAR(
            "L/year", 0, 1000, "water that one wetted place at an opening drains and dries a year without harm"),
    DAMAGE_MEDIAN_L_PER_YEAR(
            "L/year", 1e-6, 1e5, "water kept a year at which damage is as likely as not within a year"),
    DAMAGE_SPREAD("", 0.05, 5, "standard deviation of the logarithm of that water"),
    TAPE_WARM_F("°F", -40, 120, "outside temperature below which tape does not stick well unless it is warmed"),
    COLD_TAPE_ODDS("", 1, 1000, "times the odds that tape lets go, below that temperature"),
    HOUSE_CORRELATION("fraction", 0, 0.99, "likeness of the laps of one house: intra-class correlation of a fault"),
    INSPECTION_RELIABILITY("fraction", 0.5, 1, "chance that a look at a lap tells right"),
    LOOK_COST_USD("USD", 0, 1e5, "opening up one window before deciding");

    private static final Set<Scalar> WHOLE = EnumSet.of(
            SEED,
            DRAWS,
            HORIZON_YEARS,
            WARRANTY_YEARS,
            CREW_SIZE,
            CREWS,
            JOBS_WAITING,
            PANES,
            SPELL_DRY_HOURS,
            RESEAL_YEARS);

    private static final Set<Scalar> SEASON = EnumSet.range(CREWS, JOBS_WAITING);

    private final String key = name().toLowerCase(Locale.ROOT);
    private final String unit;
    private final double low;
    private final double high;
    private final String meaning;

    Scalar(String unit, double low, double high, String meaning) {
        this.unit = unit;
        this.low = low;
        this.high = high;
        this.meaning = meaning;
    }

    public String unit() {
        return unit;
    }

    /** Smallest value that makes sense. */
    public double low() {
        return low;
    }

    /** Largest value that makes sense. */
    public double high() {
        return high;
    }

    /** Whether a fraction makes no sense. */
    public boolean whole() {
        return WHOLE.contains(this);
    }

    /** Whether it bears on the season of the shop alone, and on no house. */
    public boolean ofTheSeason() {
        return SEASON.contains(this);
    }

    public String meaning() {
        return meaning;
    }

    /** The name that {@code scenario.toml} and {@code --set} use. */
    public String key() {
        return key;
    }

    public static Optional<Scalar> of(String key) {
        return Arrays.stream(values())
                .filter(scalar -> scalar.key().equals(key))
                .findFirst();
    }
}
