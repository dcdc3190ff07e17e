package weatherlap.analysis.backtest;

import java.util.ArrayList;
import java.util.List;

/**
 * How often what came lay at or below what had been given each chance: the distribution of the probability integral. On the diagonal the
 * forecasts keep their word. A whole number that came lies evenly between the chances given to less and to no more than it.
 *
 * @param seen share of the jobs at each of the chances 0, 0.05, …, 1
 * @see "Czado, Gneiting, Held 2009, Biometrics 65(4) (the probability integral of counts without chance); from memory"
 */
public record CalibrationCurve(JobAmount amount, Seer seer, List<Double> seen) {
    /** Steps from 0 to 1. */
    public static final int STEPS = 20;

    public CalibrationCurve {
        seen = List.copyOf(seen);
    }

    static CalibrationCurve of(List<Trial> trials, Seer seer) {
        List<Double> seen = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double chance = step / (double) STEPS;
            seen.add(trials.stream()
                    .mapToDouble(trial -> share(trial.by(seer), trial.came(), chance))
                    .average()
                    .orElseThrow());
        }
        return new CalibrationCurve(trials.get(0).amount(), seer, seen);
    }

    private static double share(Forecast forecast, double came, double chance) {
        double low = forecast.below(came);
        double high = forecast.upTo(came);
        if (high <= low) {
            return chance >= low ? 1 : 0;
        }
        return Math.max(0, Math.min(1, (chance - low) / (high - low)));
    }
}
