package weatherlap.sim.work;

import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.labour.OpeningLabour;
import weatherlap.sim.material.Disposal;
import weatherlap.sim.material.NewUnit;
import weatherlap.sim.method.Method;

/**
 * What one opening takes by itself.
 *
 * @param method by which it is done
 * @param own labour at this opening alone
 * @param unitUsd the new unit: the value of {@link #unit()}
 * @param tippingUsd the old one: the value of {@link #tipping()}
 * @param meanMinutes person-minutes: the value of {@link #labour()}, which is asked for often
 */
public record OpeningWork(
        Assumptions assumptions,
        Opening opening,
        Method method,
        OpeningLabour own,
        double unitUsd,
        double tippingUsd,
        double meanMinutes) {
    OpeningWork(Assumptions assumptions, Opening opening, Method method, OpeningLabour own) {
        this(
                assumptions,
                opening,
                method,
                own,
                NewUnit.usd(assumptions, method, opening),
                Disposal.usd(assumptions.scenario(), opening),
                own.meanMinutes());
    }

    /** The new unit, USD. */
    public Amount unit() {
        return NewUnit.cost(assumptions, method, opening);
    }

    /** The old one, USD. */
    public Amount tipping() {
        return Disposal.cost(assumptions.scenario(), opening);
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
