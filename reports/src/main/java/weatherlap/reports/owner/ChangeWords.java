package weatherlap.reports.owner;

import java.util.List;
import java.util.OptionalDouble;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Method;

/** What would change the answer, each cause alone, in plain words. */
final class ChangeWords {
    private final OwnerFigures figures;

    ChangeWords(OwnerFigures figures) {
        this.figures = figures;
    }

    List<String> sentences() {
        TippingPoints turning = figures.turning();
        return List.of(
                at(
                        figures.evenRepairUsd(),
                        turning.damageGapUsd(),
                        "The cost of a leak repair",
                        usd -> "If a leak repair cost " + Numbers.usd(usd) + " instead of "
                                + Numbers.usd(figures.repairUsd())),
                at(
                        figures.evenGlassUsd(),
                        turning.glassGapUsd(),
                        "The value of glass",
                        usd -> "If a square foot of glass were worth $" + Numbers.plain(usd, 2) + " a year instead of $"
                                + Numbers.plain(figures.glassUsdPerFt2Year(), 2)));
    }

    /** @param gapUsd of that loss, first method less second */
    private String at(
            OptionalDouble value, double gapUsd, String cause, java.util.function.DoubleFunction<String> turns) {
        if (value.isEmpty()) {
            return cause + " alone would not change the answer, whatever it is.";
        }
        Method above = gapUsd < 0
                ? figures.answer().contrast().first()
                : figures.answer().contrast().second();
        return turns.apply(value.getAsDouble()) + ", both would cost the family the same. Above that, go with "
                + above.many() + ".";
    }
}
