package weatherlap.sim.assumptions;

import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;

/**
 * What rows of labor and material may ask of a house, worked out once for all rows and methods.
 *
 * @param walls in table order
 * @param openings of each wall, in its order
 */
public record HouseFacts(Facts house, List<Facts> walls, List<List<Facts>> openings) {
    public static HouseFacts of(House house, Scenario scenario) {
        List<Elevation> elevations = house.elevations();
        Facts known = Facts.of(house, scenario);
        List<Facts> walls = Each.of(elevations, known::at);
        return new HouseFacts(
                known,
                walls,
                Each.upTo(
                        walls.size(),
                        w -> Each.of(elevations.get(w).openings(), opening -> walls.get(w)
                                .at(house, elevations.get(w), opening, scenario))));
    }
}
