package weatherlap.reports.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.reports.compare.ExplainText;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.inputs.LargePortfolio;
import weatherlap.reports.inputs.OneHouse;
import weatherlap.reports.inputs.TableNames;
import weatherlap.reports.output.Messages;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.Simulator;

/**
 * Prints one opening's numbers as trees, made by the code that {@code compare} runs.
 *
 * @param opening HOUSE/ELEVATION/OPENING
 * @param depth levels of each tree to print, 1 or more
 */
public record Explain(InputPaths paths, String opening, List<Method> methods, int depth) {
    /** Houses that a message names. */
    private static final int SHOWN = 5;

    /** @throws BadInput with every problem of the tables, or for an opening that is not in them */
    public void run(Messages messages) {
        Optional<Path> large = LargePortfolio.in(paths);
        Inputs inputs = large.isEmpty()
                ? Inputs.read(paths)
                : OneHouse.readAlone(paths, opening.replaceFirst("/.*", ""), messages);
        messages.warn(inputs.warnings());
        Simulator simulator = inputs.simulator();
        ExplainText text = new ExplainText(TableNames.sources(paths.portfolio(), paths.assumptions()));
        for (House house : inputs.portfolio().houses()) {
            int index = keys(house).indexOf(opening);
            if (index >= 0) {
                for (Method method : ClosedMethod.open(methods, house)) {
                    messages.result(opening + ", " + method.word());
                    for (Amount amount : simulator.explain(house, index, method).all()) {
                        text.print(amount, depth, messages::result);
                    }
                }
                return;
            }
        }
        throw new BadInput(List.of(unknown(inputs.portfolio().houses(), large)));
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

    /** @param large folder of a portfolio of which one house was read */
    private String unknown(List<House> houses, Optional<Path> large) {
        List<String> near = houses.stream()
                .filter(house -> opening.startsWith(house.id() + "/"))
                .flatMap(house -> keys(house).stream())
                .toList();
        String known = near.isEmpty()
                ? "; houses are " + large.map(Explain::firstIds).orElseGet(() -> firstIds(houses)) + " and so on"
                : "; that house has " + near;
        return "--opening: there is no \"" + opening + "\" (HOUSE/ELEVATION/OPENING)" + known;
    }

    private static List<String> firstIds(List<House> houses) {
        return houses.stream().limit(SHOWN).map(House::id).toList();
    }

    private static List<String> firstIds(Path portfolio) {
        List<String> ids = new ArrayList<>();
        PortfolioScan.forEachHouse(portfolio, id -> {
            ids.add(id);
            return ids.size() < SHOWN;
        });
        return ids;
    }
}
