package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import weatherlap.sim.Units;

/**
 * Hourly weather of 2013 at three airports (nycflights13, data-raw/weather.csv, CC0). The file stands beside the checkout, not in it; a
 * test that needs it is skipped, saying so, where it is missing.
 */
final class Airports {
    private static final Path FILE = Path.of("shared", "data", "airports-2013-hourly.csv.gz");
    private static final double MM_PER_INCH = 25.4;
    private static final double ABSURD_MPH = 200;

    private Airports() {}

    static HourlyWeather hourly(String origin) {
        List<String[]> rows = rows(origin);
        LocalDateTime start = time(rows.get(0));
        int hours = 1 + hoursAfter(start, rows.get(rows.size() - 1));
        double[] from = RainFixtures.filled(hours, Double.NaN);
        double[] speed = RainFixtures.filled(hours, Double.NaN);
        double[] rain = RainFixtures.filled(hours, Double.NaN);
        double[] temperature = RainFixtures.filled(hours, Double.NaN);
        for (String[] row : rows) {
            int t = hoursAfter(start, row);
            double mph = number(row[9]);
            boolean absurd = mph > ABSURD_MPH;
            from[t] = mph == 0 || absurd ? Double.NaN : number(row[8]);
            speed[t] = absurd ? Double.NaN : mph * Units.METRES_PER_SECOND_PER_MPH;
            rain[t] = number(row[11]) * MM_PER_INCH;
            temperature[t] = (number(row[5]) - 32) / 1.8;
        }
        return new HourlyWeather(origin, start, from, speed, rain, temperature);
    }

    private static List<String[]> rows(String origin) {
        Path file = Stream.iterate(Path.of("").toAbsolutePath(), p -> p != null, Path::getParent)
                .map(folder -> folder.resolve(FILE))
                .filter(Files::exists)
                .findFirst()
                .orElse(null);
        assumeTrue(file != null, "skipped: no " + FILE + " beside the checkout");
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            String[] header = in.readLine().split(",");
            assertThat(List.of(header[5], header[8], header[9], header[11], header[14]))
                    .containsExactly("temp", "wind_dir", "wind_speed", "precip", "time_hour");
            return in.lines()
                    .map(line -> line.split(","))
                    .filter(row -> row[0].equals(origin))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LocalDateTime time(String[] row) {
        return LocalDateTime.parse(row[14].substring(0, row[14].length() - 1));
    }

    private static int hoursAfter(LocalDateTime start, String[] row) {
        return (int) Duration.between(start, time(row)).toHours();
    }

    private static double number(String cell) {
        return cell.equals("NA") ? Double.NaN : Double.parseDouble(cell);
    }
}
