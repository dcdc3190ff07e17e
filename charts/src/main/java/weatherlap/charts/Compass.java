package weatherlap.charts;

import java.util.List;

/** Bearings in words. */
final class Compass {

    static final List<String> SHORT = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");
    private static final List<String> WORDS =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

    private Compass() {}

    /** The nearest of the eight principal directions; degrees clockwise from north. */
    static String word(double bearingDeg) {
        return WORDS.get((int) Math.floorMod(Math.round(bearingDeg / 45), 8L));
    }
}
