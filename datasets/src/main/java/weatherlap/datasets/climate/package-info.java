/**
 * What was the weather, hour by hour? Reads weather files of four formats into {@link weatherlap.sim.rain.HourlyWeather} with a report of
 * what they lack ({@link weatherlap.datasets.climate.ClimateReader}), and makes the weather of an invented town
 * ({@link weatherlap.datasets.climate.WeatherGenerator}).
 */
package weatherlap.datasets.climate;
