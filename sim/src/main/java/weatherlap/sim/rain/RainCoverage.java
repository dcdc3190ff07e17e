package weatherlap.sim.rain;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What the weather holds and lacks. Hours that lack something are left out of the sums, which are not scaled up for them.
 *
 * @param hours on file
 * @param years that they cover, for annual means
 * @param rainMissingHours hours without a reading of rain
 * @param windMissingHours hours without a speed, or with a wind but no direction
 * @param calmHours hours with a speed of zero: they drive no rain
 * @param wetHours hours of rain, over the dry limit
 * @param wetHoursWithoutWind of them, left out because direction or speed is unknown
 * @param calmWetHours of them, calm
 * @param rainMm in all
 * @param rainWithoutWindMm of it, in the hours left out
 * @param calmRainMm of it, in calm hours
 * @param meanWindMetresPerSecond of the hours with a speed
 */
public record RainCoverage(
        int hours,
        double years,
        int rainMissingHours,
        int windMissingHours,
        int calmHours,
        int wetHours,
        int wetHoursWithoutWind,
        int calmWetHours,
        double rainMm,
        double rainWithoutWindMm,
        double calmRainMm,
        double meanWindMetresPerSecond) {

    static RainCoverage of(HourlyWeather weather, double groundLimitMm, double years) {
        double[] rain = weather.rainMm();
        double[] speed = weather.windMetresPerSecond();
        double[] from = weather.windFromDeg();
        IntPredicate wet = t -> rain[t] > 0 && rain[t] >= groundLimitMm;
        IntPredicate windless = t -> Double.isNaN(speed[t]) || (speed[t] > 0 && Double.isNaN(from[t]));
        IntPredicate calm = t -> speed[t] == 0;
        return new RainCoverage(
                weather.hours(),
                years,
                count(weather, t -> Double.isNaN(rain[t])),
                count(weather, windless),
                count(weather, calm),
                count(weather, wet),
                count(weather, wet.and(windless)),
                count(weather, wet.and(calm)),
                rainMm(weather, wet),
                rainMm(weather, wet.and(windless)),
                rainMm(weather, wet.and(calm)),
                hours(weather)
                        .mapToDouble(t -> speed[t])
                        .filter(v -> !Double.isNaN(v))
                        .average()
                        .orElse(0));
    }

    private static IntStream hours(HourlyWeather weather) {
        return IntStream.range(0, weather.hours());
    }

    private static double rainMm(HourlyWeather weather, IntPredicate test) {
        return hours(weather).filter(test).mapToDouble(t -> weather.rainMm()[t]).sum();
    }

    private static int count(HourlyWeather weather, IntPredicate test) {
        return (int) hours(weather).filter(test).count();
    }

    /** Share of the rain that was left out for want of a wind, 0 to 1. */
    public double rainLeftOut() {
        return rainMm == 0 ? 0 : rainWithoutWindMm / rainMm;
    }

    /** Share of the rain that fell in calm hours and is driven on no wall, 0 to 1. */
    public double calmRain() {
        return rainMm == 0 ? 0 : calmRainMm / rainMm;
    }
}
