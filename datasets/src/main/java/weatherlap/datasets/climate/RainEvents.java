package weatherlap.datasets.climate;

import static weatherlap.datasets.climate.GeneratorParameters.Parameter.*;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import weatherlap.sim.random.Streams;

/** Draws the storms and showers of an invented climate one after another. */
final class RainEvents {
    private static final double HOURS_PER_YEAR = 8766;

    private final GeneratorParameters parameters;
    private final UniformRandomProvider rng;
    private final ZigguratSampler gaussian;
    private final ZigguratSampler exponential;

    RainEvents(GeneratorParameters parameters, Streams streams) {
        this.parameters = parameters;
        rng = streams.world("climate events");
        gaussian = ZigguratSampler.NormalizedGaussian.of(rng);
        exponential = ZigguratSampler.Exponential.of(rng);
    }

    /** The events that end within so many hours. */
    List<RainEvent> draw(int hours) {
        List<RainEvent> events = new ArrayList<>();
        double time = dryHours(0);
        while (time < hours) {
            RainEvent event = draw((int) time, hours);
            events.add(event);
            int end = event.firstHour() + event.hours();
            time = end + dryHours(end);
        }
        return events;
    }

    private double dryHours(int hour) {
        double mean = HOURS_PER_YEAR / value(EVENTS_PER_YEAR) - value(STORM_HOURS);
        return 1 + Math.max(1, mean) / (1 + value(EVENT_SEASON) * TimeOfYear.winter(hour)) * exponential.sample();
    }

    private RainEvent draw(int firstHour, int hours) {
        double summer = (1 - TimeOfYear.winter(firstHour)) / 2;
        boolean shower = rng.nextDouble() < value(SHOWER_SHARE) * summer;
        double meanHours = value(shower ? SHOWER_HOURS : STORM_HOURS);
        int length = (int) Math.max(1, Math.round(gamma(value(STORM_HOURS_SHAPE), meanHours)));
        double rainMm = gamma(value(EVENT_RAIN_SHAPE), value(shower ? SHOWER_RAIN_MM : STORM_RAIN_MM));
        double off = gaussian.sample() * value(shower ? SHOWER_FROM_SPREAD_DEG : STORM_FROM_SPREAD_DEG);
        double gain = value(STORM_WIND_GAIN) * Math.exp(value(STORM_WIND_SPREAD) * gaussian.sample());
        return new RainEvent(
                firstHour,
                Math.min(length, hours - firstHour),
                rainMm,
                off + value(shower ? SHOWER_FROM_DEG : STORM_START_FROM_DEG),
                off + value(shower ? SHOWER_FROM_DEG : STORM_END_FROM_DEG),
                gain);
    }

    private double gamma(double shape, double mean) {
        return AhrensDieterMarsagliaTsangGammaSampler.of(rng, shape, mean / shape)
                .sample();
    }

    private double value(GeneratorParameters.Parameter parameter) {
        return parameters.value(parameter);
    }
}
