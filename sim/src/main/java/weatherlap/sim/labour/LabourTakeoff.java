package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.OpeningQuantities;

/**
 * The steps of one house, at the openings and shared: at an opening those of its method, at a wall and for the house those that one of
 * the methods used there asks for, each once. Lines of quantity zero are left out; the others stand in the order of the table.
 */
public final class LabourTakeoff {
    private final Assumptions assumptions;
    private final House house;
    private final HouseFacts facts;
    private final Pace pace;
    /** When they are first asked for; the same whoever asks first. */
    private OpeningSteps atOpenings;

    /** @param facts of the house */
    public LabourTakeoff(Assumptions assumptions, House house, HouseFacts facts) {
        this.assumptions = assumptions;
        this.house = house;
        this.facts = facts;
        pace = new Pace(assumptions.scenario(), house.openingCount(), house.leadSafe());
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    public HouseFacts facts() {
        return facts;
    }

    /**
     * What belongs to one opening alone.
     *
     * @param wall in the order of the house's walls
     * @param opening in the order of the wall's
     */
    public OpeningLabour ofOpening(int wall, ElevationQuantities quantities, int opening) {
        if (atOpenings == null) {
            atOpenings = new OpeningSteps(assumptions, house, facts, pace);
        }
        OpeningQuantities counted = quantities.openings().get(opening);
        PacedStep[] steps = atOpenings.at(wall, opening);
        double[] numbers = new double[steps.length];
        for (int i = 0; i < steps.length; i++) {
            LabourStep step = steps[i].step();
            numbers[i] = step.method().covers(counted.method()) ? counted.of(step.driver()) : 0;
        }
        return new OpeningLabour(steps, numbers);
    }

    /** Lines that the openings of a wall share; none where it has no opening. */
    public List<LabourLine> ofElevation(int wall, ElevationQuantities quantities) {
        Elevation elevation = house.elevations().get(wall);
        List<LabourLine> lines = new ArrayList<>();
        if (elevation.openings().isEmpty()) {
            return lines;
        }
        List<Integer> storeys = Each.of(elevation.openings(), opening -> house.storeyOf(elevation, opening));
        MethodScope used = quantities.methods();
        for (LabourStep step : assumptions.steps()) {
            if (step.driver().level() == Driver.Level.ELEVATION
                    && step.method().coversAny(used)
                    && step.appliesWhen().holds(facts.walls().get(wall))) {
                double count = quantities.shared(step.driver(), elevation.sidingCondition(), assumptions.scenario());
                add(lines, step, count, pace.atElevation(step, storeys));
            }
        }
        return lines;
    }

    /** Lines once a house that is done by some methods. */
    public List<LabourLine> ofJob(MethodScope methods) {
        return ofHouse(methods, Driver.JOB, 1);
    }

    /** Lines of each working day of one. */
    public List<LabourLine> ofDays(MethodScope methods, int days) {
        return ofHouse(methods, Driver.DAY, days);
    }

    private List<LabourLine> ofHouse(MethodScope methods, Driver driver, int count) {
        List<LabourLine> lines = new ArrayList<>();
        for (LabourStep step : assumptions.steps()) {
            if (step.driver() == driver
                    && step.method().coversAny(methods)
                    && step.appliesWhen().holds(facts.house())) {
                add(lines, step, count, pace.anywhere(step));
            }
        }
        return lines;
    }

    private static void add(List<LabourLine> lines, LabourStep step, double count, List<Amount> factors) {
        if (count > 0) {
            lines.add(new LabourLine(step, count, factors));
        }
    }
}
