package weatherlap.analysis.callbacks;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouse;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.Simulator;

/**
 * What a shop works on, for questions that are asked many times over: the sixteen kinds of houses with the most windows.
 *
 * @param windows by the facts of a house
 */
record JobMix(Map<Map<Fact, String>, Double> windows) {
    private static final int KINDS = 16;
    private static final int YEARS = 10;
    private static final int DRAWS = 64;

    JobMix {
        windows = Map.copyOf(windows);
    }

    static JobMix of(List<FollowedJob> jobs) {
        Map<Map<Fact, String>, Double> all = new HashMap<>();
        jobs.forEach(
                job -> all.merge(JobHouse.facts(job.job()), (double) job.job().openings(), Double::sum));
        Map<Map<Fact, String>, Double> most = new LinkedHashMap<>();
        all.entrySet().stream()
                .sorted(Map.Entry.<Map<Fact, String>, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(entry -> entry.getKey().toString()))
                .limit(KINDS)
                .forEach(entry -> most.put(entry.getKey(), entry.getValue()));
        return new JobMix(most);
    }

    /** Leak damage expected at one window within ten years, by method, under given assumptions. */
    Map<Method, Double> damage(Assumptions assumptions, RainClimate climate) {
        Simulator simulator = ExpectedCalls.simulator(assumptions, climate, YEARS, DRAWS);
        double total = windows.values().stream().mapToDouble(w -> w).sum();
        Map<Method, Double> damage = new EnumMap<>(Method.class);
        windows.forEach((facts, count) -> ExpectedCalls.anOpening(simulator.simulate(JobHouse.of(facts)))
                .forEach((method, expected) -> damage.merge(method, count / total * expected, Double::sum)));
        return damage;
    }
}
