package weatherlap.sim.house;

import java.util.stream.Stream;

/**
 * What somebody saw of the laps around an opening, and of water.
 *
 * @param head lap of the barrier over the frame
 * @param jamb beside it
 * @param sill under it
 * @param stain of water at the opening
 */
public record Laps(Lap head, Lap jamb, Lap sill, Sighting stain) {
    /** Nobody looked. */
    public static final Laps UNSEEN = new Laps(Lap.UNKNOWN, Lap.UNKNOWN, Lap.UNKNOWN, Sighting.UNKNOWN);

    /** Whether somebody saw a lap that only a barrier can have, right or wrong. */
    public boolean showBarrier() {
        return Stream.of(head, jamb, sill).anyMatch(lap -> lap == Lap.SHINGLED || lap == Lap.REVERSED);
    }
}
