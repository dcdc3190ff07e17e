package weatherlap.datasets.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;
import weatherlap.sim.rain.HourlyWeather;

class ClimateReaderTest {
    private static final HourlyWeather SAMPLE = WeatherSamples.hours(24 * 14);
    private static final String HEADER = "time,wind_from_deg,wind_m_s,rain_mm,temperature_c\n";

    static Stream<Arguments> formats() {
        return Stream.of(
                Arguments.of(ClimateFormat.HOURLY_CSV, WeatherSamples.csv(SAMPLE)),
                Arguments.of(ClimateFormat.EPW, WeatherSamples.epw(SAMPLE)),
                Arguments.of(ClimateFormat.ISD_LITE, WeatherSamples.isdLite(SAMPLE)),
                Arguments.of(ClimateFormat.GLOBAL_HOURLY, WeatherSamples.globalHourly(SAMPLE)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("formats")
    void everyFormatGivesTheHoursThatWereWritten(ClimateFormat format, Source source) throws IOException {
        assertSameHours(format, ClimateReader.read(source));
        byte[] packed = gzip(source.bytes().open().readAllBytes());
        assertSameHours(format, ClimateReader.read(new Source("packed.gz", () -> new ByteArrayInputStream(packed))));
    }

    private static void assertSameHours(ClimateFormat format, Loaded<Climate> loaded) {
        assertThat(loaded.errors()).isEmpty();
        Climate climate = loaded.orElseThrow();
        assertThat(climate.report().format()).isEqualTo(format);
        assertThat(climate.report().calmHours()).isEqualTo((int)
                Arrays.stream(SAMPLE.windMetresPerSecond()).filter(v -> v == 0).count());
        assertThat(climate.weather().start()).isEqualTo(SAMPLE.start());
        assertThat(climate.weather().rainMm()).containsExactly(SAMPLE.rainMm());
        assertThat(climate.weather().windMetresPerSecond()).containsExactly(SAMPLE.windMetresPerSecond());
        assertThat(climate.weather().windFromDeg()).containsExactly(SAMPLE.windFromDeg());
        assertThat(climate.weather().temperatureC()).containsExactly(SAMPLE.temperatureC());
    }

    private static byte[] gzip(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(bytes);
        }
        return packed.toByteArray();
    }

    @Test
    void isdLiteByItsDescription() {
        // Written by hand: −3.3 °C, wind from 290 at 6.7 m/s, 1.5 mm; then calm with a trace; then all missing but a
        // six-hour total.
        HourlyWeather weather = read("2013 01 01 01   -33   -94 10132   290    67     8    15 -9999\n"
                        + "2013 01 01 02   -33   -94 10132     0     0     8    -1 -9999\n"
                        + "2013 01 01 03 -9999 -9999 -9999 -9999 -9999 -9999 -9999    40\n")
                .orElseThrow()
                .weather();
        assertThat(weather.temperatureC()).containsExactly(-3.3, -3.3, Double.NaN);
        assertThat(weather.windFromDeg()).containsExactly(290, Double.NaN, Double.NaN);
        assertThat(weather.windMetresPerSecond()).containsExactly(6.7, 0, Double.NaN);
        assertThat(weather.rainMm()).containsExactly(1.5, 0, Double.NaN);
    }

    @Test
    void globalHourlyTakesOneHourRainAndTheLastWind() {
        Loaded<Climate> loaded = read("STATION,DATE,REPORT_TYPE,WND,TMP,AA1,AA2\n"
                + "0,2013-01-01T00:20:00,FM-16,\"100,1,N,0050,1\",\"+0010,1\",\"01,0030,9,1\",\n"
                + "0,2013-01-01T00:53:00,FM-15,\"120,1,N,0060,1\",\"+0011,1\",\"06,0900,9,1\",\"01,0045,9,1\"\n"
                + "0,2013-01-01T01:53:00,FM-15,\"999,9,9,9999,9\",\"+9999,9\",\"01,0010,9,3\",\n");
        HourlyWeather weather = loaded.orElseThrow().weather();
        assertThat(weather.rainMm()).containsExactly(4.5, Double.NaN);
        assertThat(weather.windMetresPerSecond()).containsExactly(6.0, Double.NaN);
        assertThat(weather.windFromDeg()).containsExactly(120, Double.NaN);
        assertThat(loaded.warnings()).extracting(Problem::message).anyMatch(m -> m.startsWith("1 reports came"));
    }

    /** Java reads 5f and 0x1p3 as numbers; a weather file that holds them is spoilt. Hours of a day are 1 to 24. */
    @ParameterizedTest
    @ValueSource(strings = {"2011,1,2,25,", "2011,1,2,0,", "2011,1,0x2,3,", "2011,1,2,3.0,"})
    void anEpwHourThatIsNoneIsRefused(String hour) throws IOException {
        String spoilt = text(WeatherSamples.epw(SAMPLE)).replaceFirst("\n2011,1,2,3,", "\n" + hour);
        assertThat(ClimateReader.read(Source.of("spoilt.epw", spoilt)).errors())
                .singleElement()
                .extracting(Problem::message)
                .asString()
                .endsWith("is not an hour of a day");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5f", "0x1p3", "1d", "Infinity", "NaN", "1e999"})
    void aWindThatIsNoNumberIsRefused(String wind) throws IOException {
        String[] lines = text(WeatherSamples.epw(SAMPLE)).split("\n");
        String[] cells = lines[10].split(",");
        cells[21] = wind;
        lines[10] = String.join(",", cells);
        assertThat(ClimateReader.read(Source.of("spoilt.epw", String.join("\n", lines)))
                        .errors())
                .singleElement()
                .extracting(Problem::message)
                .isEqualTo("\"" + wind + "\" is not a number");
    }

    @Test
    void aPackedFileOfNothingButLineEndsEnds() throws IOException {
        byte[] first = WeatherSamples.isdLite(SAMPLE).bytes().open().readAllBytes();
        byte[] endless = Arrays.copyOf(first, first.length + 5_000_000);
        Arrays.fill(endless, first.length, endless.length, (byte) '\n');
        byte[] packed = gzip(endless);
        assertThat(ClimateReader.read(new Source("many.gz", () -> new ByteArrayInputStream(packed)))
                        .errors())
                .extracting(Problem::message)
                .containsExactly("cannot be read: it has more than 4000000 lines");
    }

    @Test
    void monthsOfATypicalYearAreOneYear() throws IOException {
        String january = text(WeatherSamples.epw(SAMPLE));
        String mixed = january.replace("\n2011,1,2,", "\n1999,1,2,");
        Loaded<Climate> loaded = ClimateReader.read(Source.of("typical.epw", mixed));
        assertThat(loaded.orElseThrow().weather().start().getYear()).isEqualTo(2001);
        assertThat(loaded.orElseThrow().report().hoursWithoutRow()).isZero();
        assertThat(loaded.warnings()).extracting(Problem::message).anyMatch(m -> m.contains("typical year"));
    }

    /** As a file of one year in another time zone, or of twelve months from July on. */
    @Test
    void aRealStretchOverTheTurnOfTheYearKeepsItsYears() throws IOException {
        String january = text(WeatherSamples.epw(SAMPLE));
        String across = january.replace("\n2011,1,1,", "\n2010,12,31,");
        Loaded<Climate> loaded = ClimateReader.read(Source.of("across.epw", across));
        ClimateReport report = loaded.orElseThrow().report();
        assertThat(report.firstHour()).isEqualTo(LocalDateTime.of(2010, 12, 31, 0, 0));
        assertThat(report.calendarYears()).containsExactly(2010, 2011);
        assertThat(report.rowsOutOfOrder()).isZero();
        assertThat(loaded.warnings()).extracting(Problem::message).noneMatch(m -> m.contains("typical year"));
    }

    @Test
    void absurdReadingsAreLeftOutWithAWarningThatSaysWhere() {
        Loaded<Climate> loaded = read(HEADER
                + "2013-02-12T03:00,361,468.5,0,5\n"
                + "2013-02-12T04:00,-1,3,-2,5\n"
                + "2013-02-12T05:00,90,3,1,5\n");
        assertThat(loaded.warnings())
                .extracting(Problem::toString)
                .contains(
                        "w:2:wind_from_deg: 361.0 degrees is impossible (expected: 0 to 360); left out",
                        "w:2:wind_m_s: 468.5 m/s is impossible (expected: 0 to 60); left out",
                        "w:3:wind_from_deg: -1.0 degrees is impossible (expected: 0 to 360); left out",
                        "w:3:rain_mm: -2.0 mm is impossible (expected: 0 to 305); left out");
        ClimateReport report = loaded.orElseThrow().report();
        assertThat(report.absurdValues()).isEqualTo(4);
        assertThat(report.windMissingHours()).isEqualTo(2);
        assertThat(report.rainMissingHours()).isEqualTo(1);
        assertThat(report.treatment()).contains("Impossible readings count as missing.");
    }

    /** Two years in two files are the record that they are in one; in which order they are named does not matter. */
    @Test
    void severalFilesAreOneRecord() throws IOException {
        List<String> lines =
                ClimateCsv.lines(DemoClimate.hourly()).limit(2 * 8760 + 1).toList();
        Source first = Source.of("first.csv", String.join("", lines.subList(0, 8761)));
        Source second = Source.of("second.csv", HEADER + String.join("", lines.subList(8761, lines.size())));
        HourlyWeather whole = ClimateReader.read(Source.of("both.csv", String.join("", lines)))
                .orElseThrow()
                .weather();
        Climate parts =
                ClimateReader.read(List.of(second, first), new Problems()).orElseThrow();
        assertThat(parts.weather().start()).isEqualTo(whole.start());
        assertThat(parts.weather().rainMm()).containsExactly(whole.rainMm());
        assertThat(parts.weather().windFromDeg()).containsExactly(whole.windFromDeg());
        assertThat(parts.report().file()).isEqualTo("first.csv to second.csv (2 files)");
        assertThat(parts.report().calendarYears()).containsExactly(2011, 2012);
    }

    @Test
    void aYearMissingBetweenTwoFilesIsNamed() {
        List<String> lines =
                ClimateCsv.lines(DemoClimate.hourly()).limit(4 * 8766).toList();
        Source first = Source.of("2011.csv", String.join("", lines.subList(0, 8761)));
        Source third = Source.of("2013.csv", HEADER + String.join("", lines.subList(1 + 8760 + 8784, 3 * 8766)));
        Loaded<Climate> loaded = ClimateReader.read(List.of(first, third), new Problems());
        assertThat(loaded.errors())
                .extracting(Problem::toString)
                .containsExactly(
                        "2011.csv to 2013.csv (2 files): has no hours of 2012: add what is missing, or leave out the years"
                                + " on one side of it");
    }

    @Test
    void filesOfTwoFormatsAreNoRecord() {
        Loaded<Climate> loaded =
                ClimateReader.read(List.of(WeatherSamples.csv(SAMPLE), WeatherSamples.isdLite(SAMPLE)), new Problems());
        assertThat(loaded.errors()).extracting(Problem::message).anyMatch(m -> m.contains("one record"));
    }

    @Test
    void repeatedAndUnorderedHoursAreMendedAndTold() {
        Loaded<Climate> loaded = read(
                HEADER + "2013-01-01T02:00,90,3,2,5\n" + "2013-01-01T00:00,90,3,1,5\n" + "2013-01-01T02:00,90,3,9,5\n");
        Climate climate = loaded.orElseThrow();
        assertThat(climate.weather().rainMm()).containsExactly(1, Double.NaN, 2);
        assertThat(climate.report().repeatedRows()).isEqualTo(1);
        assertThat(climate.report().rowsOutOfOrder()).isEqualTo(1);
        assertThat(climate.report().hoursWithoutRow()).isEqualTo(1);
        assertThat(loaded.warnings()).extracting(Problem::row).contains(3, 4);
    }

    @Test
    void daylightSavingTimeIsRecognised() {
        StringBuilder text = new StringBuilder(HEADER);
        ZoneId zone = ZoneId.of("America/New_York");
        Instant first = Instant.parse("2013-01-01T05:00:00Z");
        for (int t = 0; t < 8760; t++) {
            text.append(first.plusSeconds(3600L * t).atZone(zone).toLocalDateTime())
                    .append(",90,3,1,5\n");
        }
        Loaded<Climate> loaded = read(text.toString());
        assertThat(loaded.orElseThrow().report().repeatedRows()).isEqualTo(1);
        assertThat(loaded.warnings())
                .extracting(Problem::message)
                .anyMatch(m -> m.contains("2013-03-10T02:00") && m.contains("daylight-saving"));
    }

    @Test
    void offsetsFromUtcNeedNoDaylightSaving() {
        Climate climate = read(HEADER
                        + "2013-03-10T01:00-05:00,90,3,1,5\n"
                        + "2013-03-10T03:00-04:00,90,3,2,5\n"
                        + "2013-03-10T04:00-04:00,90,3,3,5\n")
                .orElseThrow();
        assertThat(climate.weather().rainMm()).containsExactly(1, 2, 3);
    }

    @Test
    void whatCannotBeUsedIsAListOfErrors() {
        assertThat(read("").errors()).extracting(Problem::message).containsExactly("is empty");
        assertThat(read("roses are red\n").errors().get(0).message())
                .startsWith("is not a weather file that the program reads");
        assertThat(read(HEADER).errors()).extracting(Problem::message).containsExactly("holds no hour of weather");
        assertThat(read(HEADER + "2013-01-01T00:00,90,3,,5\n").errors().get(0).message())
                .startsWith("has no hour with both rain and wind");
        assertThat(read(HEADER + "2013-01-01T00:00,90,x,1,5\n1 May,90,3,1,5\n").errors())
                .extracting(Problem::row, Problem::column)
                .containsExactly(tuple(2, "wind_m_s"), tuple(3, "time"));
        assertThat(read(HEADER + "1013-01-01T00:00,90,3,1,5\n2013-01-01T00:00,90,3,1,5\n")
                        .errors()
                        .get(0)
                        .message())
                .endsWith("is a date wrong?");
        assertThat(read("2013 13 01 01   -33   -94 10132   290    67     8    15 -9999\n")
                        .errors())
                .hasSize(1);
    }

    @Test
    void aCutGzipIsAnErrorNotAShortYear() throws IOException {
        byte[] whole = gzip(text(WeatherSamples.isdLite(SAMPLE)).getBytes(StandardCharsets.UTF_8));
        byte[] half = Arrays.copyOf(whole, whole.length / 2);
        Loaded<Climate> loaded = ClimateReader.read(new Source("half.gz", () -> new ByteArrayInputStream(half)));
        assertThat(loaded.value()).isEmpty();
        assertThat(loaded.errors().get(0).message()).startsWith("cannot be read");
    }

    private static String text(Source source) throws IOException {
        return new String(source.bytes().open().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static Loaded<Climate> read(String text) {
        return ClimateReader.read(Source.of("w", text));
    }
}
