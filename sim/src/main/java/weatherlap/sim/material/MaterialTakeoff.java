package weatherlap.sim.material;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * The items of one house, in table order: at an opening those of its method, at a wall and for the house those that one of the methods
 * used there asks for, each once. Items that are not needed are left out.
 */
public record MaterialTakeoff(Assumptions assumptions, House house, HouseQuantities quantities) {
    public MaterialTakeoff {
        quantities.fitting(house);
    }

    /** @param days working days, for items by the day */
    public List<MaterialLine> lines(int days) {
        List<Map<Fact, String>> facts = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            for (Opening opening : elevation.openings()) {
                facts.add(Facts.of(house, elevation, opening, assumptions.scenario()));
            }
        }
        List<MaterialLine> lines = new ArrayList<>();
        for (Material item : assumptions.materials()) {
            if (item.method().coversAny(quantities.methods())) {
                MaterialLine line = line(item, days, facts);
                if (line.packages() > 0) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    private MaterialLine line(Material item, int days, List<Map<Fact, String>> facts) {
        return switch (item.driver().level()) {
            case OPENING -> new MaterialLine(item, atOpenings(item, facts), none(quantities.elevations()), 0);
            case ELEVATION -> new MaterialLine(item, none(facts), atElevations(item), 0);
            case HOUSE -> new MaterialLine(item, none(facts), none(quantities.elevations()), atHouse(item, days));
        };
    }

    private static List<Double> none(List<?> counted) {
        return Collections.nCopies(counted.size(), 0.0);
    }

    private List<Double> atOpenings(Material item, List<Map<Fact, String>> facts) {
        List<Double> counts = new ArrayList<>(facts.size());
        for (ElevationQuantities wall : quantities.elevations()) {
            for (OpeningQuantities counted : wall.openings()) {
                boolean applies = item.method().covers(counted.method())
                        && item.appliesWhen().holds(facts.get(counts.size()));
                counts.add(applies ? counted.of(item.driver()) : 0);
            }
        }
        return counts;
    }

    private List<Double> atElevations(Material item) {
        List<Double> counts = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            ElevationQuantities counted = quantities.elevations().get(counts.size());
            boolean applies = item.method().coversAny(counted.methods())
                    && item.appliesWhen().holds(Facts.of(house, elevation, assumptions.scenario()));
            counts.add(
                    applies ? counted.shared(item.driver(), elevation.sidingCondition(), assumptions.scenario()) : 0);
        }
        return counts;
    }

    private double atHouse(Material item, int days) {
        boolean applies = item.appliesWhen().holds(Facts.of(house, assumptions.scenario()));
        return applies ? (item.driver() == Driver.DAY ? days : 1) : 0;
    }
}
