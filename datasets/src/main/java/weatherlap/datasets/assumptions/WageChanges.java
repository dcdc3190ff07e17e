package weatherlap.datasets.assumptions;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Column;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** Changes of rows of {@code wages.csv}: {@code wage.REGION.ROLE} is the pay, {@code burden.REGION.ROLE} what comes on top. */
record WageChanges(List<Wage> wages) {
    private static final String PAY = "wage.";
    private static final String BURDEN = "burden.";

    /** Every name that can be changed. */
    Stream<String> names() {
        return wages.stream().flatMap(wage -> Stream.of(PAY + key(wage), BURDEN + key(wage)));
    }

    boolean knows(String name) {
        return names().anyMatch(name::equals);
    }

    /** What is wrong with a value for a name that is known; empty: nothing. */
    String fault(String name, String value) {
        return type(name.startsWith(PAY) ? "usd_per_hour" : "burden_fraction").fault(value);
    }

    private static CellType type(String column) {
        return AssumptionSchemas.WAGES.columns().stream()
                .filter(c -> c.name().equals(column))
                .map(Column::type)
                .findFirst()
                .orElseThrow();
    }

    /** The wages with one changed; a value set by hand no longer has the basis that the table gave it. */
    List<Wage> with(String name, double value) {
        return wages.stream().map(wage -> changed(wage, name, value)).toList();
    }

    private static Wage changed(Wage wage, String name, double value) {
        double pay = name.equals(PAY + key(wage)) ? value : wage.usdPerHour();
        double burden = name.equals(BURDEN + key(wage)) ? value : wage.burdenFraction();
        if (pay == wage.usdPerHour() && burden == wage.burdenFraction()) {
            return wage;
        }
        Origin before = wage.origin();
        Origin origin = new Origin(before.table(), before.row(), Basis.JUDGEMENT, "set for this run");
        return new Wage(wage.region(), wage.role(), pay, burden, origin);
    }

    private static String key(Wage wage) {
        return wage.region() + "." + wage.role();
    }
}
