package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
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
    private final MethodScope methods;
    private final Pace pace;
    private final Map<Spot, PacedStep[]> atOpenings = new HashMap<>();

    /** What the pace of an opening's steps hangs on. */
    private record Spot(Method method, int storey) {}

    /**
     * @param facts of the house
     * @param methods used in it
     */
    public LabourTakeoff(Assumptions assumptions, House house, HouseFacts facts, Set<Method> methods) {
        this.assumptions = assumptions;
        this.house = house;
        this.facts = facts;
        this.methods = MethodScope.of(methods);
        pace = new Pace(assumptions.scenario(), house.openingCount(), house.leadSafe());
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    /**
     * What belongs to one opening alone.
     *
     * @param wall in the order of the house's walls
     * @param opening in the order of the wall's
     */
    public OpeningLabour ofOpening(int wall, ElevationQuantities quantities, int opening) {
        Elevation elevation = house.elevations().get(wall);
        Opening window = elevation.openings().get(opening);
        Map<Fact, String> known = facts.openings().get(wall).get(opening);
        OpeningQuantities counted = quantities.openings().get(opening);
        Spot spot = new Spot(counted.method(), house.storeyOf(elevation, window));
        PacedStep[] possible = atOpenings.get(spot);
        if (possible == null) {
            possible = paced(spot);
            atOpenings.put(spot, possible);
        }
        PacedStep[] steps = new PacedStep[possible.length];
        double[] numbers = new double[possible.length];
        int count = 0;
        for (PacedStep paced : possible) {
            if (paced.step().appliesWhen().holds(known)) {
                steps[count] = paced;
                numbers[count] = counted.of(paced.step().driver());
                count += numbers[count] > 0 ? 1 : 0;
            }
        }
        return new OpeningLabour(steps, numbers, count);
    }

    private PacedStep[] paced(Spot spot) {
        List<LabourStep> all = assumptions.steps();
        List<PacedStep> paced = new ArrayList<>();
        for (int place = 0; place < all.size(); place++) {
            LabourStep step = all.get(place);
            if (step.driver().level() == Driver.Level.OPENING && step.method().covers(spot.method)) {
                paced.add(PacedStep.of(place, step, pace.atOpening(step, spot.storey)));
            }
        }
        return paced.toArray(PacedStep[]::new);
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

    /** Lines once a house. */
    public List<LabourLine> ofJob() {
        return ofHouse(Driver.JOB, 1);
    }

    /** Lines of each working day. */
    public List<LabourLine> ofDays(int days) {
        return ofHouse(Driver.DAY, days);
    }

    private List<LabourLine> ofHouse(Driver driver, int count) {
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
