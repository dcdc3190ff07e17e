package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ObjDoubleConsumer;
import java.util.function.Predicate;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/**
 * Rates that may be changed together, all times one factor: those of a whole table, the steps of one method alone, the faults that stand
 * in walls or that work brings.
 *
 * @param rows names of its factors
 * @param times multiplies each of its rates
 */
record RateGroup(String name, String meaning, List<String> rows, ObjDoubleConsumer<Draft> times) {
    private static final double MOST_TIMES = 100;

    RateGroup {
        rows = List.copyOf(rows);
    }

    static List<RateGroup> all(Assumptions assumptions) {
        List<RateGroup> groups = new ArrayList<>();
        groups.add(steps(assumptions, "all", "minutes of every step", step -> true));
        for (Method method : Method.values()) {
            MethodScope alone = MethodScope.of(method);
            groups.add(steps(
                    assumptions,
                    method.word(),
                    "minutes of the steps of " + method.inSentence() + " alone",
                    step -> step.method().equals(alone)));
        }
        groups.add(new RateGroup(
                "materials/all",
                "prices of all materials",
                assumptions.materials().stream()
                        .map(item -> "materials/" + item.id())
                        .toList(),
                (all, times) -> all.materials(
                        row -> true, row -> row.withPrice(row.price().times(times)))));
        groups.add(new RateGroup(
                "wages/all",
                "all wages",
                assumptions.wages().stream()
                        .map(wage -> "wages/" + wage.region() + "/" + wage.role())
                        .toList(),
                (all, times) -> all.wages(row -> true, row -> row.withUsdPerHour(row.usdPerHour() * times))));
        Arrays.stream(FaultKind.values()).forEach(kind -> groups.add(faults(assumptions, kind)));
        return groups.stream().filter(group -> !group.rows().isEmpty()).toList();
    }

    private static RateGroup steps(Assumptions assumptions, String name, String meaning, Predicate<LabourStep> which) {
        return new RateGroup(
                "labour-steps/" + name,
                meaning,
                assumptions.steps().stream()
                        .filter(which)
                        .map(step -> "labour-steps/" + step.id())
                        .toList(),
                (all, times) ->
                        all.steps(which, row -> row.withMinutes(row.minutes().times(times))));
    }

    private static RateGroup faults(Assumptions assumptions, FaultKind kind) {
        Predicate<LapFault> which = fault -> fault.kind() == kind;
        return new RateGroup(
                "lap-faults/" + kind.name().toLowerCase(Locale.ROOT),
                "shares of arriving water let past by faults that "
                        + switch (kind) {
                            case EXISTING -> "stand in walls";
                            case NEW -> "work brings";
                        },
                assumptions.faults().stream()
                        .filter(which)
                        .map(fault -> "lap-faults/" + fault.id())
                        .toList(),
                (all, times) -> all.faults(
                        which, row -> row.withAdmitted(atMostAll(row.admitted().times(times)))));
    }

    private static ThreePoint atMostAll(ThreePoint share) {
        return new ThreePoint(Math.min(1, share.low()), Math.min(1, share.likely()), Math.min(1, share.high()));
    }

    /** One number of which nothing but its value, 1 in the tables, is used. */
    Factor factor() {
        return new Factor(
                name,
                name.substring(0, name.indexOf('/')),
                meaning + ", times the table's",
                "",
                ThreePoint.exactly(1),
                0,
                MOST_TIMES,
                times);
    }
}
