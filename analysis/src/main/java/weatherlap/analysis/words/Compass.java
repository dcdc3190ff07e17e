package weatherlap.analysis.words;

import java.util.List;

/** Bearings in words. */
public final class Compass {
    private static final List<String> POINTS = List.of(
            "north",
            "north-northeast",
            "northeast",
            "east-northeast",
            "east",
            "east-southeast",
            "southeast",
            "south-southeast",
            "south",
            "south-southwest",
            "southwest",
            "west-southwest",
            "west",
            "west-northwest",
            "northwest",
            "north-northwest");

    /** Those of the sixteen that a coarser reading tells apart. */
    private static final int OCTANT = 2;

    private static final List<String> LETTERS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

    private Compass() {}

    /**
     * The nearest of the sixteen points and the bearing itself: south-southwest (199°).
     *
     * @param bearingDeg clockwise from north, 0 to 360
     */
    public static String of(double bearingDeg) {
        return POINTS.get(part(bearingDeg, POINTS.size())) + " (" + Numbers.plain(bearingDeg, 0) + "°)";
    }

    /** The nearest of the eight principal directions: northeast. */
    public static String word(double bearingDeg) {
        return POINTS.get(OCTANT * octant(bearingDeg));
    }

    /** The same in letters: NE. */
    public static String letters(double bearingDeg) {
        return LETTERS.get(octant(bearingDeg));
    }

    /** The eighth of the compass around a bearing: 0 north, 1 northeast, …; each is 45° wide, its point in the middle. */
    public static int octant(double bearingDeg) {
        return part(bearingDeg, LETTERS.size());
    }

    private static int part(double bearingDeg, int parts) {
        return (int) Math.floorMod(Math.round(bearingDeg * parts / 360), (long) parts);
    }
}
