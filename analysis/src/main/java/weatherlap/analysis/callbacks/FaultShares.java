package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.method.Method;

/**
 * The lap faults letting past another share of the water, a factor times that of the table, at most all: first each fault group its own,
 * until the model expects κ_g times the damage of the group; then, on top, each method its own, until it expects κ_m times the damage of
 * method m. So the groups share out what the methods add up to. How often a fault stands is left as it is: calls do not tell, a look does. A fault that several methods leave
 * belongs to the last of them, which does the least work; methods are set from the last to the first, so that each finds the faults it
 * shares as the others left them.
 *
 * <p>Where shares alone cannot reach the level, they stand at the end of what is tried, a hundredth or a hundred times those of the table.
 *
 * @param faults in table order
 * @param within factors of the shares, by group
 * @param factors on top of those, by method
 * @param reached damage expected within ten years over that by the tables as they were, by method
 */
public record FaultShares(
        List<LapFault> faults,
        Map<FaultGroup, Double> within,
        Map<Method, Double> factors,
        Map<Method, Double> reached) {
    private static final double MOST = Math.log(100);
    private static final double NEAR = 1e-3;
    private static final int LONGEST = 150;

    public FaultShares {
        faults = List.copyOf(faults);
        within = Map.copyOf(within);
        factors = Map.copyOf(factors);
        reached = Map.copyOf(reached);
    }

    /**
     * @param levels κ_m, above 0; a method without one keeps its faults
     * @param groups κ_g, above 0
     * @param records what they rest on, in words
     */
    static FaultShares of(
            JobMix mix,
            Assumptions assumptions,
            Map<Method, Double> levels,
            Map<FaultGroup, Double> groups,
            String records) {
        Map<Method, Double> before = mix.damage(assumptions);
        Map<FaultGroup, Double> within = new EnumMap<>(FaultGroup.class);
        groups.forEach((group, level) -> within.put(group, factor(group, level, mix, assumptions)));
        Map<Method, Double> factors = new EnumMap<>(Method.class);
        Method[] methods = Method.values();
        for (int m = methods.length - 1; m >= 0; m--) {
            Method method = methods[m];
            if (levels.containsKey(method) && before.getOrDefault(method, 0.0) > 0) {
                double wanted = Math.log(levels.get(method) * before.get(method));
                factors.put(method, Math.exp(solved(x -> {
                    Map<Method, Double> tried = new EnumMap<>(factors.isEmpty() ? Map.of(method, 1.0) : factors);
                    tried.put(method, Math.exp(x));
                    return Math.log(mix.damage(changed(assumptions, within, tried, ""), method)) - wanted;
                })));
            }
        }
        Assumptions fitted = changed(assumptions, within, factors, records);
        Map<Method, Double> after = mix.damage(fitted);
        Map<Method, Double> reached = new EnumMap<>(Method.class);
        factors.keySet().forEach(method -> reached.put(method, after.get(method) / before.get(method)));
        return new FaultShares(fitted.faults(), within, factors, reached);
    }

    /** What brings the damage of a group, all methods alike, to its level. */
    private static double factor(FaultGroup group, double level, JobMix mix, Assumptions assumptions) {
        double before = mix.damage(assumptions, group);
        return before == 0 || level == 1
                ? 1
                : Math.exp(solved(x -> {
                    Map<FaultGroup, Double> tried = Map.of(group, Math.exp(x));
                    double after = mix.damage(changed(assumptions, tried, Map.of(), ""), group);
                    return Math.log(after / (level * before));
                }));
    }

    private static double solved(UnivariateFunction excess) {
        if (excess.value(MOST) <= 0) {
            return MOST;
        }
        return excess.value(-MOST) >= 0 ? -MOST : new BrentSolver(NEAR).solve(60, excess, -MOST, MOST, 0);
    }

    private static Assumptions changed(
            Assumptions assumptions, Map<FaultGroup, Double> within, Map<Method, Double> factors, String records) {
        return assumptions.withFaults(assumptions.faults().stream()
                .map(fault -> {
                    Double own = factors.get(owner(fault));
                    Double group = within.get(FaultGroup.of(fault));
                    return own == null && group == null
                            ? fault
                            : fault.withAdmitted(
                                    times(fault.admitted(), (own == null ? 1 : own) * (group == null ? 1 : group)),
                                    origin(fault.origin(), records));
                })
                .toList());
    }

    private static ThreePoint times(ThreePoint share, double factor) {
        return new ThreePoint(
                Math.min(1, factor * share.low()),
                Math.min(1, factor * share.likely()),
                Math.min(1, factor * share.high()));
    }

    /** The last of the methods that leave a fault. */
    private static Method owner(LapFault fault) {
        return Arrays.stream(Method.values())
                .filter(fault.method()::covers)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private static Origin origin(Origin before, String records) {
        if (records.isEmpty()) {
            return before;
        }
        String source = before.basis() == Basis.OWN_RECORDS
                ? before.source().substring(before.source().indexOf(';') + 1).strip()
                : before.source();
        String kept = source.substring(0, Math.min(LONGEST, source.length()));
        return new Origin(
                before.table(),
                before.row(),
                Basis.OWN_RECORDS,
                records + (kept.isEmpty() ? "" : "; " + (kept.startsWith("before: ") ? "" : "before: ") + kept));
    }
}
