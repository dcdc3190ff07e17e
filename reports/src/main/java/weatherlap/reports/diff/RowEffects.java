package weatherlap.reports.diff;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weatherlap.analysis.changes.Exchange;
import weatherlap.analysis.changes.Parts;
import weatherlap.analysis.changes.Shapley;
import weatherlap.analysis.drivers.SimulatedPortfolio;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.weather.ClimateMemo;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;

/**
 * Works out what each changed row does, by simulating the houses anew.
 *
 * @param paths what both runs read beside their assumptions
 * @param houses to simulate, at most
 */
record RowEffects(InputPaths paths, int houses) {
    /** House simulations in all; so with eight changes, 256 sets of rows, 24 houses are simulated. */
    private static final int MOST_SIMULATED = 24 << Shapley.MOST;

    /** Why the rows of two runs cannot be exchanged; empty: they can. */
    static Optional<String> cannot(EarlierReport was, EarlierReport is) {
        for (EarlierReport report : List.of(was, is)) {
            if (report.assumptions().value().isEmpty()) {
                int problems = report.assumptions().errors().size();
                return Optional.of("this version does not read the assumptions of " + report.folder()
                        + ", written by version " + report.run().version() + " ("
                        + Numbers.count(problems, "problem", "problems") + ", the first: "
                        + report.assumptions().errors().get(0) + ")");
            }
        }
        Map<String, String> then = houseInputs(was.run().inputs());
        if (!then.equals(houseInputs(is.run().inputs()))) {
            return Optional.of("the two reports did not read the same houses and weather");
        }
        Exchange exchange = exchange(was, is);
        return exchange.differing().isEmpty() ? Optional.of("no row differs") : Optional.empty();
    }

    /** @throws BadInput if the houses or the weather are not those that the runs read */
    Parts of(EarlierReport was, EarlierReport is, Messages messages) throws IOException {
        Inputs inputs = Inputs.read(paths);
        List<String> differing = RunFile.differing(
                houseInputs(inputs.checksums()), houseInputs(was.run().inputs()));
        if (!differing.isEmpty()) {
            throw new BadInput(
                    differing.stream()
                            .map(name -> name + ": is not what the two runs read")
                            .toList(),
                    "after the two reports, name the folder of the houses, their weather with --climate and their site"
                            + " with --site");
        }
        Exchange exchange = exchange(was, is);
        int sets = 1 << Math.min(Parts.groups(exchange.differing()).size(), Shapley.MOST);
        Assumptions base = exchange.before();
        SimulatedPortfolio portfolio = new SimulatedPortfolio(
                SimulatedPortfolio.sample(inputs.portfolio().houses(), Math.min(houses, MOST_SIMULATED / sets)),
                new ClimateMemo(inputs.climate()),
                base.scenario().whole(Scalar.DRAWS),
                (long) base.scenario().value(Scalar.SEED));
        try (Messages.Progress progress = messages.progress("sets of rows", sets)) {
            return Parts.of(exchange, assumptions -> {
                SimulatedPortfolio.Costs costs = portfolio.costs(assumptions);
                progress.step();
                return new Parts.Cost(costs.firstUsd(), costs.secondUsd());
            });
        }
    }

    private static Exchange exchange(EarlierReport was, EarlierReport is) {
        return new Exchange(
                was.assumptions().orElseThrow().assumptions(),
                is.assumptions().orElseThrow().assumptions());
    }

    private static Map<String, String> houseInputs(Map<String, String> inputs) {
        Map<String, String> kept = new TreeMap<>(inputs);
        kept.keySet().removeIf(name -> name.startsWith("assumptions/"));
        return kept;
    }
}
