package weatherlap.datasets.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.table.Source;
import weatherlap.sim.rain.HourlyWeather;

/** The invented town is meant to look like a wet coast: these are its own design figures, not measurements. */
class DemoClimateTest {
    private static final HourlyWeather WEATHER = DemoClimate.hourly();

    @Test
    void tenYearsOfHours() {
        assertThat(WEATHER.hours()).isEqualTo(87_672);
        assertThat(WEATHER.year(0)).isEqualTo(2011);
        assertThat(WEATHER.year(WEATHER.hours() - 1)).isEqualTo(2020);
    }

    @Test
    void about1100MillimetresAYearAnd4MetresASecond() {
        assertThat(Arrays.stream(WEATHER.rainMm()).sum() / 10).isBetween(1050.0, 1150.0);
        assertThat(Arrays.stream(WEATHER.windMetresPerSecond()).average().orElseThrow())
                .isBetween(3.7, 4.3);
    }

    @Test
    void theWindTurnsFromSouthEastToSouthWestAsStormsPass() {
        assertThat(share(90, 180)).isBetween(0.25, 0.6);
        assertThat(share(180, 270)).isBetween(0.25, 0.6);
        assertThat(share(0, 90)).isLessThan(0.2);
    }

    /** Share of the rain that falls with wind from between two bearings. */
    private static double share(double fromDeg, double toDeg) {
        return IntStream.range(0, WEATHER.hours())
                        .filter(t -> WEATHER.windFromDeg()[t] >= fromDeg && WEATHER.windFromDeg()[t] < toDeg)
                        .mapToDouble(t -> WEATHER.rainMm()[t])
                        .sum()
                / Arrays.stream(WEATHER.rainMm()).sum();
    }

    @Test
    void theSameSeedGivesTheSameHoursAndAnotherSeedOthers() {
        GeneratorParameters parameters = GeneratorParameters.bundled().with(GeneratorParameters.Parameter.YEARS, 1);
        HourlyWeather once = WeatherGenerator.generate("x", parameters, 7);
        HourlyWeather again = WeatherGenerator.generate("x", parameters, 7);
        HourlyWeather other = WeatherGenerator.generate("x", parameters, 8);
        assertThat(again.rainMm()).containsExactly(once.rainMm());
        assertThat(again.windFromDeg()).containsExactly(once.windFromDeg());
        assertThat(other.rainMm()).isNotEqualTo(once.rainMm());
    }

    @Test
    void writtenAndReadBackItIsTheSame() {
        HourlyWeather year = WeatherSamples.hours(8760);
        String text = ClimateCsv.lines(year).collect(Collectors.joining());
        Climate back = ClimateReader.read(Source.of("demo.csv", text)).orElseThrow();
        assertThat(back.weather().rainMm()).containsExactly(year.rainMm());
        assertThat(back.weather().windFromDeg()).containsExactly(year.windFromDeg());
        assertThat(back.report().absurdValues()).isZero();
        assertThat(back.report().hoursWithoutRow()).isZero();
    }
}
