package weatherlap.sim.rain;

import java.time.LocalDateTime;
import weatherlap.sim.Check;

/**
 * Hours of weather at one place, in order of time, as parallel columns that are not changed after they are made. A reading that is
 * missing is NaN: it is counted, not guessed.
 *
 * @param name of the place, shown on sheets
 * @param start first hour, local standard time; the hours follow one another without a gap
 * @param windFromDeg bearing the wind blows from, degrees clockwise from north; NaN where unknown or calm
 * @param windMetresPerSecond hourly mean at 10 m in open country
 * @param rainMm in that hour
 * @param temperatureC air, may be NaN throughout
 * @param anyBearing whether its winds are not those of the houses: rain is then spread evenly over all bearings
 */
@SuppressWarnings("ArrayRecordComponent") // columns of a hundred thousand hours; compared by nobody
public record HourlyWeather(
        String name,
        LocalDateTime start,
        double[] windFromDeg,
        double[] windMetresPerSecond,
        double[] rainMm,
        double[] temperatureC,
        boolean anyBearing) {
    public HourlyWeather {
        Check.text("climate name", name);
        int hours = rainMm.length;
        if (windFromDeg.length != hours || windMetresPerSecond.length != hours || temperatureC.length != hours) {
            throw new IllegalArgumentException("The columns of the climate must be equally long.");
        }
    }

    /** Weather whose winds are those of the houses. */
    public HourlyWeather(
            String name,
            LocalDateTime start,
            double[] windFromDeg,
            double[] windMetresPerSecond,
            double[] rainMm,
            double[] temperatureC) {
        this(name, start, windFromDeg, windMetresPerSecond, rainMm, temperatureC, false);
    }

    /** The same under another name. */
    public HourlyWeather named(String other) {
        return new HourlyWeather(other, start, windFromDeg, windMetresPerSecond, rainMm, temperatureC, anyBearing);
    }

    /** The same with rain spread evenly over all bearings, for houses whose winds it does not know. */
    public HourlyWeather ofAnyBearing() {
        return new HourlyWeather(name, start, windFromDeg, windMetresPerSecond, rainMm, temperatureC, true);
    }

    /** The same with all times later by so many hours. */
    public HourlyWeather shifted(int hours) {
        return new HourlyWeather(
                name, start.plusHours(hours), windFromDeg, windMetresPerSecond, rainMm, temperatureC, anyBearing);
    }

    public int hours() {
        return rainMm.length;
    }

    /** Calendar year of an hour. */
    public int year(int hour) {
        return start.plusHours(hour).getYear();
    }
}
