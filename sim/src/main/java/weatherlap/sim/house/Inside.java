package weatherlap.sim.house;

import java.util.OptionalDouble;
import weatherlap.sim.Check;

/**
 * What meets the frame inside and is cut back for a new one.
 *
 * @param finish of the interior return
 * @param layers of it, 1 to 3
 * @param setbackIn how far the new frame stands deeper into the room than the old, in., 0 to 6; empty: the scenario's
 */
public record Inside(InteriorReturn finish, int layers, OptionalDouble setbackIn) {
    public Inside {
        Check.within("return layers", layers, 1, 3);
    }
}
