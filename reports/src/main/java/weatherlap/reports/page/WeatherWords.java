package weatherlap.reports.page;

import weatherlap.analysis.words.Numbers;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.rain.RainCoverage;

/** Which weather a sheet rests on, and whether it is that of the houses. */
public final class WeatherWords {
    private static final double HOURS_PER_YEAR = 8766;

    private WeatherWords() {}

    /** For a family's or a crew's sheet. */
    public static String sheet(RainClimate climate) {
        return climate.anyBearing()
                ? "Weather not yours: no record of this place was given. That of " + climate.name()
                        + " stands in, its rain spread evenly over all walls, so nothing is said of where the wind drives it here."
                : "Weather: " + climate.name() + ".";
    }

    /** For a report: what the record holds and lacks, and whose it is. */
    public static String report(RainClimate climate) {
        return climate.anyBearing()
                ? "Weather not yours: no record of these houses was given. That of " + climate.name()
                        + " stands in, its rain spread evenly over all bearings, so that the way a house faces decides nothing. "
                        + gaps(climate.coverage())
                        + " A site file brings your own: weatherlap site --near PLACE."
                : "Weather of " + climate.name() + ". " + gaps(climate.coverage());
    }

    private static String gaps(RainCoverage coverage) {
        double wet = Math.max(1, coverage.wetHours());
        return "It holds " + Numbers.plain(coverage.hours() / HOURS_PER_YEAR, 1) + " years; "
                + percent((double) coverage.rainMissingHours() / coverage.hours())
                + " of its hours lack rain, and " + percent(coverage.wetHoursWithoutWind() / wet)
                + " of the wet ones a wind: those are left out.";
    }

    private static String percent(double share) {
        return Numbers.plain(100 * share, 1) + "%";
    }
}
