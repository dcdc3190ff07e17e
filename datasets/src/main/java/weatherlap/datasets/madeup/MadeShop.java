package weatherlap.datasets.madeup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.PertQuantile;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/**
 * A made-up shop whose rates are known.
 *
 * @param minutes true person-minutes of each step for one unit of its driver, by step id in table order
 */
public record MadeShop(Map<String, Double> minutes) {
    public MadeShop {
        minutes = Collections.unmodifiableMap(new LinkedHashMap<>(minutes));
    }

    /**
     * Draws a shop: each step from its range, all of them times one pace of the shop, lognormal with mean 1.
     *
     * @param paceSpread coefficient of variation of the pace from shop to shop
     */
    public static MadeShop drawn(Assumptions assumptions, double paceSpread, long seed) {
        Streams streams = new Streams(seed);
        double pace = Normal.factors(paceSpread, uniform(streams.world("shop pace")))[0];
        Map<String, Double> minutes = new LinkedHashMap<>();
        for (LabourStep step : assumptions.steps()) {
            double[] drawn = PertQuantile.draws(step.minutes(), uniform(streams.world("shop step " + step.id())));
            minutes.put(step.id(), pace * drawn[0]);
        }
        return new MadeShop(minutes);
    }

    /** {@code true-rates.csv}: step_id, minutes. */
    public String text() {
        return CsvText.line("step_id", "minutes")
                + minutes.entrySet().stream()
                        .map(e -> CsvText.line(e.getKey(), CsvText.cell(e.getValue())))
                        .collect(Collectors.joining());
    }

    static double[] uniform(UniformRandomProvider stream) {
        return Sampling.PLAIN.uniforms(1, stream);
    }
}
