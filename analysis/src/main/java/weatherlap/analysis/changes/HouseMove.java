package weatherlap.analysis.changes;

import java.util.Comparator;
import java.util.OptionalDouble;
import weatherlap.analysis.columns.Layout;

/**
 * What became of a house between two runs.
 *
 * @param before what the earlier run said of it
 * @param after what the later one says
 */
public record HouseMove(String houseId, String label, Side before, Side after) {
    /** {@code moves.csv}. */
    public static final Layout<HouseMove> LAYOUT = Layout.<HouseMove>of(
                    "moves.csv", "Moves", "One house that both runs hold, that which moved most first.")
            .house(HouseMove::houseId)
            .optionalText("label", "label", "what the owner calls it", HouseMove::label)
            .text("plan_before", "plan before", "methods of the family's plan", move -> move.before.plan())
            .text("plan_after", "plan after", "the same, after", move -> move.after.plan())
            .optionalNumber(
                    "price_before_usd",
                    "price before",
                    "USD",
                    2,
                    "what the plan costs to buy",
                    move -> move.before.priceUsd())
            .optionalNumber(
                    "price_after_usd", "price after", "USD", 2, "the same, after", move -> move.after.priceUsd())
            .optionalNumber(
                    "cost_before_usd",
                    "cost before",
                    "USD",
                    2,
                    "price, leak damage and glass lost of the plan, mean of the runs; empty where a run does not say",
                    move -> move.before.costUsd())
            .optionalNumber("cost_after_usd", "cost after", "USD", 2, "the same, after", move -> move.after.costUsd())
            .build();

    /** A changed plan first, then the largest change of cost, then the key. */
    public static final Comparator<HouseMove> LARGEST_FIRST = Comparator.comparing(HouseMove::keepsPlan)
            .thenComparing(Comparator.comparingDouble(HouseMove::size).reversed())
            .thenComparing(HouseMove::houseId);

    /**
     * A house in one run.
     *
     * @param plan methods of the family's plan, in words
     * @param priceUsd of the plan; empty where the run does not say
     * @param costUsd of the plan over the years looked at, likewise
     */
    public record Side(String plan, OptionalDouble priceUsd, OptionalDouble costUsd) {}

    public boolean keepsPlan() {
        return before.plan.equals(after.plan);
    }

    /** Change of cost, USD; 0 where a run does not say. */
    public double costChangeUsd() {
        return before.costUsd.isPresent() && after.costUsd.isPresent()
                ? after.costUsd.getAsDouble() - before.costUsd.getAsDouble()
                : 0;
    }

    private double size() {
        return Math.abs(costChangeUsd());
    }
}
