package weatherlap.sim.quantity;

import java.util.List;
import java.util.Set;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * Quantities of one house, each opening by its method.
 *
 * @param methods those by which its openings are done; of a house without openings those that are asked about
 * @param elevations in the order of the house's walls
 */
public record HouseQuantities(Set<Method> methods, List<ElevationQuantities> elevations) {
    public HouseQuantities {
        methods = Method.set(methods);
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
