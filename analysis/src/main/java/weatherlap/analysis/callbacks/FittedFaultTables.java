package weatherlap.analysis.callbacks;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** The assumption tables with what the records moved: what the lap faults let past, what a repair costs and what other service takes. */
public final class FittedFaultTables {
    private FittedFaultTables() {}

    /** Tables whose rows say what they now rest on. */
    public static AssumptionTables of(AssumptionTables tables, CallbackFit fit) {
        AssumptionTables faults = tables.withFaults(fit.shares().faults());
        Map<Scalar, Setting> settings =
                new EnumMap<>(tables.assumptions().scenario().settings());
        CallbackFit.Repair repair = fit.repair();
        if (repair.calls() > 0) {
            String source = "own records: " + repair.calls() + " leak calls with a cost, mean "
                    + Math.round(repair.meanUsd()) + " USD, shrunk towards the table";
            set(settings, Scalar.REPAIR_COST_LOW_USD, repair.after().low(), source);
            set(settings, Scalar.REPAIR_COST_USD, repair.after().likely(), source);
            set(settings, Scalar.REPAIR_COST_HIGH_USD, repair.after().high(), source);
        }
        ServiceReserve reserve = fit.reserve();
        if (reserve.isFitted()) {
            String source = "own records: " + reserve.calls() + " other calls within the warranty on " + reserve.jobs()
                    + " jobs with a price, mean " + Math.round(reserve.meanUsd()) + " USD, shrunk towards the table";
            set(settings, Scalar.SERVICE_RESERVE, reserve.after(), source);
        }
        return repair.calls() == 0 && !reserve.isFitted()
                ? faults
                : faults.with(
                        new Scenario(settings, tables.assumptions().scenario().choices()));
    }

    private static void set(Map<Scalar, Setting> settings, Scalar scalar, double value, String source) {
        Setting before = settings.get(scalar);
        double factor = before.value() == 0 ? 1 : value / before.value();
        Origin origin = new Origin(before.origin().table(), before.origin().row(), Basis.OWN_RECORDS, source);
        settings.put(scalar, new Setting(scalar, value, before.range().map(r -> r.times(factor)), origin));
    }

    /** Whether the level of the leaks rests on the shop's own records already. */
    public static boolean isFitted(Assumptions assumptions) {
        return records(assumptions).isPresent();
    }

    /** What the level of the leaks rests on, where it rests on the shop's own records, in words. */
    public static Optional<String> records(Assumptions assumptions) {
        return assumptions.faults().stream()
                .filter(fault -> fault.origin().basis() == Basis.OWN_RECORDS)
                .map(fault -> fault.origin().source().replaceFirst(";.*", ""))
                .findFirst();
    }
}
