package weatherlap.reports.handout;

import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Compass;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.run.Summary;

/** Numbers and names as a family reads them. */
final class Phrases {
    private static final double EIGHTHS = 8;
    private static final String[] FRACTIONS = {"", "\u215b", "\u00bc", "\u215c", "\u00bd", "\u215d", "\u00be", "\u215e"
    };

    private Phrases() {}

    /** To the nearest ten dollars: nobody can say it closer. */
    static String usd(double usd) {
        return Numbers.usd(Math.round(usd / 10) * 10.0);
    }

    static String percent(double fraction) {
        return Numbers.percent(fraction, 0);
    }

    /** Against today: 12.3 ft² less (8%). */
    static String glass(double lostFt2, double todayFt2) {
        return Numbers.plain(Math.abs(lostFt2), 1) + " ft\u00b2 " + (lostFt2 < 0 ? "more (" : "less (")
                + percent(todayFt2 == 0 ? 0 : Math.abs(lostFt2) / todayFt2) + ")";
    }

    static String range(Summary percent) {
        return percent(percent.mean() / 100) + " (" + Numbers.plain(percent.p10(), 0) + " to "
                + Numbers.plain(percent.p90(), 0) + ")";
    }

    /** To the nearest eighth of an inch, as a tape measure reads it: 29\u00bc. */
    static String inches(double inches) {
        long eighths = Math.round(inches * EIGHTHS);
        long whole = eighths / FRACTIONS.length;
        String fraction = FRACTIONS[(int) (eighths % FRACTIONS.length)];
        return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    }

    /** Width by height, in. */
    static String size(double widthIn, double heightIn) {
        return inches(widthIn) + " \u00d7 " + inches(heightIn) + "\u2033";
    }

    /** One of ten, two of ten, ... in words that do not promise more than is known. */
    static String tenths(double fraction) {
        int tenths = (int) Math.round(10 * fraction);
        return tenths < 1 ? "fewer than 1 in 10" : tenths > 9 ? "nearly all" : "about " + tenths + " in 10";
    }

    /** A wall by the way it faces; with its key where two walls face the same way. */
    static String wall(House house, Elevation wall) {
        return Compass.word(wall.bearingDeg()) + " wall" + key(house, wall);
    }

    /** The same by the letters of the compass: NE. */
    static String shortWall(House house, Elevation wall) {
        return Compass.letters(wall.bearingDeg()) + key(house, wall);
    }

    private static String key(House house, Elevation wall) {
        String direction = Compass.word(wall.bearingDeg());
        boolean alone = house.elevations().stream()
                        .filter(other -> Compass.word(other.bearingDeg()).equals(direction))
                        .count()
                == 1;
        return alone || wall.id().equalsIgnoreCase(direction) ? "" : " (" + wall.id() + ")";
    }
}
