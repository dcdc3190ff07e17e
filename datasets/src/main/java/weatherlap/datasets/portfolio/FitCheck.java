package weatherlap.datasets.portfolio;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.OrderSize;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Readings;
import weatherlap.sim.method.Method;

/** Whether a portfolio and the assumptions go together: a region has wages, every unit fits into its opening and shows glass. */
final class FitCheck {
    /** Windows whose fit is kept: most houses have sizes of others. */
    private static final int KEPT = 1024;

    private final Assumptions assumptions;
    private final Set<String> regions = new HashSet<>();
    private final Map<Window, Fit> known = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Window, Fit> eldest) {
            return size() > KEPT;
        }
    };

    /** All that a fit hangs on. */
    private record Window(Opening.Kind kind, Optional<Readings> readings, List<Method> open) {
        @Override
        public boolean equals(Object other) { // as of the kind
            return other instanceof Window window
                    && kind.equals(window.kind)
                    && readings.equals(window.readings)
                    && open.equals(window.open);
        }

        @Override
        public int hashCode() {
            return 31 * kind.hashCode() + readings.hashCode();
        }
    }

    /**
     * One window.
     *
     * @param showsGlass whether the old unit does
     * @param without the methods open to the house that have no unit for it
     */
    private record Fit(boolean showsGlass, List<Method> without) {}

    FitCheck(Assumptions assumptions) {
        this.assumptions = assumptions;
        assumptions.wages().stream().map(Wage::region).forEach(regions::add);
    }

    /** Whether nothing is wrong with a house; a method without a unit stops nothing. */
    boolean fits(House house) {
        List<Method> open = Method.openTo(house.cladding());
        return house.region().map(regions::contains).orElse(true)
                && house.openings()
                        .map(opening -> fit(opening, open))
                        .allMatch(fit -> fit.showsGlass() && fit.without().size() < open.size());
    }

    void checkRegion(Row house, Problems problems) {
        String region = house.text("region");
        if (!region.isEmpty() && !regions.contains(region)) {
            String known = String.join(", ", new TreeSet<>(regions));
            house.error(
                    problems,
                    "region",
                    Quoted.of(region) + " is not a region of wages.csv (" + known + ")"
                            + Nearest.hint(region, regions));
        }
    }

    /** @param open the methods that the house is open to; of others nothing is said */
    void checkUnits(Row row, Opening opening, List<Method> open, Problems problems) {
        Fit fit = fit(opening, open);
        if (!fit.showsGlass()) {
            row.error(
                    problems,
                    "frame_width_in",
                    "an old window of " + size(opening) + " would show no glass; check its size");
            return;
        }
        if (fit.without().size() == open.size()) {
            row.error(
                    problems,
                    "frame_width_in",
                    "no new window of any kind fits " + size(opening) + " and still shows glass");
            return;
        }
        fit.without()
                .forEach(method -> row.warning(
                        problems,
                        "frame_width_in",
                        "no unit for " + method.inSentence() + " fits " + size(opening)
                                + " and still shows glass; this window cannot be done that way"));
    }

    private Fit fit(Opening opening, List<Method> open) {
        return known.computeIfAbsent(
                new Window(opening.kind(), opening.readings(), open),
                one -> new Fit(
                        Glass.existing(opening, assumptions).glassIn2() > 0,
                        Each.where(open, method -> !hasUnit(opening, method))));
    }

    /** One method without a unit is closed at the opening; it stops nothing. */
    private boolean hasUnit(Opening opening, Method method) {
        OrderSize order = OrderSize.of(opening, method, assumptions);
        return order.fits() && Glass.replaced(opening, order, assumptions).glassIn2() > 0;
    }

    private static String size(Opening opening) {
        return CsvText.cell(opening.frame().widthIn()) + " x "
                + CsvText.cell(opening.frame().heightIn()) + " inches"
                + (opening.units() > 1 ? " with " + opening.units() + " units" : "");
    }
}
