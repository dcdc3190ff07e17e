package weatherlap.sim.work;

import java.util.List;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.labour.OpeningLabour;

/**
 * What one opening takes by itself.
 *
 * @param own labour at this opening alone
 * @param unit the new unit, USD
 * @param tipping the old one, USD
 * @param meanMinutes person-minutes: the value of {@link #labour()}, which is asked for often
 */
public record OpeningWork(Opening opening, OpeningLabour own, Amount unit, Amount tipping, double meanMinutes) {
    OpeningWork(Opening opening, OpeningLabour own, Amount unit, Amount tipping) {
        this(opening, own, unit, tipping, own.meanMinutes());
    }

    /** Labour at this opening alone, a step a line. */
    public List<LabourLine> lines() {
        return own.lines();
    }

    /** Mean person-minutes. */
    public Amount labour() {
        return Amount.sum(
                "opening " + opening.id(),
                "min",
                lines().stream().map(LabourLine::amount).toList());
    }
}
