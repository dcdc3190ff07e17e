package weatherlap.sim.assumptions;

import java.util.List;
import java.util.Map;
import weatherlap.sim.Each;
import weatherlap.sim.house.House;

/**
 * What rows of labor and material may ask of a house, worked out once for all rows and methods.
 *
 * @param walls in table order
 * @param openings of each wall, in its order
 */
public record HouseFacts(
        Map<Fact, String> house, List<Map<Fact, String>> walls, List<List<Map<Fact, String>>> openings) {
    public static HouseFacts of(House house, Scenario scenario) {
        return new HouseFacts(
                Facts.of(house, scenario),
                Each.of(house.elevations(), wall -> Facts.of(house, wall, scenario)),
                Each.of(
                        house.elevations(),
                        wall -> Each.of(wall.openings(), opening -> Facts.of(house, wall, opening, scenario))));
    }
}
