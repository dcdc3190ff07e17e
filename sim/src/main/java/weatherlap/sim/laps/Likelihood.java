package weatherlap.sim.laps;

import weatherlap.sim.Check;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.Lap;

/**
 * How likely what was seen at an opening is, if a fault stands there and if it does not. Only their ratio matters.
 *
 * <p>A look at a lap tells right with the reliability r: the reading that shows the fault counts r against 1 − r, a lap seen in order
 * 1 − r against r. A reading that shows another fault of the joint says nothing of this one, since both may stand, nor does an unknown
 * one: so a worse reading never makes any fault less likely. A stain, or a rotten frame, multiplies the odds by the row's {@code stain_odds} once. Two
 * faults that one reading could show are both raised by it: each is judged as if the other could not explain the sight. A clean wall is
 * not counted as evidence: leaks can stay hidden, so the model errs to the cautious side.
 */
public record Likelihood(double ifStanding, double ifNot) {
    /** Says nothing. */
    public static final Likelihood NONE = new Likelihood(1, 1);

    public Likelihood {
        Check.notNegative("likelihood", ifStanding);
        Check.notNegative("likelihood", ifNot);
        Check.positive("sum of the likelihoods", ifStanding + ifNot);
    }

    /**
     * What the measurer's notes on an opening say of an existing fault; nothing of a fault that new work may bring.
     *
     * @param seen of the lap at the joint of the fault
     * @param stained whether a stain is seen there, or rot
     */
    static Likelihood of(LapFault fault, Lap seen, boolean stained, double reliability) {
        if (fault.kind() == FaultKind.NEW) {
            return NONE;
        }
        Likelihood stain = stained ? new Likelihood(fault.stainOdds(), 1) : NONE;
        return fault.seenAs()
                .map(shown -> lap(seen, shown.lap(), reliability).and(stain))
                .orElse(stain);
    }

    private static Likelihood lap(Lap seen, Lap shown, double reliability) {
        return seen == shown ? look(true, reliability) : seen == Lap.SHINGLED ? look(false, reliability) : NONE;
    }

    /** A look that shows the fault, or shows that it is not there. */
    public static Likelihood look(boolean showsFault, double reliability) {
        Check.fraction("reliability of a look", reliability);
        return showsFault ? new Likelihood(reliability, 1 - reliability) : new Likelihood(1 - reliability, reliability);
    }

    /** Both sights. */
    public Likelihood and(Likelihood other) {
        return new Likelihood(ifStanding * other.ifStanding, ifNot * other.ifNot);
    }

    public boolean saysNothing() {
        return ifStanding == ifNot;
    }

    /** Probability after the sight, by Bayes' rule. */
    public double update(double probability) {
        double standing = probability * ifStanding;
        double sum = standing + (1 - probability) * ifNot;
        return sum == 0 ? probability : standing / sum;
    }
}
