package weatherlap.sim.rain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;

/**
 * The rain on one opening, worked out.
 *
 * <pre>
 * free   = I_A(θ) · C_R(z) · C_T · O · W_bare                    L/(m² a), z: middle of the opening
 * head   = free · s(wall above) · width · min(eave − head, runoff height) · runoff fraction
 * jamb   = free · s(opening) · height · 2 · joint strip
 * sill   = free · s(opening) · width · height                    all that falls on the glass runs to the sill
 * corner = jamb + sill · min(1, 2 · joint strip / width)         the bottom corners, where both meet
 * field  = free · s(band) · area of a band of field strip at both sides and below, no lower than the ground
 * </pre>
 *
 * s(·) is the mean share of the rain that passes under the eave over that part of the wall ({@link WallRain#meanShare}); or, with the
 * published wall factor, W / W_bare everywhere. The slant of the rain at the wall is the rain through the wall over the rain on the
 * ground, so C_R, O and W_bare, which lessen the first, lessen the slant alike: the wind that the eave sees is U = v · C_R · C_T · O ·
 * W_bare (own derivation). With the free wind instead, overhangs would protect about half as far down as they are seen to do.
 *
 * <p>Other openings above are ignored, and so is water that runs from the head over the glass. How water splits over the joints is
 * judgement: no measurement was found. Lengths are in metres inside.
 */
public final class OpeningRain {
    private static final String LITRES = "L/year";

    private final Scenario scenario;
    private final WallRain wall;
    private final Shelter shelter;
    private final double roughness;
    private final double obstruction;
    /** W_bare, or the published one where that is taken and greater. */
    private final double wallFactor;
    /** Driving rain on the wall over the airfield index: C_R · C_T · O · W_bare. */
    private final double wallOverAirfield;

    private final double freeLitresPerM2Year;
    private final double openingShare;

    private final double widthM;
    private final double heightM;
    private final double headDepthM;
    private final double sillHeightM;

    private OpeningRain(RainClimate climate, House house, Elevation elevation, Opening opening, Scenario scenario) {
        this.scenario = scenario;
        wall = climate.wall(elevation.bearingDeg());
        widthM = Units.inchesToMetres(opening.frame().widthIn());
        heightM = Units.inchesToMetres(opening.frame().heightIn());
        sillHeightM = Units.inchesToMetres(opening.place().sillHeightIn());
        headDepthM = Math.max(0, Units.inchesToMetres(elevation.eaveHeightIn() - opening.headHeightIn()));
        double bare = scenario.value(Scalar.WALL_FACTOR_BARE);
        boolean published = scenario.choice(Choice.SHELTER).equals("wall_factor");
        double sheltered = Iso15927.wallFactor(house.storeys(), elevation.overhangIn() == 0);
        wallFactor = published ? Math.max(bare, sheltered) : bare;
        roughness = Iso15927.roughness(house.terrain(), sillHeightM + heightM / 2);
        obstruction = Iso15927.obstruction(elevation.obstructionM());
        wallOverAirfield = roughness * Iso15927.LEVEL_GROUND * obstruction * wallFactor;
        shelter = published
                ? new Shelter.Uniform(sheltered / wallFactor)
                : new Shelter.HourlyOverhang(wall, Units.inchesToMetres(elevation.overhangIn()), wallOverAirfield);
        freeLitresPerM2Year = wall.isoLitresPerM2Year() * wallOverAirfield;
        openingShare = shelter.meanShare(headDepthM, sillDepthM());
    }

    /**
     * @param elevation of the house
     * @param opening of the elevation
     */
    public static OpeningRain of(
            RainClimate climate, House house, Elevation elevation, Opening opening, Scenario scenario) {
        return new OpeningRain(climate, house, elevation, opening, scenario);
    }

    /** What the leak model needs. */
    public OpeningExposure exposure() {
        double onOpening = freeLitresPerM2Year * openingShare;
        double jamb = onOpening * jambStripsM2();
        double sill = onOpening * widthM * heightM;
        Map<Joint, Double> litres = new EnumMap<>(Joint.class);
        litres.put(
                Joint.HEAD,
                freeLitresPerM2Year
                        * shelter.meanShare(headDepthM - runoffHeightM(), headDepthM)
                        * widthM
                        * runoffHeightM()
                        * scenario.value(Scalar.RUNOFF_FRACTION));
        litres.put(Joint.JAMB, jamb);
        litres.put(Joint.SILL, sill);
        litres.put(Joint.CORNER, jamb + sill * cornerShareOfSill());
        litres.put(
                Joint.FIELD,
                freeLitresPerM2Year * shelter.meanShare(headDepthM, sillDepthM() + fieldBelowM()) * fieldBandM2());
        return new OpeningExposure(
                freeLitresPerM2Year,
                onOpening,
                1 - openingShare,
                litres,
                wall.yearSpread(),
                wall.designSpellLitresPerM2() * wallOverAirfield);
    }

