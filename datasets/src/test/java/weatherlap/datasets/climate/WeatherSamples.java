package weatherlap.datasets.climate;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.datasets.table.Source;
import weatherlap.sim.rain.HourlyWeather;

/** Invented weather written in each format, after the format's public description. */
final class WeatherSamples {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);

    private WeatherSamples() {}

    /** The first so many hours of the invented town. */
    static HourlyWeather hours(int hours) {
        HourlyWeather all = DemoClimate.hourly();
        return new HourlyWeather(
                "sample",
                all.start(),
                Arrays.copyOf(all.windFromDeg(), hours),
                Arrays.copyOf(all.windMetresPerSecond(), hours),
                Arrays.copyOf(all.rainMm(), hours),
                Arrays.copyOf(all.temperatureC(), hours));
    }

    static Source csv(HourlyWeather w) {
        return Source.of("town.csv", ClimateCsv.lines(w).collect(Collectors.joining()));
    }

    static Source epw(HourlyWeather w) {
        String header = "LOCATION,Elder Cove,-,-,invented,000000,44.0,-69.0,-5.0,10.0\nDESIGN CONDITIONS,0\n"
                + "TYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\n"
                + "COMMENTS 1,invented\nCOMMENTS 2,-\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n";
        return Source.of("town.epw", header + lines(w, t -> epwLine(w, t)));
    }

    private static String epwLine(HourlyWeather w, int t) {
        LocalDateTime time = w.start().plusHours(t);
        // 35 cells; those not used are the marks of missing values
        String[] cells = new String[35];
        Arrays.fill(cells, "9999");
        cells[0] = "" + time.getYear();
        cells[1] = "" + time.getMonthValue();
        cells[2] = "" + time.getDayOfMonth();
        cells[3] = "" + (time.getHour() + 1);
        cells[4] = "0";
        cells[5] = "?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9?9*9*9?9?9?9";
        cells[6] = number(w.temperatureC()[t], "99.9");
        cells[20] = number(w.windFromDeg()[t], "999");
        cells[21] = number(w.windMetresPerSecond()[t], "999");
        cells[33] = number(w.rainMm()[t], "999");
        cells[34] = "1.0";
        return String.join(",", cells);
    }

    static Source isdLite(HourlyWeather w) {
        return Source.of("town-lite", lines(w, t -> {
            // the hour given is the one in which the rain ends
            LocalDateTime time = w.start().plusHours(t + 1L);
            return String.format(
                    Locale.ROOT,
                    "%4d %02d %02d %02d%6d%6d%6d%6d%6d%6d%6d%6d",
                    time.getYear(),
                    time.getMonthValue(),
                    time.getDayOfMonth(),
                    time.getHour(),
                    scaled(w.temperatureC()[t], 10),
                    -9999,
                    10132,
                    w.windMetresPerSecond()[t] == 0 ? 0 : scaled(w.windFromDeg()[t], 1),
                    scaled(w.windMetresPerSecond()[t], 10),
                    8,
                    scaled(w.rainMm()[t], 10),
                    -9999);
        }));
    }

    static Source globalHourly(HourlyWeather w) {
        String header =
                "\"STATION\",\"DATE\",\"SOURCE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\",\"REPORT_TYPE\","
                        + "\"CALL_SIGN\",\"QUALITY_CONTROL\",\"WND\",\"CIG\",\"VIS\",\"TMP\",\"DEW\",\"SLP\",\"AA1\"\n";
        return Source.of("town-global.csv", header + lines(w, t -> globalLine(w, t)));
    }

    private static String globalLine(HourlyWeather w, int t) {
        boolean calm = w.windMetresPerSecond()[t] == 0;
        double from = w.windFromDeg()[t];
        String wind = (Double.isNaN(from) ? "999" : String.format(Locale.ROOT, "%03.0f", from))
                + ",1,"
                + (calm ? "C" : "N")
                + ","
                + String.format(Locale.ROOT, "%04d", scaled(w.windMetresPerSecond()[t], 10))
                + ",1";
        String temperature = String.format(Locale.ROOT, "%+05d,1", scaled(w.temperatureC()[t], 10));
        String rain = String.format(Locale.ROOT, "01,%04d,9,1", scaled(w.rainMm()[t], 10));
        String time = STAMP.format(w.start().plusHours(t).plusMinutes(53));
        return String.join(
                ",",
                Arrays.asList(
                        "\"00000000000\"",
                        quoted(time),
                        "\"7\",\"44.0\",\"-69.0\",\"10.0\",\"ELDER COVE, XX\",\"FM-15\",\"XELD \",\"V030\"",
                        quoted(wind),
                        "\"22000,1,9,N\",\"016093,1,9,9\"",
                        quoted(temperature),
                        "\"+9999,9\",\"99999,9\"",
                        quoted(rain)));
    }

    private static String quoted(String text) {
        return '"' + text + '"';
    }

    private static String number(double value, String missing) {
        return Double.isNaN(value) ? missing : Double.toString(value);
    }

    private static long scaled(double value, int factor) {
        return Double.isNaN(value) ? -9999 : Math.round(value * factor);
    }

    private static String lines(HourlyWeather w, IntFunction<String> line) {
        return IntStream.range(0, w.hours()).mapToObj(line).collect(Collectors.joining("\n", "", "\n"));
    }
}
