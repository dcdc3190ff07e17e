package weatherlap.reports.crew;

import java.util.List;
import weatherlap.analysis.words.Inches;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.method.Method;

/** Which screw when, looking at the reveal between. Common practice, no source; the unit's maker goes first. */
final class FastenerOrder {
    private FastenerOrder() {}

    static List<String> of(Method method, Scenario scenario) {
        return switch (method) {
            case FULL_FLANGE -> flanged(scenario);
            case FULL_FRAME -> toTheOpening();
            case INSERT -> throughTheJambs();
        };
    }

    private static List<String> toTheOpening() {
        return List.of(
                "Straps or screws at the corners, not tight. Sash in: look at the reveal, sill level, diagonals equal.",
                "The middles of both jambs: shim first, straight as a string; the reveal again.",
                "The middles of head and sill: the sill stays level, the head is not pulled up.",
                "Sash works and locks; then every other strap and hole the maker gives.");
    }

    private static List<String> throughTheJambs() {
        return List.of(
                "Top of both jambs, snug. Sash in: look at the reveal.",
                "Bottom of both jambs, snug. Sill level, diagonals equal, reveal even.",
                "Middles of both jambs: shim first, never pull the jamb to the old frame.",
                "Sash works and locks; then every other hole the maker gives.");
    }

    private static List<String> flanged(Scenario scenario) {
        String holes = "about " + Inches.text(scenario.value(Scalar.FASTENER_SPACING_IN)) + " apart, the first "
                + Inches.text(scenario.value(Scalar.FASTENER_EDGE_IN))
                + " from each corner; the count for each window is in its"
                + " wall's table";
        return List.of(
                "The corners, not tight. Sash in: look at the reveal, sill level, diagonals equal.",
                "The middles of both jambs: look at the reveal again, straight as a string.",
                "The middles of head and sill: the sill stays level, the head is not pulled up.",
                "Sash works and locks; then every other hole of the flange: " + holes + ".");
    }
}
