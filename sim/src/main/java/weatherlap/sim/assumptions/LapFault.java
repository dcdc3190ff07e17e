package weatherlap.sim.assumptions;

import java.util.Map;
import java.util.Optional;
import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/**
 * One thing that can be wrong where a window meets the wall.
 *
 * @param method the methods under which the fault can stand after the work: an existing fault that only an insert leaves has {@code insert}
 * @param appliesWhen the houses, openings and methods at which it can stand, such as where the old unit has a flange
 * @param priorByBarrier for an existing fault: probability that it stands at an opening, by barrier (housewrap, building paper, none),
 *     for a house of the reference decade; empty for a new one
 * @param oddsByEra multiplies the odds of the prior, by era built; empty for a new fault
 * @param priorByWorkmanship for a new fault: probability that the work brings it, by workmanship; empty for an existing one
 * @param firstLine what stands in front of it
 * @param admitted share of the arriving water that it lets past
 * @param seenAs what a look at the lap shows when the fault stands, such as {@code head_lap=reversed}; empty: a look does not show it
 * @param stainOdds multiplies the odds when a stain is seen (and divides by nothing when none is), 1: says nothing
 */
public record LapFault(
        String id,
        Joint joint,
        String tradeName,
        String whatHappens,
        MethodScope method,
        FaultKind kind,
        Condition appliesWhen,
        Map<Barrier, Double> priorByBarrier,
        Map<Era, Double> oddsByEra,
        Map<Workmanship, Double> priorByWorkmanship,
        FirstLine firstLine,
        ThreePoint admitted,
        Optional<SeenAs> seenAs,
        double stainOdds,
        Origin origin) {
    public LapFault {
        Check.text("fault id", id);
        priorByBarrier.values().forEach(p -> Check.fraction("prior by barrier", p));
        priorByWorkmanship.values().forEach(p -> Check.fraction("prior by workmanship", p));
        oddsByEra.values().forEach(odds -> Check.positive("odds by era", odds));
        Check.fraction("low admitted fraction", admitted.low());
        Check.fraction("high admitted fraction", admitted.high());
        Check.positive("stain odds", stainOdds);
        priorByBarrier = Map.copyOf(priorByBarrier);
        oddsByEra = Map.copyOf(oddsByEra);
        priorByWorkmanship = Map.copyOf(priorByWorkmanship);
    }

    /** Whether it can stand at an opening after the work of a method. */
    public boolean canStand(House house, Opening opening, Method after, Scenario scenario) {
        return standsAfter(MethodScope.of(after), Facts.of(house, opening, after, scenario)) != 0;
    }

    /** Those of some methods after whose work it can stand, as a mask, from the facts of the opening, alike by all of them. */
    public int standsAfter(MethodScope some, Facts facts) {
        int own = method.mask() & some.mask();
        return own != 0 && appliesWhen.holds(facts) ? own : 0;
    }

    /** The same letting another share past. */
    public LapFault withAdmitted(ThreePoint changed) {
        return withAdmitted(changed, origin);
    }

    /** The same letting another share past, which rests on something else. */
    public LapFault withAdmitted(ThreePoint changed, Origin restsOn) {
        return new LapFault(
                id,
                joint,
                tradeName,
                whatHappens,
                method,
                kind,
                appliesWhen,
                priorByBarrier,
                oddsByEra,
                priorByWorkmanship,
                firstLine,
                changed,
                seenAs,
                stainOdds,
                restsOn);
    }

    /** The reading of a lap that shows a fault. */
    public record SeenAs(Joint joint, weatherlap.sim.house.Lap lap) {}
}
