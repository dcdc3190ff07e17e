package weatherlap.sim.rain;

import java.util.stream.IntStream;

/**
 * The hours of a climate in which rain can be driven, as columns: it rained, and direction and speed of the wind are known. Everything
 * that does not depend on the wall is worked out here once.
 */
final class WetHours {
    final int[] hour;
    final double[] east;
    final double[] north;
    final double[] isoLitres;
    final double[] windMetresPerSecond;
    final double[] rainMm;
    final double[] drivingRainFactor;

    WetHours(HourlyWeather weather, double groundLimitMm) {
        hour = IntStream.range(0, weather.hours())
                .filter(t -> weather.rainMm()[t] > 0 && weather.rainMm()[t] >= groundLimitMm)
                .filter(t -> weather.windMetresPerSecond()[t] > 0 && !Double.isNaN(weather.windFromDeg()[t]))
                .toArray();
        windMetresPerSecond = column(t -> weather.windMetresPerSecond()[t]);
        rainMm = column(t -> weather.rainMm()[t]);
        east = column(t -> Math.sin(Math.toRadians(weather.windFromDeg()[t])));
        north = column(t -> Math.cos(Math.toRadians(weather.windFromDeg()[t])));
        isoLitres = column(t -> Iso15927.hourlyLitresPerM2(weather.windMetresPerSecond()[t], weather.rainMm()[t], 1));
        drivingRainFactor = column(t -> Raindrop.drivingRainFactor(weather.rainMm()[t]));
    }

    int count() {
        return hour.length;
    }

    private double[] column(java.util.function.IntToDoubleFunction value) {
        return IntStream.of(hour).mapToDouble(value).toArray();
    }
}
