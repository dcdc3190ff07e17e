package weatherlap.datasets.climate;

import weatherlap.sim.rain.HourlyWeather;

/** Weather as read from a file, and what there is to say of the file. */
public record Climate(HourlyWeather weather, ClimateReport report) {}
