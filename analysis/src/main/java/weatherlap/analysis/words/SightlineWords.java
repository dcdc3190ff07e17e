package weatherlap.analysis.words;

import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.geometry.SightlineOrder;

/** What is said of {@code sightlines.csv}. */
public final class SightlineWords {
    private SightlineWords() {}

    /** One sentence for each operation of the new units that the rows let show more glass as an insert. */
    public static List<String> exceptions(Assumptions assumptions) {
        return SightlineOrder.exceptions(assumptions).stream()
                .map(operation -> "By sightlines.csv a " + InWords.of(assumptions.newUnitMaterial()) + " "
                        + InWords.of(operation) + " insert may show more glass than a full-flange unit.")
                .toList();
    }
}
