package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * The steps of one house, at the openings and shared: at an opening those of its method, at a wall and for the house those that one of
 * the methods used there asks for, each once. Lines of quantity zero are left out; the others stand in the order of the table.
 *
 * @param methods used in the house
 */
public record LabourTakeoff(Assumptions assumptions, House house, Set<Method> methods, Pace pace) {
    public LabourTakeoff(Assumptions assumptions, House house, Set<Method> methods) {
        this(assumptions, house, methods, new Pace(assumptions.scenario(), house.openingCount(), house.leadSafe()));
    }

    /** Lines that belong to one opening alone. */
    public List<LabourLine> ofOpening(Elevation elevation, ElevationQuantities quantities, int opening) {
        Map<Fact, String> facts =
                Facts.of(house, elevation, elevation.openings().get(opening), assumptions.scenario());
        int storey = house.storeyOf(elevation, elevation.openings().get(opening));
        OpeningQuantities counted = quantities.openings().get(opening);
        return lines(
                Driver.Level.OPENING,
                Set.of(counted.method()),
                facts,
                step -> counted.of(step.driver()),
                step -> pace.atOpening(step, storey));
    }

    /** Lines that the openings of a wall share; none where it has no opening. */
    public List<LabourLine> ofElevation(Elevation elevation, ElevationQuantities quantities) {
        if (elevation.openings().isEmpty()) {
            return List.of();
        }
        List<Integer> storeys = elevation.openings().stream()
                .map(opening -> house.storeyOf(elevation, opening))
                .toList();
        return lines(
                Driver.Level.ELEVATION,
                quantities.methods(),
                Facts.of(house, elevation, assumptions.scenario()),
                step -> quantities.shared(step.driver(), elevation.sidingCondition(), assumptions.scenario()),
                step -> pace.atElevation(step, storeys));
    }

    /** Lines once a house. */
    public List<LabourLine> ofJob() {
        return ofHouse(Driver.JOB, 1);
    }

    /** Lines of each working day. */
    public List<LabourLine> ofDays(int days) {
        return ofHouse(Driver.DAY, days);
    }

    private List<LabourLine> ofHouse(Driver driver, int count) {
        return lines(
                Driver.Level.HOUSE,
                methods,
                Facts.of(house, assumptions.scenario()),
                step -> step.driver() == driver ? count : 0,
                pace::anywhere);
    }

    private List<LabourLine> lines(
            Driver.Level level,
            Set<Method> used,
            Map<Fact, String> facts,
            ToDoubleFunction<LabourStep> quantity,
            Function<LabourStep, List<Amount>> factors) {
        List<LabourLine> lines = new ArrayList<>();
        for (LabourStep step : assumptions.steps()) {
            boolean due = step.method().coversAny(used)
                    && step.driver().level() == level
                    && step.appliesWhen().holds(facts);
            double count = due ? quantity.applyAsDouble(step) : 0;
            if (count > 0) {
                lines.add(new LabourLine(step, count, factors.apply(step)));
            }
        }
        return List.copyOf(lines);
    }
}
