package weatherlap.sim.geometry;

/**
 * Coil stock bent over the old frame W × H around an insert: head and sill pieces run a tail past each end, the jamb legs run a tail past
 * the head only. With stretch-out q at head and jambs, r at the sill and tail t:
 *
 * <pre>  area = q(2(H + t) + W + 2t) + r(W + 2t)</pre>
 *
 * 36 × 60, q 6, r 8, t 4 in.: 9.61 ft² (own arithmetic; common practice, no source).
 *
 * @param headIn length of the piece, in.
 * @param jambIn of one leg
 * @param sillIn of the piece
 * @param areaIn2 of coil used
 * @param edgeIn length covered, without tails
 */
public record Capping(double headIn, double jambIn, double sillIn, double areaIn2, double edgeIn) {
    static final Capping NONE = new Capping(0, 0, 0, 0, 0);

    static Capping of(double widthIn, double heightIn, double stretchOutIn, double sillStretchOutIn, double tailIn) {
        double acrossIn = widthIn + 2 * tailIn;
        double legIn = heightIn + tailIn;
        double areaIn2 = stretchOutIn * (2 * legIn + acrossIn) + sillStretchOutIn * acrossIn;
        return new Capping(acrossIn, legIn, acrossIn, areaIn2, 2 * (widthIn + heightIn));
    }
}
