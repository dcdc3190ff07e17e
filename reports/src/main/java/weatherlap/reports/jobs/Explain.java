package weatherlap.reports.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import weatherlap.reports.compare.ExplainText;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.run.Simulator;

/**
 * Prints one opening's numbers as trees, made by the code that {@code compare} runs.
 *
 * @param opening HOUSE/ELEVATION/OPENING
 * @param depth levels of each tree to print, 1 or more
 */
public record Explain(InputPaths paths, String opening, List<Method> methods, int depth) {
    /** @throws BadInput with every problem of the tables, or for an opening that is not in them */
    public void run(Messages messages) {
        Inputs inputs = Inputs.read(paths);
        Simulator simulator = inputs.simulator();
        for (House house : inputs.portfolio().houses()) {
            int index = keys(house).indexOf(opening);
            if (index >= 0) {
                for (Method method : methods) {
                    messages.result(opening + ", " + method.name().toLowerCase(Locale.ROOT));
                    for (Amount amount : simulator.explain(house, index, method).all()) {
                        ExplainText.print(amount, depth, messages::result);
                    }
                }
                return;
            }
        }
        throw new BadInput(List.of(unknown(inputs)));
    }

    private static List<String> keys(House house) {
        List<String> keys = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            for (Opening opening : elevation.openings()) {
                keys.add(house.id() + "/" + elevation.id() + "/" + opening.id());
            }
        }
        return keys;
    }

    private String unknown(Inputs inputs) {
        List<String> near = inputs.portfolio().houses().stream()
                .filter(house -> opening.startsWith(house.id() + "/"))
                .flatMap(house -> keys(house).stream())
                .toList();
        String known = near.isEmpty()
                ? "; houses are "
                        + inputs.portfolio().houses().stream()
                                .limit(5)
                                .map(House::id)
                                .toList() + " and so on"
                : "; that house has " + near;
        return "--opening: there is no \"" + opening + "\" (HOUSE/ELEVATION/OPENING)" + known;
    }
}
