package weatherlap.sim.rain;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Driving rain on a wall of one bearing, free of terrain and eave unless asked for a share. Units: L/m², a year or a spell. */
public final class WallRain {
    /**
     * One wall of a bearing, worked out.
     *
     * @param hours driven on it
     */
    record Part(
            WallHours hours,
            double isoLitresPerM2Year,
            double ashraeLitresPerM2Year,
            double straubeLitresPerM2Year,
            double worstSpellLitresPerM2,
            double designSpellLitresPerM2,
            double yearSpread) {}

    private final String facing;
    private final double isoLitresPerM2Year;
    private final double ashraeLitresPerM2Year;
    private final double straubeLitresPerM2Year;
    private final int wetHours;
    private final double worstSpellLitresPerM2;
    private final double designSpellLitresPerM2;
    private final double yearSpread;
    private final EaveShadow shadow;

    private WallRain(String facing, List<Part> parts) {
        this.facing = facing;
        isoLitresPerM2Year = mean(parts, Part::isoLitresPerM2Year);
        ashraeLitresPerM2Year = mean(parts, Part::ashraeLitresPerM2Year);
        straubeLitresPerM2Year = mean(parts, Part::straubeLitresPerM2Year);
        wetHours = (int) Math.round(mean(parts, part -> part.hours().count()));
        worstSpellLitresPerM2 = mean(parts, Part::worstSpellLitresPerM2);
        designSpellLitresPerM2 = mean(parts, Part::designSpellLitresPerM2);
        yearSpread = mean(parts, Part::yearSpread);
        shadow = EaveShadow.of(parts.stream().map(Part::hours).toList());
    }

    /**
     * The mean of some walls: of one, that wall.
     *
     * @param facing which way, in words
     */
    static WallRain of(String facing, List<Part> parts) {
        return new WallRain(facing, parts);
    }

    private static double mean(List<Part> parts, ToDoubleFunction<Part> value) {
        return parts.size() == 1
                ? value.applyAsDouble(parts.get(0))
                : parts.stream().mapToDouble(value).average().orElseThrow();
    }

    /** Which way the wall faces, in words. */
    String facing() {
        return facing;
    }

    /** Airfield annual index I_A, mean of the years. */
    public double isoLitresPerM2Year() {
        return isoLitresPerM2Year;
    }

    /** ASHRAE 160 load with F_E = F_D = 1. */
    public double ashraeLitresPerM2Year() {
        return ashraeLitresPerM2Year;
    }

    /** Straube's free-wind driving rain (RDF 1, wind at 10 m). */
    public double straubeLitresPerM2Year() {
        return straubeLitresPerM2Year;
    }

    /** Hours on file in which rain was driven towards this wall. */
    public int wetHours() {
        return wetHours;
    }

    /** Worst airfield spell on file. */
    public double worstSpellLitresPerM2() {
        return worstSpellLitresPerM2;
    }

    /** Airfield spell not exceeded in the scenario's share of the years. */
    public double designSpellLitresPerM2() {
        return designSpellLitresPerM2;
    }

    /** Coefficient of variation of the annual index; the scenario's where the climate holds less than three whole years. */
    public double yearSpread() {
        return yearSpread;
    }

    /**
     * Share of the driving rain that passes under an eave to a point below it, 0 to 1.
     *
     * @param depthM below the eave, m
     * @param overhangM projection of the eave, m
     * @param windFactor wind at the wall over wind at 10 m in open country
     */
    double share(double depthM, double overhangM, double windFactor) {
        return shadow.share(depthM, overhangM, windFactor);
    }

    /** The same, averaged over a band of the wall between two depths. */
    public double meanShare(double fromDepthM, double toDepthM, double overhangM, double windFactor) {
        return shadow.meanShare(fromDepthM, toDepthM, overhangM, windFactor);
    }
}
