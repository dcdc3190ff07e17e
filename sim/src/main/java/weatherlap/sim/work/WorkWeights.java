package weatherlap.sim.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.material.MaterialLine;

/**
 * A takeoff as arrays for the drawing loop. Steps and items are indexed as in the assumptions, openings in table order over the walls.
 * The arrays are the record's own: read them, do not write.
 *
 * @param openingSteps [opening][step]: person-minutes for each minute of the step at the opening alone
 * @param elevationSteps [wall][step]: likewise for what the wall's openings share
 * @param houseSteps [step]: likewise for what a job or its days need once
 * @param travelMinutes person-minutes on the road, the same in every draw
 * @param openingItems [opening][item]: packages, unrounded, that the opening uses
 * @param packages [item]: whole packages bought for the house
 * @param unitUsd [opening]: mean price of the new unit
 * @param openingFixedUsd [opening]: tipping
 * @param houseFixedUsd permit, and the rest of the tip's least charge
 * @param usdPerPersonHour wage with burden
 * @param crewSize people
 * @param crewDays working days
 */
@SuppressWarnings("ArrayRecordComponent")
public record WorkWeights(
        double[][] openingSteps,
        double[][] elevationSteps,
        double[] houseSteps,
        double travelMinutes,
        double[][] openingItems,
        double[] packages,
        double[] unitUsd,
        double[] openingFixedUsd,
        double houseFixedUsd,
        double usdPerPersonHour,
        int crewSize,
        int crewDays) {

    static WorkWeights of(WorkTakeoff work) {
        List<OpeningWork> openings = work.openings();
        StepIndex steps = StepIndex.of(work.assumptions().steps());
        List<Material> items = work.assumptions().materials();
        double[][] openingItems = new double[openings.size()][items.size()];
        double[] packages = new double[items.size()];
        for (MaterialLine line : work.materials()) {
            int item = items.indexOf(line.item());
            packages[item] = line.packages();
            for (int o = 0; o < openings.size(); o++) {
                openingItems[o][item] = line.inPackages(line.openings().get(o));
            }
        }
        return new WorkWeights(
                openings.stream().map(o -> steps.weights(o.lines())).toArray(double[][]::new),
                work.elevations().stream().map(e -> steps.weights(e.lines())).toArray(double[][]::new),
                steps.weights(Stream.concat(work.jobLines().stream(), work.dayLines().stream())
                        .toList()),
                work.travel().value(),
                openingItems,
                packages,
                openings.stream().mapToDouble(o -> o.unit().value()).toArray(),
                openings.stream().mapToDouble(o -> o.tipping().value()).toArray(),
                work.assumptions().scenario().value(Scalar.PERMIT_USD)
                        + work.restOfTipping().value(),
                work.personHour().value(),
                work.assumptions().scenario().whole(Scalar.CREW_SIZE),
                work.crewDays().days());
    }

    /** Where a step stands in the assumptions, by its id. */
    private record StepIndex(Map<String, Integer> byId) {
        static StepIndex of(List<LabourStep> steps) {
            Map<String, Integer> byId = new HashMap<>();
            steps.forEach(step -> byId.put(step.id(), byId.size()));
            return new StepIndex(byId);
        }

        double[] weights(List<LabourLine> lines) {
            double[] weights = new double[byId.size()];
            lines.forEach(line -> weights[byId.get(line.step().id())] += line.weight());
            return weights;
        }
    }
}
