package weatherlap.datasets.portfolio;

import java.util.HashSet;
import java.util.List;
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
import weatherlap.sim.method.Method;

/** Whether a portfolio and the assumptions go together: a region has wages, every unit fits into its opening and shows glass. */
final class FitCheck {
    private final Assumptions assumptions;
    private final Set<String> regions = new HashSet<>();

    FitCheck(Assumptions assumptions) {
        this.assumptions = assumptions;
        assumptions.wages().stream().map(Wage::region).forEach(regions::add);
    }

    /** Whether nothing is wrong with a house; a method without a unit stops nothing. */
    boolean fits(House house) {
        List<Method> open = Method.openTo(house.cladding());
        return house.region().map(regions::contains).orElse(true)
                && house.elevations().stream()
                        .flatMap(wall -> wall.openings().stream())
                        .allMatch(
                                opening -> Glass.existing(opening, assumptions).glassIn2() > 0
                                        && open.stream().anyMatch(method -> hasUnit(opening, method)));
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
        if (Glass.existing(opening, assumptions).glassIn2() <= 0) {
            row.error(
                    problems,
                    "frame_width_in",
                    "an old window of " + size(opening) + " would show no glass; check its size");
            return;
        }
        List<Method> without = Each.where(open, method -> !hasUnit(opening, method));
        if (without.size() == open.size()) {
            row.error(
                    problems,
                    "frame_width_in",
                    "no new window of any kind fits " + size(opening) + " and still shows glass");
            return;
        }
        without.forEach(method -> row.warning(
                problems,
                "frame_width_in",
                "no unit for " + method.inSentence() + " fits " + size(opening)
                        + " and still shows glass; this window cannot be done that way"));
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
