package weatherlap.sim.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.labour.LabourLine;

/** Adds mean person-minutes up by step, over lists of lines that each stand in the order of the table. */
final class StepMinutes {
    private final LabourStep[] steps;
    private final double[] minutes;
    private final boolean[] known;
    /** Steps met, in the order in which they first were. */
    private final List<Integer> met = new ArrayList<>();

    private StepMinutes(List<LabourStep> steps) {
        this.steps = steps.toArray(LabourStep[]::new);
        minutes = new double[this.steps.length];
        known = new boolean[this.steps.length];
    }

    static Map<String, Double> of(WorkTakeoff work) {
        StepMinutes sums = new StepMinutes(work.assumptions().steps());
        for (ElevationWork wall : work.elevations()) {
            sums.add(wall.lines());
            for (OpeningWork opening : wall.openings()) {
                opening.own().give(sums::add);
            }
        }
        sums.add(work.jobLines());
        sums.add(work.dayLines());
        return sums.byId();
    }

    private void add(List<LabourLine> lines) {
        int step = 0;
        for (int i = 0; i < lines.size(); i++) {
            LabourLine line = lines.get(i);
            while (steps[step] != line.step()) {
                step++;
            }
            add(step, line.meanMinutes());
        }
    }

    private void add(int step, double mean) {
        if (!known[step]) {
            known[step] = true;
            met.add(step);
        }
        minutes[step] += mean;
    }

    private Map<String, Double> byId() {
        Map<String, Double> byId = new LinkedHashMap<>();
        for (int step : met) {
            byId.merge(steps[step].id(), minutes[step], Double::sum);
        }
        return byId;
    }
}
