package weatherlap.sim.rain;

import java.util.function.DoubleUnaryOperator;

/** The reference: every hour of the weather, one after another, without sorting or running sums. */
final class BruteForce {
    private final HourlyWeather weather;

    BruteForce(HourlyWeather weather) {
        this.weather = weather;
    }

    /** Airfield driving rain of all the hours, each weighted by a function of the tangent of its slant, L/m². */
    double litres(double bearingDeg, DoubleUnaryOperator weightOfTangent) {
        double sum = 0;
        for (int t = 0; t < weather.hours(); t++) {
            double wind = weather.windMetresPerSecond()[t];
            double rain = weather.rainMm()[t];
            double cosine = Math.cos(Math.toRadians(weather.windFromDeg()[t] - bearingDeg));
            if (rain > 0 && wind > 0 && cosine > 1e-9) {
                double tangent = Raindrop.drivingRainFactor(rain) * wind * cosine;
                sum += Iso15927.hourlyLitresPerM2(wind, rain, cosine) * weightOfTangent.applyAsDouble(tangent);
            }
        }
        return sum;
    }

    double share(double bearingDeg, double depthM, double overhangM, double windFactor) {
        return litres(bearingDeg, tangent -> overhangM / (tangent * windFactor) < depthM ? 1 : 0)
                / litres(bearingDeg, tangent -> 1);
    }

    double meanShare(double bearingDeg, double fromM, double toM, double overhangM, double windFactor) {
        return litres(bearingDeg, tangent -> {
                    double shelterM = overhangM / (tangent * windFactor);
                    return Math.max(0, toM - Math.max(fromM, shelterM)) / (toM - fromM);
                })
                / litres(bearingDeg, tangent -> 1);
    }
}
