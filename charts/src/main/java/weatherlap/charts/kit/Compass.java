package weatherlap.charts.kit;

import java.util.List;

/** Bearings in words. */
public final class Compass {

    private static final List<String> LETTERS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");
    private static final List<String> WORDS =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

    private Compass() {}

    /** The nearest of the eight principal directions; degrees clockwise from north. */
    public static String word(double bearingDeg) {
        return WORDS.get(octant(bearingDeg));
    }

    /** The same in letters: NE. */
    public static String letters(double bearingDeg) {
        return LETTERS.get(octant(bearingDeg));
    }

    private static int octant(double bearingDeg) {
        return (int) Math.floorMod(Math.round(bearingDeg / 45), 8L);
    }
}
