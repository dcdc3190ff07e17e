package weatherlap.sim.quantity;

import java.util.List;
import weatherlap.sim.house.House;

/**
 * Quantities of one house for one method.
 *
 * @param elevations in the order of the house's walls
 */
public record HouseQuantities(List<ElevationQuantities> elevations) {
    public HouseQuantities {
        elevations = List.copyOf(elevations);
    }

    /**
     * The same, once it is known to fit the house.
     *
     * @throws IllegalArgumentException when walls or openings are missing or too many
     */
    public HouseQuantities fitting(House house) {
        boolean fits = elevations.size() == house.elevations().size();
        for (int e = 0; fits && e < elevations.size(); e++) {
            fits = elevations.get(e).openings().size()
                    == house.elevations().get(e).openings().size();
        }
        if (!fits) {
            throw new IllegalArgumentException(
                    "The quantities must cover every wall and opening of " + house.id() + ".");
        }
        return this;
    }
}
