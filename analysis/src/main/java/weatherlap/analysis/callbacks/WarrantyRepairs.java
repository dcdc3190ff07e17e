package weatherlap.analysis.callbacks;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.WarrantyCovers;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;

/**
 * What a price must hold for leaks that the shop mends under its warranty of W years, where nothing but the level of the leaks is asked: a
 * window with n damages expected has one with chance 1 − e^(−n), which is the shop's as often as its share of them c/n, and as likely in
 * one year as in the next,
 *
 * <pre>  windows · (1 − e^(−n)) c/n · repair · (1 − (1 + r)^(−W)) / (W ln(1 + r))</pre>
 *
 * <p>where the simulator follows each opening and cause by year. At houses of the demo this was up to half as much again as the
 * simulator's; the price that holds it stays within 4 % of that of a run (held by a test).
 *
 * @param usdPerWindow mean over what a shop works on, by method
 */
public record WarrantyRepairs(Map<Method, Double> usdPerWindow) {
    public WarrantyRepairs {
        usdPerWindow = Map.copyOf(usdPerWindow);
    }

    /** Over the houses of some jobs. */
    public static WarrantyRepairs of(
            List<JobRecord> jobs, JobHouses houses, Assumptions assumptions, RainClimate climate) {
        List<FollowedJob> done = jobs.stream()
                .map(job -> new FollowedJob(job, LocalDate.EPOCH, LocalDate.EPOCH, List.of()))
                .toList();
        JobMix mix = JobMix.of(done, houses, assumptions, climate);
        int years = (int) Math.max(1, assumptions.scenario().value(Scalar.WARRANTY_YEARS));
        Map<Method, Double> usd = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            usd.put(method, usd(mix.within(assumptions, method, years), assumptions.scenario()));
        }
        return new WarrantyRepairs(usd);
    }

    public double usd(JobRecord job) {
        return job.openings() * usdPerWindow.get(job.method());
    }

    /** Of a job whose damage is known, at a level of it, USD. */
    public static double usd(ExpectedCalls.Damage damage, int openings, double level, Scenario scenario) {
        double years = scenario.value(Scalar.WARRANTY_YEARS);
        Map<FaultGroup, Double> window = new EnumMap<>(FaultGroup.class);
        damage.byGroup().forEach((group, exposure) -> window.put(group, level * exposure.happened(years) / openings));
        return openings * usd(window, scenario);
    }

    private static Set<FaultGroup> covered(Scenario scenario) {
        return switch (scenario.choice(Choice.WARRANTY_COVERS, WarrantyCovers.class)) {
            case NOTHING -> EnumSet.noneOf(FaultGroup.class);
            case OWN_WORK -> EnumSet.complementOf(EnumSet.of(FaultGroup.OLD_LAPS));
            case ANY_LEAK -> EnumSet.copyOf(Arrays.asList(FaultGroup.values()));
        };
    }

    /** @param damages expected at a window within the warranty, by group */
    private static double usd(Map<FaultGroup, Double> damages, Scenario scenario) {
        double all = damages.values().stream().mapToDouble(d -> d).sum();
        double own = covered(scenario).stream().mapToDouble(damages::get).sum();
        double years = scenario.value(Scalar.WARRANTY_YEARS);
        double rate = scenario.value(Scalar.DISCOUNT_RATE);
        double worth =
                rate == 0 || years == 0 ? 1 : -Math.expm1(-years * Math.log1p(rate)) / (years * Math.log1p(rate));
        return all == 0
                ? 0
                : -Math.expm1(-all) * own / all * scenario.repairUsd().mean() * worth;
    }
}
