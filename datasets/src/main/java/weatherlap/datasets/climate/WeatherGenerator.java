package weatherlap.datasets.climate;

import static weatherlap.datasets.climate.GeneratorParameters.Parameter.*;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.random.Streams;

/**
 * Makes the weather of an invented town: dry and wet spells in turn, storms that strengthen the wind and turn it as they pass, showers in
 * summer, seasons. The same parameters and seed give the same hours to the last digit. It is a stage for the driving-rain model, not a
 * climatology: no number in it was measured.
 */
final class WeatherGenerator {
    private final GeneratorParameters parameters;
    private final Streams streams;
    private final LocalDateTime start;
    private final double[] from;
    private final double[] speed;
    private final double[] rain;
    private final double[] temperature;

    private WeatherGenerator(GeneratorParameters parameters, long seed) {
        this.parameters = parameters;
        streams = new Streams(seed);
        start = LocalDateTime.of((int) value(FIRST_YEAR), 1, 1, 0, 0);
        int hours = (int)
                Duration.between(start, start.plusYears((long) value(YEARS))).toHours();
        from = new double[hours];
        speed = new double[hours];
        rain = new double[hours];
        temperature = new double[hours];
    }

    /** @param name of the invented town */
    static HourlyWeather generate(String name, GeneratorParameters parameters, long seed) {
        WeatherGenerator generator = new WeatherGenerator(parameters, seed);
        List<RainEvent> events = new RainEvents(parameters, generator.streams).draw(generator.rain.length);
        generator.letItRain(events);
        generator.letItBlow(events);
        generator.warm();
        return new HourlyWeather(
                name, generator.start, generator.from, generator.speed, generator.rain, generator.temperature);
    }

    private void letItRain(List<RainEvent> events) {
        UniformRandomProvider rng = streams.world("climate rain");
        ZigguratSampler gaussian = ZigguratSampler.NormalizedGaussian.of(rng);
        double[] years = new double[(int) value(YEARS)];
        for (int i = 0; i < years.length; i++) {
            years[i] = Math.exp(value(YEAR_SPREAD) * gaussian.sample());
        }
        for (RainEvent event : events) {
            double[] weight = new double[event.hours()];
            double sum = 0;
            for (int i = 0; i < weight.length; i++) {
                double burst = event.strength(i) * Math.exp(value(BURST_SPREAD) * gaussian.sample());
                weight[i] = rng.nextDouble() < value(BREAK_SHARE) ? 0 : burst;
                sum += weight[i];
            }
            for (int i = 0; i < weight.length && sum > 0; i++) {
                int hour = event.firstHour() + i;
                double year = years[start.plusHours(hour).getYear() - start.getYear()];
                rain[hour] = tenths(event.rainMm() * year * weight[i] / sum);
            }
        }
    }

    private void letItBlow(List<RainEvent> events) {
        double[] gain = new double[speed.length];
        double[] target = fairWind();
        for (RainEvent event : events) {
            for (int i = 0; i < event.hours(); i++) {
                gain[event.firstHour() + i] = event.windGain() * event.strength(i);
                target[event.firstHour() + i] = event.fromDeg(i);
            }
        }
        Wander strength = new Wander(streams.world("climate wind speed"), value(WIND_MEMORY));
        double spread = value(WIND_SPREAD);
        double east = 0;
        double north = 0;
        double kept = value(TURN_MEMORY);
        for (int t = 0; t < speed.length; t++) {
            double mean = value(WIND_M_S) * (1 + value(WIND_SEASON) * TimeOfYear.winter(t));
            double wind = mean * Math.exp(spread * strength.next() - spread * spread / 2) * (1 + gain[t]);
            east = kept * east + (1 - kept) * Math.sin(Math.toRadians(target[t]));
            north = kept * north + (1 - kept) * Math.cos(Math.toRadians(target[t]));
            boolean calm = wind < value(CALM_M_S);
            speed[t] = calm ? 0 : tenths(wind);
            from[t] = calm ? Double.NaN : wholeDegrees(Math.toDegrees(Math.atan2(east, north)));
        }
    }

    private double[] fairWind() {
        Wander wander = new Wander(streams.world("climate wind direction"), value(FAIR_FROM_MEMORY));
        double[] fair = new double[speed.length];
        for (int t = 0; t < fair.length; t++) {
            double winter = (1 + TimeOfYear.winter(t)) / 2;
            fair[t] = winter * value(FAIR_WINTER_FROM_DEG)
                    + (1 - winter) * value(FAIR_SUMMER_FROM_DEG)
                    + value(FAIR_FROM_SPREAD_DEG) * wander.next();
        }
        return fair;
    }

    private void warm() {
        Wander wander = new Wander(streams.world("climate temperature"), value(TEMPERATURE_MEMORY));
        for (int t = 0; t < temperature.length; t++) {
            temperature[t] = tenths(value(TEMPERATURE_C)
                    - value(TEMPERATURE_SEASON_C) * TimeOfYear.winter(t)
                    + value(TEMPERATURE_DAY_C) * TimeOfYear.afternoon(t)
                    + value(TEMPERATURE_SPREAD_C) * wander.next());
        }
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static double wholeDegrees(double degrees) {
        return Math.floorMod(Math.round(degrees), 360);
    }

    private double value(GeneratorParameters.Parameter parameter) {
        return parameters.value(parameter);
    }
}