    /** Share of the driving rain that reaches the head of the opening, 0 to 1. */
    public double headShare() {
        return shelter.share(headDepthM);
    }

    /** Share that reaches its middle. */
    public double middleShare() {
        return shelter.share(headDepthM + heightM / 2);
    }

    /** Share that reaches its sill. */
    public double sillShare() {
        return shelter.share(sillDepthM());
    }

    /** Water that arrives at a joint, that of {@link #exposure}, with the parts it is made of down to the rows of the scenario. */
    public Amount explain(Joint joint) {
        return switch (joint) {
            case HEAD ->
                Amount.product(
                        "water that runs down to the head",
                        LITRES,
                        List.of(
                                free(),
                                shelter.explain("the wall above", headDepthM - runoffHeightM(), headDepthM),
                                width(),
                                runoffHeight(),
                                scenario.amount(Scalar.RUNOFF_FRACTION)));
            case JAMB -> Amount.product("water at the jambs", LITRES, List.of(free(), openingShare(), jambStrips()));
            case SILL ->
                Amount.product(
                        "water that runs down the glass to the sill",
                        LITRES,
                        List.of(free(), openingShare(), width(), height()));
            case CORNER -> corner(explain(Joint.JAMB), explain(Joint.SILL));
            case FIELD ->
                Amount.product(
                        "water on the wall around the opening",
                        LITRES,
                        List.of(
                                free(),
                                shelter.explain("the band", headDepthM, sillDepthM() + fieldBelowM()),
                                fieldBand()));
        };
    }

    private Amount free() {
        Amount overAirfield = Amount.product(
                "wall over airfield",
                "",
                List.of(
                        Amount.given("roughness coefficient", roughness, ""),
                        Amount.given("topography coefficient", Iso15927.LEVEL_GROUND, ""),
                        Amount.given("obstruction factor", obstruction, ""),
                        wallFactor == scenario.value(Scalar.WALL_FACTOR_BARE)
                                ? scenario.amount(Scalar.WALL_FACTOR_BARE)
                                : Amount.given("wall factor as published", wallFactor, "")));
        return Amount.product(
                "driving rain on the wall without its eave",
                "L/m² year",
                List.of(
                        Amount.given("airfield index, " + wall.facing(), wall.isoLitresPerM2Year(), "L/m² year"),
                        overAirfield));
    }

    private Amount openingShare() {
        return shelter.explain("the opening", headDepthM, sillDepthM());
    }

    private Amount corner(Amount jamb, Amount sill) {
        Amount fromSill = Amount.product("from the sill", LITRES, List.of(sill, cornerShare()));
        return Amount.sum("water at the bottom corners", LITRES, List.of(jamb, fromSill));
    }

    private Amount runoffHeight() {
        return Amount.formula(
                "wall above that sheds water, the less of eave over head and the limit",
                runoffHeightM(),
                "m",
                List.of(Amount.given("eave over head", headDepthM, "m"), scenario.amount(Scalar.RUNOFF_HEIGHT_FT)));
    }

    private Amount jambStrips() {
        return Amount.formula(
                "a strip along both jambs",
                jambStripsM2(),
                "m²",
                List.of(height(), scenario.amount(Scalar.JOINT_STRIP_IN)));
    }

    private Amount cornerShare() {
        return Amount.formula(
                "two strips over the width of the frame",
                cornerShareOfSill(),
                "",
                List.of(scenario.amount(Scalar.JOINT_STRIP_IN), width()));
    }

    private Amount fieldBand() {
        return Amount.formula(
                "a band at both sides and below",
                fieldBandM2(),
                "m²",
                List.of(
                        width(),
                        height(),
                        Amount.given("sill over grade", sillHeightM, "m"),
                        scenario.amount(Scalar.FIELD_STRIP_IN)));
    }

    private Amount width() {
        return Amount.given("width of the frame", widthM, "m");
    }

    private Amount height() {
        return Amount.given("height of the frame", heightM, "m");
    }

    private double sillDepthM() {
        return headDepthM + heightM;
    }

    private double runoffHeightM() {
        return Math.min(headDepthM, Units.feetToMetres(scenario.value(Scalar.RUNOFF_HEIGHT_FT)));
    }

    private double jambStripsM2() {
        return 2 * jointStripM() * heightM;
    }

    private double cornerShareOfSill() {
        return Math.min(1, 2 * jointStripM() / widthM);
    }

    private double jointStripM() {
        return Units.inchesToMetres(scenario.value(Scalar.JOINT_STRIP_IN));
    }

    private double fieldBandM2() {
        return 2 * fieldStripM() * (heightM + fieldBelowM()) + widthM * fieldBelowM();
    }

    private double fieldStripM() {
        return Units.inchesToMetres(scenario.value(Scalar.FIELD_STRIP_IN));
    }

    private double fieldBelowM() {
        return Math.min(fieldStripM(), sillHeightM);
    }
}
