package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.method.MethodScope;

/**
 * One step a crew would name.
 *
 * @param minutes person-minutes for one unit of the driver, under ordinary conditions
 * @param coldSensitive slower in the cold (tape, sealant, siding)
 * @param heightSensitive slower off a ladder or staging
 * @param people how many the step takes at once, 1 or 2: a crew of one must bring help for 2
 */
public record LabourStep(
        String id,
        MethodScope method,
        String tradeName,
        Driver driver,
        ThreePoint minutes,
        Condition appliesWhen,
        boolean coldSensitive,
        boolean heightSensitive,
        int people,
        Origin origin) {
    public LabourStep {
        Check.text("step id", id);
        Check.notNegative("low minutes", minutes.low());
        Check.within("people", people, 1, 4);
    }

    /** The same at another time. */
    public LabourStep withMinutes(ThreePoint changed) {
        return new LabourStep(
                id, method, tradeName, driver, changed, appliesWhen, coldSensitive, heightSensitive, people, origin);
    }
}
