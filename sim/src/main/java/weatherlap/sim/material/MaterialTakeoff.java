package weatherlap.sim.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
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
public record MaterialTakeoff(Assumptions assumptions, House house, HouseQuantities quantities) {
    public MaterialTakeoff {
        quantities.fitting(house);
    }

    /** @param days working days, for items by the day */
    public List<MaterialLine> lines(int days) {
        List<List<Map<Fact, String>>> facts = house.elevations().stream()
                .map(elevation -> elevation.openings().stream()
                        .map(opening -> Facts.of(house, elevation, opening, assumptions.scenario()))
                        .toList())
                .toList();
        return assumptions.materials().stream()
                .filter(item -> item.method().coversAny(quantities.methods()))
                .map(item -> line(item, days, facts))
                .filter(line -> line.packages() > 0)
                .toList();
    }

    private MaterialLine line(Material item, int days, List<List<Map<Fact, String>>> facts) {
        List<Double> openings = new ArrayList<>();
        List<Double> walls = new ArrayList<>();
        for (int e = 0; e < house.elevations().size(); e++) {
            Elevation elevation = house.elevations().get(e);
            ElevationQuantities counted = quantities.elevations().get(e);
            for (int o = 0; o < elevation.openings().size(); o++) {
                openings.add(
                        atOpening(item, facts.get(e).get(o), counted.openings().get(o)));
            }
            walls.add(atElevation(item, elevation, counted));
        }
        return new MaterialLine(item, openings, walls, atHouse(item, days));
    }

    private static double atOpening(Material item, Map<Fact, String> facts, OpeningQuantities counted) {
        boolean applies = item.driver().level() == Driver.Level.OPENING
                && item.method().covers(counted.method())
                && item.appliesWhen().holds(facts);
        return applies ? counted.of(item.driver()) : 0;
    }

    private double atElevation(Material item, Elevation elevation, ElevationQuantities counted) {
        boolean applies = item.driver().level() == Driver.Level.ELEVATION
                && item.method().coversAny(counted.methods())
                && item.appliesWhen().holds(Facts.of(house, elevation, assumptions.scenario()));
        return applies ? counted.shared(item.driver(), elevation.sidingCondition(), assumptions.scenario()) : 0;
    }

    private double atHouse(Material item, int days) {
        boolean applies = item.driver().level() == Driver.Level.HOUSE
                && item.appliesWhen().holds(Facts.of(house, assumptions.scenario()));
        return applies ? (item.driver() == Driver.DAY ? days : 1) : 0;
    }
}
