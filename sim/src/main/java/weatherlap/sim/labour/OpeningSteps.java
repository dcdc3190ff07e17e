package weatherlap.sim.labour;

import java.util.ArrayList;
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
        PacedStep[][] byStorey = new PacedStep[house.storeys()][];
        steps = Each.upTo(house.elevations().size(), w -> {
            Elevation wall = house.elevations().get(w);
            return Each.upTo(wall.openings().size(), o -> {
                int storey = house.storeyOf(wall, wall.openings().get(o));
                if (byStorey[storey - 1] == null) {
                    byStorey[storey - 1] = paced(assumptions.steps(), pace, storey);
                }
                return applying(byStorey[storey - 1], facts.openings().get(w).get(o));
            });
        });
    }

    private static PacedStep[] paced(List<LabourStep> all, Pace pace, int storey) {
        List<PacedStep> paced = new ArrayList<>();
        for (int place = 0; place < all.size(); place++) {
            LabourStep step = all.get(place);
            if (step.driver().level() == Driver.Level.OPENING) {
                paced.add(PacedStep.of(place, step, pace.atOpening(step, storey)));
            }
        }
        return paced.toArray(PacedStep[]::new);
    }

    private static PacedStep[] applying(PacedStep[] all, Map<Fact, String> known) {
        PacedStep[] applying = new PacedStep[all.length];
        int count = 0;
        for (PacedStep paced : all) {
            if (paced.step().appliesWhen().holds(known)) {
                applying[count++] = paced;
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
