package weatherlap.analysis.choice;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.sim.house.House;

/** A decision seen over two facts at once, and its efficient houses. */
public final class DecisionMaps {
    private static final double OVERHANG_STEP_IN = 6;

    private DecisionMaps() {}

    /**
     * Storeys along a row; from row to row the shortest overhang over a window, in steps of half a foot. Each house is wholly done by
     * either method, without limits, as in the list of houses.
     */
    public static PortfolioMap storeysAndOverhang(Decision decision) {
        return PortfolioMap.of(
                words(decision, house -> String.valueOf(house.storeys())),
                List.of("1", "2", "3", "4"),
                words(decision, DecisionMaps::overhang),
                Stream.iterate(0, step -> step + 1)
                        .limit(100)
                        .map(DecisionMaps::overhang)
                        .toList(),
                decision.choices().stream()
                        .mapToDouble(choice -> choice.result()
                                        .first()
                                        .horizonCostUsd()
                                        .mean()
                                - choice.result().second().horizonCostUsd().mean())
                        .toArray());
    }

    /** Houses, by position, where the full flange's extra price buys safety at terms that no other house betters in both. */
    public static List<Integer> efficient(Decision decision) {
        return EfficientSet.of(decision.choices().stream()
                .map(HouseChoice::result)
                .map(house -> new EfficientSet.Choice(
                        house.house().id(),
                        house.first().priceUsd() - house.second().priceUsd(),
                        house.first().leakProbability() - house.second().leakProbability()))
                .toList());
    }

    private static String overhang(House house) {
        return overhang((int) Math.floor(HouseFacts.shortestOverhangIn(house) / OVERHANG_STEP_IN));
    }

    private static String overhang(int step) {
        return String.format(Locale.ROOT, "%.0f to under %.0f", step * OVERHANG_STEP_IN, (step + 1) * OVERHANG_STEP_IN);
    }

    private static List<String> words(Decision decision, Function<House, String> word) {
        return decision.choices().stream()
                .map(choice -> word.apply(choice.result().house()))
                .toList();
    }
}
