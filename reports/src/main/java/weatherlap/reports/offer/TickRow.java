package weatherlap.reports.offer;

import java.util.List;
import weatherlap.sim.method.Method;

/**
 * Windows of one wall that are ticked together: one, or like ones where a wall has many.
 *
 * @param at their positions in the house
 * @param methods that may be ticked, those open at every one of them
 * @param glassFt2 by method: glass of all of them
 * @param leaks by method: how many of them are expected to leak
 */
public record TickRow(List<Integer> at, List<Method> methods, List<Double> glassFt2, List<Double> leaks) {
    public TickRow {
        at = List.copyOf(at);
        methods = List.copyOf(methods);
        glassFt2 = List.copyOf(glassFt2);
        leaks = List.copyOf(leaks);
    }
}
