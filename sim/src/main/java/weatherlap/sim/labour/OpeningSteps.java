package weatherlap.sim.labour;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;

/** The steps that apply at each opening of a house, whatever its method, at their pace there. */
final class OpeningSteps {
    /** By wall, then by opening; steps in the order of the table. */
    private final List<List<PacedStep[]>> steps;

    OpeningSteps(Assumptions assumptions, House house, HouseFacts facts, Pace pace) {
        List<LabourStep> all = assumptions.steps();
        PacedStep[][] byStorey = new PacedStep[house.storeys()][all.size()];
        steps = Each.upTo(house.elevations().size(), w -> {
            Elevation wall = house.elevations().get(w);
            return Each.upTo(wall.openings().size(), o -> {
                int storey = house.storeyOf(wall, wall.openings().get(o));
                return applying(all, facts.openings().get(w).get(o), storey, pace, byStorey[storey - 1]);
            });
        });
    }

    /** @param paced steps of the storey by their place in the table, each when it first applies */
    private static PacedStep[] applying(
            List<LabourStep> all, Map<Fact, String> known, int storey, Pace pace, PacedStep[] paced) {
        PacedStep[] applying = new PacedStep[all.size()];
        int count = 0;
        for (int place = 0; place < applying.length; place++) {
            LabourStep step = all.get(place);
            if (step.driver().level() == Driver.Level.OPENING
                    && step.appliesWhen().holds(known)) {
                if (paced[place] == null) {
                    paced[place] = PacedStep.of(place, step, pace.atOpening(step, storey));
                }
                applying[count++] = paced[place];
            }
        }
        return Arrays.copyOf(applying, count);
    }

    /**
     * @param wall in the order of the house's walls
     * @param opening in the order of the wall's
     */
    PacedStep[] at(int wall, int opening) {
        return steps.get(wall).get(opening);
    }
}
