package weatherlap.reports.words;

import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.run.Summary;

/** Numbers and places as a family reads them. */
public record Phrases(FamilyWords words) {
    private static final double EIGHTHS = 8;
    private static final double SAME_FT2 = 0.05;
    private static final String[] FRACTIONS = {"", "\u215b", "\u00bc", "\u215c", "\u00bd", "\u215d", "\u00be", "\u215e"
    };

    /** To the nearest ten dollars: nobody can say it closer. */
    public static String usd(double usd) {
        return Numbers.usd(Math.round(usd / 10) * 10.0);
    }

    public static String percent(double fraction) {
        return Numbers.percent(fraction, 0);
    }

    public String range(Summary percent) {
        return words.of(
                "range",
                percent(percent.mean() / 100),
                Numbers.plain(percent.p10(), 0),
                Numbers.plain(percent.p90(), 0));
    }

    /** To the nearest eighth of an inch, as a tape measure reads it: 29\u00bc. */
    public static String inches(double inches) {
        long eighths = Math.round(inches * EIGHTHS);
        long whole = eighths / FRACTIONS.length;
        String fraction = FRACTIONS[(int) (eighths % FRACTIONS.length)];
        return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    }

    /** Width by height, in. */
    public static String size(double widthIn, double heightIn) {
        return inches(widthIn) + " \u00d7 " + inches(heightIn) + "\u2033";
    }

    public String ft2(double area) {
        return words.of("ft2", Numbers.plain(area, 1));
    }

    /** Against today: 12.3 ft² less (8%). */
    public String glass(double lostFt2, double todayFt2) {
        if (Math.abs(lostFt2) < SAME_FT2) {
            return words.of("glass.same");
        }
        return words.of(
                lostFt2 < 0 ? "glass.more" : "glass.less",
                ft2(Math.abs(lostFt2)),
                percent(todayFt2 == 0 ? 0 : Math.abs(lostFt2) / todayFt2));
    }

    /** Against today: 8% less. */
    public String change(double lostFraction) {
        long percent = Math.round(100 * lostFraction);
        return percent == 0
                ? words.of("glass.same")
                : words.of(percent < 0 ? "percent.more" : "percent.less", Long.toString(Math.abs(percent)));
    }

    /** One of ten, two of ten, ... in words that do not promise more than is known. */
    public String tenths(double fraction) {
        int tenths = (int) Math.round(10 * fraction);
        return tenths < 1
                ? words.of("tenths.few")
                : tenths > 9 ? words.of("tenths.all") : words.of("tenths.some", Integer.toString(tenths));
    }

    /** A wall by the way it faces; with its key where two walls face the same way. */
    public String wall(House house, Elevation wall) {
        return words.of("wall", direction(wall.bearingDeg())) + key(house, wall);
    }

    /** The same in one word: northeast. */
    public String shortWall(House house, Elevation wall) {
        return direction(wall.bearingDeg()) + key(house, wall);
    }

    /** A direction in words: northeast. */
    public String direction(double bearingDeg) {
        return words.of("compass.word." + Compass.letters(bearingDeg));
    }

    /** Likewise in letters: NE. */
    public String letters(double bearingDeg) {
        return words.of("compass.letters." + Compass.letters(bearingDeg));
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
