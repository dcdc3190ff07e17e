package weatherlap.analysis.callbacks;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.method.Method;

/**
 * The level of the leaks as a shop's own records have it.
 *
 * @param jobs followed, in the order of the records
 * @param measured jobs whose house stands in a portfolio
 * @param methods those with jobs
 * @param levels the fit behind it, a group a method in the order of {@link Method}
 * @param groups levels of the fault groups
 * @param shared level of all methods, calls over expected
 * @param lagYears mean time from damage to call
 * @param prior how far the level could be off before the records
 * @param shares the lap faults that give these levels
 * @param repair what leak calls cost
 * @param reserve what other calls cost
 */
public record CallbackFit(
        List<FollowedJob> jobs,
        int measured,
        Map<Method, MethodLevel> methods,
        LevelFit levels,
        Map<FaultGroup, GroupLevel> groups,
        LevelFit.Level shared,
        LevelFit.Level lagYears,
        LevelFit.Prior prior,
        FaultShares shares,
        Repair repair,
        ServiceReserve reserve,
        List<SeenExpected> seen) {
    public CallbackFit {
        jobs = List.copyOf(jobs);
        EnumMap<Method, MethodLevel> ordered = new EnumMap<>(Method.class);
        ordered.putAll(methods);
        methods = Collections.unmodifiableMap(ordered);
        groups = Collections.unmodifiableMap(new EnumMap<>(groups));
        seen = List.copyOf(seen);
    }

    /**
     * One method.
     *
     * @param calls for leak damage, one a window
     * @param expected calls by the tables, reported by the end of the records
     * @param level calls over expected, shrunk towards 1
     * @param window damage that the tables expect at one window, mean over all windows
     * @param waiting share of the jobs without such a call, by years
     * @param exposures damage that the tables expect at each job
     */
    public record MethodLevel(
            Method method,
            int jobs,
            int openings,
            double openingYears,
            int calls,
            double expected,
            LevelFit.Level level,
            LaggedExposure window,
            KaplanMeier waiting,
            List<LaggedExposure> exposures) {
        public MethodLevel {
            exposures = List.copyOf(exposures);
        }

        /** Share of the jobs without a leak call after so many years, by the fitted level, had all been followed as long. */
        public double withoutCall(double years, double lagYears) {
            return exposures.stream()
                    .mapToDouble(job -> Math.exp(-level.mean() * job.reported(years, lagYears)))
                    .average()
                    .orElse(1);
        }

        /** Of a hundred such windows, how many have leak damage within ten years, at a level. */
        public double ofHundred(double atLevel) {
            return -100 * Math.expm1(-atLevel * window.happened(10));
        }
    }

    /**
     * One fault group.
     *
     * @param expected calls by the tables, reported by the end of the records
     * @param level calls over expected, pooled in part with the other groups
     * @param tells whether the records tell it from the others
     */
    public record GroupLevel(double expected, LevelFit.Level level, boolean tells) {}

    /**
     * What leak calls cost.
     *
     * @param calls with a cost
     * @param meanUsd of those, USD; 0 without any
     * @param before as the tables have a repair
     * @param after the same times a factor that the records move
     */
    public record Repair(int calls, double meanUsd, ThreePoint before, ThreePoint after) {}

    public int calls() {
        return methods.values().stream().mapToInt(MethodLevel::calls).sum();
    }

    public double openingYears() {
        return methods.values().stream().mapToDouble(MethodLevel::openingYears).sum();
    }
}
