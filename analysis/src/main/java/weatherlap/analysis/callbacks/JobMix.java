package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.LeakSimulator;

/**
 * What a shop works on, for questions that are asked many times over: the sixteen houses with the most windows.
 *
 * @param methods windows that were done by each, of all houses
 */
record JobMix(List<Kind> kinds, Map<Method, Double> methods) {
    private static final int KINDS = 16;
    private static final int YEARS = 10;
    private static final int DRAWS = 64;

    /**
     * @param rain on its openings
     * @param share of the windows of all kinds
     */
    record Kind(House house, List<OpeningExposure> rain, double share) {}

    JobMix {
        kinds = List.copyOf(kinds);
        methods = Map.copyOf(methods);
    }

    static JobMix of(List<FollowedJob> jobs, JobHouses houses, Assumptions assumptions, RainClimate climate) {
        Map<House, Double> windows = new HashMap<>();
        jobs.forEach(
                job -> windows.merge(houses.of(job.job()), (double) job.job().openings(), Double::sum));
        List<Map.Entry<House, Double>> most = windows.entrySet().stream()
                .sorted(Map.Entry.<House, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(entry -> entry.getKey().id())
                        .thenComparing(entry -> entry.getKey().toString()))
                .limit(KINDS)
                .toList();
        double total = most.stream().mapToDouble(Map.Entry::getValue).sum();
        Map<Method, Double> methods = new EnumMap<>(Method.class);
        jobs.forEach(job -> methods.merge(job.job().method(), (double) job.job().openings(), Double::sum));
        List<Kind> kinds = most.stream()
                .map(e -> new Kind(
                        e.getKey(), LeakSimulator.rain(e.getKey(), climate, assumptions), e.getValue() / total))
                .toList();
        return new JobMix(kinds, methods);
    }

    /** Leak damage expected at one window within ten years, by method, under assumptions that leave the rain as it was. */
    Map<Method, Double> damage(Assumptions assumptions) {
        HouseDamage model = new HouseDamage(assumptions, YEARS, DRAWS);
        Map<Method, Double> all = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            byGroup(model, method).values().stream().reduce(Double::sum).ifPresent(sum -> all.put(method, sum));
        }
        return all;
    }

    /** The same of one method. */
    double damage(Assumptions assumptions, Method method) {
        return sum(byGroup(new HouseDamage(assumptions, YEARS, DRAWS), method));
    }

    /** That of a fault group at windows of which as many were done by each method as the shop did by it. */
    double damage(Assumptions assumptions, FaultGroup group) {
        HouseDamage model = new HouseDamage(assumptions, YEARS, DRAWS);
        return methods.entrySet().stream()
                .mapToDouble(e -> e.getValue() * byGroup(model, e.getKey()).getOrDefault(group, 0.0))
                .sum();
    }

    /** That of each fault group within so many years; every group has one. */
    Map<FaultGroup, Double> within(Assumptions assumptions, Method method, int years) {
        Map<FaultGroup, Double> damage = new EnumMap<>(FaultGroup.class);
        Arrays.stream(FaultGroup.values()).forEach(group -> damage.put(group, 0.0));
        double open = kinds.stream()
                .filter(kind -> method.isOpenTo(kind.house().cladding()))
                .mapToDouble(Kind::share)
                .sum();
        byGroup(new HouseDamage(assumptions, years, DRAWS), method)
                .forEach((group, all) -> damage.merge(group, all / open, Double::sum));
        return damage;
    }

    private Map<FaultGroup, Double> byGroup(HouseDamage model, Method method) {
        Map<FaultGroup, Double> damage = new EnumMap<>(FaultGroup.class);
        kinds.stream().filter(kind -> method.isOpenTo(kind.house().cladding())).forEach(kind -> model.of(
                        kind.house(), method, kind.rain())
                .forEach((group, d) -> damage.merge(group, kind.share() * d, Double::sum)));
        return damage;
    }

    private static double sum(Map<FaultGroup, Double> groups) {
        return groups.values().stream().mapToDouble(d -> d).sum();
    }
}
