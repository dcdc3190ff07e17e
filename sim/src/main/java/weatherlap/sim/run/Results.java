package weatherlap.sim.run;

import java.util.List;

/** A portfolio under both methods, in table order. Draw d is the same world for every house, so draws may be summed over houses. */
public record Results(List<HouseResult> houses, int draws) {
    public Results {
        houses = List.copyOf(houses);
    }
}
