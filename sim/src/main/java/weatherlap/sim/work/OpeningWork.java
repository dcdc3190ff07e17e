package weatherlap.sim.work;

import java.util.List;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.labour.LabourLine;

/**
 * What one opening takes by itself.
 *
 * @param lines labour at this opening alone
 * @param unit the new unit, USD
 * @param tipping the old one, USD
 * @param meanMinutes person-minutes: the value of {@link #labour()}, which is asked for often
 */
public record OpeningWork(Opening opening, List<LabourLine> lines, Amount unit, Amount tipping, double meanMinutes) {
    public OpeningWork {
        lines = List.copyOf(lines);
    }

    OpeningWork(Opening opening, List<LabourLine> lines, Amount unit, Amount tipping) {
        this(opening, lines, unit, tipping, LabourLine.meanMinutes(lines));
    }

    /** Mean person-minutes. */
    public Amount labour() {
        return Amount.sum(
                "opening " + opening.id(),
                "min",
                lines.stream().map(LabourLine::amount).toList());
    }
}
