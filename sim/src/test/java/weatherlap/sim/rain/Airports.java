package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.zip.GZIPInputStream;

/** The records of airports that the program brings along, read from their files without its readers. */
final class Airports {
    private static final Path FOLDER = Path.of("../datasets/src/main/resources/weatherlap/datasets/climate");
    private static final double ABSURD_METRES_PER_SECOND = 90;

    private Airports() {}

    /** @param name such as newark */
    static HourlyWeather hourly(String name) {
        List<String[]> rows = rows(name);
        LocalDateTime start = LocalDateTime.parse(rows.get(0)[0]);
        int hours = 1 + hoursAfter(start, rows.get(rows.size() - 1));
        double[] from = RainFixtures.filled(hours, Double.NaN);
        double[] speed = RainFixtures.filled(hours, Double.NaN);
        double[] rain = RainFixtures.filled(hours, Double.NaN);
        double[] temperature = RainFixtures.filled(hours, Double.NaN);
        for (String[] row : rows) {
            int t = hoursAfter(start, row);
            double metresPerSecond = number(row[2]);
            boolean absurd = metresPerSecond > ABSURD_METRES_PER_SECOND;
            from[t] = metresPerSecond == 0 || absurd ? Double.NaN : number(row[1]);
            speed[t] = absurd ? Double.NaN : metresPerSecond;
            rain[t] = number(row[3]);
            temperature[t] = number(row[4]);
        }
        return new HourlyWeather(name, start, from, speed, rain, temperature);
    }

    private static List<String[]> rows(String name) {
        Path file = FOLDER.resolve(name + ".csv.gz");
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            assertThat(in.readLine()).isEqualTo("time,wind_from_deg,wind_m_s,rain_mm,temperature_c");
            return in.lines().map(line -> line.split(",", -1)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int hoursAfter(LocalDateTime start, String[] row) {
        return (int) Duration.between(start, LocalDateTime.parse(row[0])).toHours();
    }

    private static double number(String cell) {
        return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
    }
}
