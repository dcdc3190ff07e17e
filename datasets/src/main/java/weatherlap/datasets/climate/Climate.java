package weatherlap.datasets.climate;

import java.util.List;
import weatherlap.sim.rain.HourlyWeather;

/**
 * Weather as read from files, and what there is to say of them.
 *
 * @param measuredAt where the files say that they were measured, each place once; empty: they do not say
 */
public record Climate(HourlyWeather weather, ClimateReport report, List<Location> measuredAt) {
    public Climate {
        measuredAt = List.copyOf(measuredAt);
    }
}
