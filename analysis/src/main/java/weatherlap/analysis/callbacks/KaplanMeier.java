package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Survival without an event from times that may be cut off (Kaplan–Meier), with Greenwood's standard error:
 *
 * <pre>  S(t) = ∏_{t_i ≤ t} (1 − e_i/r_i),   se² = S² Σ e_i / (r_i (r_i − e_i))</pre>
 *
 * <p>e_i events at t_i of the r_i that are followed until then or longer. Who is lost at the time of an event was followed until then.
 *
 * @param steps by time; before the first all survive
 * @see "Kaplan, Meier 1958, Journal of the American Statistical Association 53(282); Greenwood 1926"
 */
public record KaplanMeier(List<Step> steps) {
    public KaplanMeier {
        steps = List.copyOf(steps);
    }

    /**
     * How long one was followed.
     *
     * @param time 0 or more
     * @param event whether it happened then; else no longer followed
     */
    public record Followed(double time, boolean event) {}

    /**
     * A time at which something happened.
     *
     * @param atRisk followed until then
     * @param survival from then on, 0 to 1
     * @param standardError of the survival; 0 where nobody survives
     */
    public record Step(double time, int atRisk, int events, double survival, double standardError) {}

    public static KaplanMeier of(List<Followed> all) {
        TreeMap<Double, int[]> byTime = new TreeMap<>();
        for (Followed one : all) {
            int[] counts = byTime.computeIfAbsent(one.time(), t -> new int[2]);
            counts[0]++;
            counts[1] += one.event() ? 1 : 0;
        }
        List<Step> steps = new ArrayList<>();
        int atRisk = all.size();
        double survival = 1;
        double greenwood = 0;
        for (var entry : byTime.entrySet()) {
            int events = entry.getValue()[1];
            if (events > 0) {
                survival *= 1 - (double) events / atRisk;
                greenwood += (double) events / ((double) atRisk * Math.max(1, atRisk - events));
                steps.add(new Step(entry.getKey(), atRisk, events, survival, survival * Math.sqrt(greenwood)));
            }
            atRisk -= entry.getValue()[0];
        }
        return new KaplanMeier(steps);
    }

    /** Share that has had no event by a time, 0 to 1. */
    public double at(double time) {
        double survival = 1;
        for (Step step : steps) {
            survival = step.time() <= time ? step.survival() : survival;
        }
        return survival;
    }
}
