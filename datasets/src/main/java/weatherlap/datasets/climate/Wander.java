package weatherlap.datasets.climate;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** A standard normal number that changes little from hour to hour: x' = m x + √(1 − m²) ε. */
final class Wander {
    private final double memory;
    private final ZigguratSampler gaussian;
    private double value;

    Wander(UniformRandomProvider rng, double memory) {
        this.memory = memory;
        gaussian = ZigguratSampler.NormalizedGaussian.of(rng);
        value = gaussian.sample();
    }

    double next() {
        value = memory * value + Math.sqrt(1 - memory * memory) * gaussian.sample();
        return value;
    }
}
