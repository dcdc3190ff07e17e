package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.LabourStep;
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
    private final HouseSteps steps;

    /** @param facts of the house */
    public LabourTakeoff(Assumptions assumptions, House house, HouseFacts facts) {
        this(new Paces(assumptions), house, facts);
    }

    /** The same at a pace that other houses share. */
    public LabourTakeoff(Paces paces, House house, HouseFacts facts) {
        assumptions = paces.assumptions();
        this.house = house;
        this.facts = facts;
        steps = new HouseSteps(paces, house, facts);
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
    public OpeningLabour ofOpening(int wall, ElevationQuantities shared, int opening) {
        OpeningQuantities counted = shared.openings().get(opening);
        PacedStep[] applying = steps.ofOpening(wall, opening);
        double[] numbers = new double[applying.length];
        int count = 0;
        for (int i = 0; i < numbers.length; i++) {
            LabourStep step = applying[i].step();
            if (step.method().covers(counted.method())) {
                numbers[i] = counted.of(step.driver());
                count += numbers[i] > 0 ? 1 : 0;
            }
        }
        PacedStep[] done = new PacedStep[count];
        double[] quantities = new double[count];
        for (int i = 0, at = 0; at < count; i++) {
            if (numbers[i] > 0) {
                done[at] = applying[i];
                quantities[at++] = numbers[i];
            }
        }
        return new OpeningLabour(done, quantities);
    }

    /** Lines that the openings of a wall share; none where it has no opening. */
    public List<LabourLine> ofElevation(int wall, ElevationQuantities quantities) {
        List<LabourLine> lines = new ArrayList<>();
        Elevation elevation = house.elevations().get(wall);
        if (elevation.openings().isEmpty()) {
            return lines;
        }
        MethodScope used = quantities.methods();
        for (PacedStep one : steps.ofWall(wall)) {
            Driver driver = one.step().driver();
            if (one.step().method().coversAny(used)) {
                add(lines, one, quantities.shared(driver, elevation.sidingCondition(), assumptions.scenario()));
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
        for (PacedStep one : steps.ofHouse()) {
            if (one.step().driver() == driver && one.step().method().coversAny(methods)) {
                add(lines, one, count);
            }
        }
        return lines;
    }

    private static void add(List<LabourLine> lines, PacedStep one, double count) {
        if (count > 0) {
            lines.add(one.line(count));
        }
    }
}
