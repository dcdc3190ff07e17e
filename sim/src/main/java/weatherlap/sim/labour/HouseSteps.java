package weatherlap.sim.labour;

import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;

/** The steps that apply at a house, on its walls and at its openings, whatever the method, at their pace there. */
final class HouseSteps {
    private final LabourStep[] steps;
    private final House house;
    private final HouseFacts facts;
    private final Paces.OfHouse paced;

    /** When they are first asked for; the same whoever asks first. */
    private PacedStep[] ofHouse;

    private final PacedStep[][] ofWalls;
    /** By wall, then by opening. */
    private final PacedStep[][][] ofOpenings;

    HouseSteps(Paces paces, House house, HouseFacts facts) {
        steps = paces.steps();
        paced = paces.of(house);
        this.house = house;
        this.facts = facts;
        int walls = house.elevations().size();
        ofWalls = new PacedStep[walls][];
        ofOpenings = new PacedStep[walls][][];
    }

    /** Steps counted by the house, in the order of the table. */
    PacedStep[] ofHouse() {
        if (ofHouse == null) {
            ofHouse = applying(Driver.Level.HOUSE, facts.house(), List.of(), paced.shared());
        }
        return ofHouse;
    }

    /** Those that the openings of a wall share, by its place. */
    PacedStep[] ofWall(int wall) {
        if (ofWalls[wall] == null) {
            Elevation elevation = house.elevations().get(wall);
            List<Integer> storeys = Each.of(elevation.openings(), opening -> house.storeyOf(elevation, opening));
            ofWalls[wall] =
                    applying(Driver.Level.ELEVATION, facts.walls().get(wall), storeys, new PacedStep[steps.length]);
        }
        return ofWalls[wall];
    }

    /** Those of an opening by itself, by its place in the wall's order. */
    PacedStep[] ofOpening(int wall, int opening) {
        if (ofOpenings[wall] == null) {
            ofOpenings[wall] =
                    atOpenings(house.elevations().get(wall), facts.openings().get(wall));
        }
        return ofOpenings[wall][opening];
    }

    private PacedStep[][] atOpenings(Elevation wall, List<Facts> known) {
        PacedStep[][] applying = new PacedStep[known.size()][];
        for (int o = 0; o < applying.length; o++) {
            int storey = house.storeyOf(wall, wall.openings().get(o));
            applying[o] = applying(Driver.Level.OPENING, known.get(o), List.of(storey), paced.byStorey()[storey - 1]);
        }
        return applying;
    }

    /**
     * @param storeys of the openings that they are for
     * @param alike steps that have the same factors, by their place in the table, each when it first applies
     */
    private PacedStep[] applying(Driver.Level level, Facts known, List<Integer> storeys, PacedStep[] alike) {
        PacedStep[] applying = new PacedStep[steps.length];
        int count = 0;
        for (int place = 0; place < applying.length; place++) {
            LabourStep step = steps[place];
            if (step.driver().level() == level && step.appliesWhen().holds(known)) {
                if (alike[place] == null) {
                    alike[place] = PacedStep.of(place, step, factors(step, storeys));
                }
                applying[count++] = alike[place];
            }
        }
        PacedStep[] all = new PacedStep[count];
        System.arraycopy(applying, 0, all, 0, count);
        return all;
    }

    private List<Amount> factors(LabourStep step, List<Integer> storeys) {
        return switch (step.driver().level()) {
            case HOUSE -> paced.pace().anywhere(step);
            case ELEVATION -> paced.pace().atElevation(step, storeys);
            case OPENING -> paced.pace().atOpening(step, storeys.get(0));
        };
    }
}
