package weatherlap.datasets.climate;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.rain.HourlyWeather;

/** Our own table of hourly weather. */
public final class ClimateCsv {
    static final String TIME = "time";
    static final String FROM = "wind_from_deg";
    static final String SPEED = "wind_m_s";
    static final String RAIN = "rain_mm";
    static final String TEMPERATURE = "temperature_c";

    private static final DateTimeFormatter FORMAT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    private ClimateCsv() {}

    /** Numbers of any size pass here: what is absurd is left out later, with a warning. */
    public static Schema schema(String file) {
        return new Schema(
                file,
                "hourly weather at one place",
                List.of(
                        Column.text(TIME, "beginning of the hour, ISO 8601; with or without an offset from UTC"),
                        Column.anyNumber(FROM, "degrees", "bearing the wind blows from; empty where calm")
                                .optional(),
                        Column.anyNumber(SPEED, "m/s", "mean wind at 10 m in open country; 0: calm")
                                .optional(),
                        Column.anyNumber(RAIN, "mm", "rain in that hour").optional(),
                        Column.anyNumber(TEMPERATURE, "°C", "air").optional()),
                List.of());
    }

    /** The table as lines that end in a line feed, its header first; it reads back as the same hours. */
    public static Stream<String> lines(HourlyWeather weather) {
        return Stream.concat(
                Stream.of(CsvText.line(schema("").names())),
                IntStream.range(0, weather.hours()).mapToObj(t -> line(weather, t)));
    }

    private static String line(HourlyWeather weather, int hour) {
        return CsvText.line(
                FORMAT.format(weather.start().plusHours(hour)),
                cell(weather.windFromDeg()[hour]),
                cell(weather.windMetresPerSecond()[hour]),
                cell(weather.rainMm()[hour]),
                cell(weather.temperatureC()[hour]));
    }

    private static String cell(double value) {
        return Double.isNaN(value) ? "" : CsvText.cell(value);
    }
}
