package weatherlap.sim.material;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.House;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.method.MethodScope;
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
        OpeningQuantities[] counted = new OpeningQuantities[house.openingCount()];
        Facts[] known = new Facts[counted.length];
        int count = 0;
        for (int wall = 0; wall < quantities.elevations().size(); wall++) {
            List<OpeningQuantities> here = quantities.elevations().get(wall).openings();
            for (int o = 0; o < here.size(); o++) {
                counted[count] = here.get(o);
                known[count++] = facts.openings().get(wall).get(o);
            }
        }
        double[] noOpening = new double[counted.length];
        double[] noWall = new double[house.elevations().size()];
        MethodScope methods = MethodScope.of(quantities.methods());
        List<MaterialLine> lines = new ArrayList<>();
        for (Material item : assumptions.materials()) {
            if (item.method().coversAny(methods)) {
                MaterialLine line =
                        switch (item.driver().level()) {
                            case OPENING -> new MaterialLine(item, atOpenings(item, counted, known), noWall, 0);
                            case ELEVATION -> new MaterialLine(item, noOpening, atElevations(item, noWall.length), 0);
                            case HOUSE -> new MaterialLine(item, noOpening, noWall, atHouse(item, days));
                        };
                if (line.packages() > 0) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    private static double[] atOpenings(Material item, OpeningQuantities[] counted, Facts[] known) {
        double[] counts = new double[counted.length];
        for (int o = 0; o < counts.length; o++) {
            if (item.method().covers(counted[o].method()) && item.appliesWhen().holds(known[o])) {
                counts[o] = counted[o].of(item.driver());
            }
        }
        return counts;
    }

    private double[] atElevations(Material item, int walls) {
        double[] counts = new double[walls];
        for (int wall = 0; wall < walls; wall++) {
            ElevationQuantities counted = quantities.elevations().get(wall);
            if (item.appliesWhen().holds(facts.walls().get(wall))
                    && item.method().coversAny(counted.methods())) {
                SidingCondition siding = house.elevations().get(wall).sidingCondition();
                counts[wall] = counted.shared(item.driver(), siding, assumptions.scenario());
            }
        }
        return counts;
    }

    private double atHouse(Material item, int days) {
        boolean applies = item.appliesWhen().holds(facts.house());
        return applies ? (item.driver() == Driver.DAY ? days : 1) : 0;
    }
}
