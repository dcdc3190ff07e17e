package weatherlap.sim.laps;

import java.util.Arrays;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Sighting;

/** All that the notes on an opening can say of one fault, numbered: the readings of its lap, each without a stain and with one. */
final class Sights {
    private static final Lap[] READINGS = Lap.values();

    /** How many there are. */
    static final int COUNT = 2 * READINGS.length;

    private final Joint joint;
    private final Likelihood[] likelihoods = new Likelihood[COUNT];
    /** Whether any says something. */
    private final boolean tells;
    /** By number: that of the first sight that says the same. */
    private final int[] same = new int[COUNT];

    Sights(LapFault fault, double reliability) {
        joint = fault.seenAs().map(LapFault.SeenAs::joint).orElse(Joint.FIELD);
        Arrays.setAll(likelihoods, sight -> Likelihood.of(fault, READINGS[sight / 2], sight % 2 == 1, reliability));
        tells = !Arrays.stream(likelihoods).allMatch(Likelihood::saysNothing);
        Arrays.setAll(same, sight -> Arrays.asList(likelihoods).indexOf(likelihoods[sight]));
    }

    /** Number of what is noted at an opening; the same where it says the same. */
    int at(Opening opening) {
        if (!tells) {
            return 0;
        }
        boolean stained =
                opening.laps().stain() == Sighting.YES || opening.frame().rotten();
        return same[2 * reading(opening).ordinal() + (stained ? 1 : 0)];
    }

    private Lap reading(Opening opening) {
        return switch (joint) {
            case HEAD -> opening.laps().head();
            case JAMB -> opening.laps().jamb();
            case SILL -> opening.laps().sill();
            case CORNER, FIELD -> Lap.UNKNOWN;
        };
    }

    /** By its number. */
    Likelihood likelihood(int sight) {
        return likelihoods[sight];
    }

    /** Whether it says something of the fault. */
    boolean tells(int sight) {
        return !likelihoods[sight].saysNothing();
    }
}
