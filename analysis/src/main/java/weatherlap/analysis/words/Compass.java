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

    private Compass() {}

    /**
     * The nearest of the sixteen points and the bearing itself: south-southwest (199°).
     *
     * @param bearingDeg clockwise from north, 0 to 360
     */
    public static String of(double bearingDeg) {
        int point = (int) Math.round(bearingDeg * POINTS.size() / 360) % POINTS.size();
        return POINTS.get(point) + " (" + Numbers.plain(bearingDeg, 0) + "°)";
    }
}
