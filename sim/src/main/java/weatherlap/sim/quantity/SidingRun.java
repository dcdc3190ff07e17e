package weatherlap.sim.quantity;

import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.Each;

/**
 * Openings of a wall that are opened and closed together, because one panel that comes down spans two of them. Runs of a wall share no
 * panel.
 *
 * @param openings positions in the wall's order, the leftmost first; 1 or more
 * @param panels siding panels or boards that come down and go back, a count
 */
public record SidingRun(List<Integer> openings, double panels) {
    public SidingRun {
        Check.notNegative("panels of a run", panels);
        Check.within("openings of a run", openings.size(), 1, Integer.MAX_VALUE);
        openings = List.copyOf(openings);
    }

    /** Openings that no siding ties together: each by itself, in the wall's order. */
    public static List<SidingRun> apart(int openings) {
        return Each.upTo(openings, opening -> new SidingRun(List.of(opening), 0));
    }
}
