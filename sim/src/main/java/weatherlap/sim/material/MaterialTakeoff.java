package weatherlap.sim.material;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * The items of one house, in table order: at an opening those of its method, at a wall and for the house those that one of the methods
 * used there asks for, each once. Items that are not needed are left out.
 */
public record MaterialTakeoff(Assumptions assumptions, House house, HouseFacts facts, HouseQuantities quantities) {
    public MaterialTakeoff {
        quantities.fitting(house);
    }

    /** @param days working days, for items by the day */
    public List<MaterialLine> lines(int days) {
        List<Double> noOpening = none(house.openingCount());
        List<Double> noWall = none(house.elevations().size());
        List<MaterialLine> lines = new ArrayList<>();
        for (Material item : assumptions.materials()) {
            if (item.method().coversAny(quantities.methods())) {
                MaterialLine line = line(item, days, noOpening, noWall);
                if (line.packages() > 0) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    private MaterialLine line(Material item, int days, List<Double> noOpening, List<Double> noWall) {
        return switch (item.driver().level()) {
            case OPENING -> new MaterialLine(item, atOpenings(item), noWall, 0);
            case ELEVATION -> new MaterialLine(item, noOpening, atElevations(item), 0);
            case HOUSE -> new MaterialLine(item, noOpening, noWall, atHouse(item, days));
        };
    }

    private static List<Double> none(int count) {
        return List.copyOf(Collections.nCopies(count, 0.0));
    }

    private List<Double> atOpenings(Material item) {
        List<Double> counts = new ArrayList<>();
        for (int wall = 0; wall < quantities.elevations().size(); wall++) {
            List<Map<Fact, String>> known = facts.openings().get(wall);
            List<OpeningQuantities> counted = quantities.elevations().get(wall).openings();
            for (int o = 0; o < counted.size(); o++) {
                boolean applies = item.method().covers(counted.get(o).method())
                        && item.appliesWhen().holds(known.get(o));
                counts.add(applies ? counted.get(o).of(item.driver()) : 0);
            }
        }
        return counts;
    }

    private List<Double> atElevations(Material item) {
        List<Double> counts = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            ElevationQuantities counted = quantities.elevations().get(counts.size());
            boolean applies = item.method().coversAny(counted.methods())
                    && item.appliesWhen().holds(facts.walls().get(counts.size()));
            counts.add(
                    applies ? counted.shared(item.driver(), elevation.sidingCondition(), assumptions.scenario()) : 0);
        }
        return counts;
    }

    private double atHouse(Material item, int days) {
        boolean applies = item.appliesWhen().holds(facts.house());
        return applies ? (item.driver() == Driver.DAY ? days : 1) : 0;
    }
}
