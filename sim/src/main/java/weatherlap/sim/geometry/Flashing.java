package weatherlap.sim.geometry;

/**
 * Flashing tape for a flanged unit W × H: a sill strip W + 2a, two jamb strips H + 2b and a head strip W + 2c, where a, b, c are the
 * tails past each end. With 6, 5 and 8 in. at 36 × 60 (laps after AAMA 2400): 4 ft at the sill, 16 ft at jambs and head.
 *
 * @param sillIn length of the sill strip, in.
 * @param jambIn of one jamb strip
 * @param headIn of the head strip
 */
public record Flashing(double sillIn, double jambIn, double headIn) {
    static final Flashing NONE = new Flashing(0, 0, 0);

    static Flashing of(double widthIn, double heightIn, double sillTailIn, double jambTailIn, double headTailIn) {
        return new Flashing(widthIn + 2 * sillTailIn, heightIn + 2 * jambTailIn, widthIn + 2 * headTailIn);
    }

    /** All strips, in. */
    double lengthIn() {
        return sillIn + 2 * jambIn + headIn;
    }
}
