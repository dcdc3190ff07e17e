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
 */
public record OpeningWork(Opening opening, List<LabourLine> lines, Amount unit, Amount tipping) {
    public OpeningWork {
        lines = List.copyOf(lines);
    }

    /** Mean person-minutes, the value of {@link #labour()}. */
    public double meanMinutes() {
        return LabourLine.meanMinutes(lines);
    }

    /** Mean person-minutes. */
    public Amount labour() {
        return Amount.sum(
                "opening " + opening.id(),
                "min",
                lines.stream().map(LabourLine::amount).toList());
    }
}
