package weatherlap.sim.rain;

/** Driving rain on a wall of one bearing, free of terrain and eave unless asked for a share. Units: L/m², a year or a spell. */
public final class WallRain {
    private final int bearingDeg;
    private final double isoLitresPerM2Year;
    private final double ashraeLitresPerM2Year;
    private final double straubeLitresPerM2Year;
    private final int wetHours;
    private final double worstSpellLitresPerM2;
    private final double designSpellLitresPerM2;
    private final double yearSpread;
    private final EaveShadow shadow;

    WallRain(
            int bearingDeg,
            double isoLitresPerM2Year,
            double ashraeLitresPerM2Year,
            double straubeLitresPerM2Year,
            int wetHours,
            double worstSpellLitresPerM2,
            double designSpellLitresPerM2,
            double yearSpread,
            EaveShadow shadow) {
        this.bearingDeg = bearingDeg;
        this.isoLitresPerM2Year = isoLitresPerM2Year;
        this.ashraeLitresPerM2Year = ashraeLitresPerM2Year;
        this.straubeLitresPerM2Year = straubeLitresPerM2Year;
        this.wetHours = wetHours;
        this.worstSpellLitresPerM2 = worstSpellLitresPerM2;
        this.designSpellLitresPerM2 = designSpellLitresPerM2;
        this.yearSpread = yearSpread;
        this.shadow = shadow;
    }

    /** Outward normal, whole degrees clockwise from north. */
    public int bearingDeg() {
        return bearingDeg;
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
