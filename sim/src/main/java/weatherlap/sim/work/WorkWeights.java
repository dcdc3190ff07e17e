package weatherlap.sim.work;

import java.util.List;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
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
        LabourStep[] steps = work.assumptions().steps().toArray(LabourStep[]::new);
        double[][] openingSteps = new double[openings.size()][];
        double[] unitUsd = new double[openings.size()];
        double[] tippingUsd = new double[openings.size()];
        for (int o = 0; o < openings.size(); o++) {
            OpeningWork one = openings.get(o);
            openingSteps[o] = one.own().weights(steps.length);
            unitUsd[o] = one.unitUsd();
            tippingUsd[o] = one.tippingUsd();
        }
        double[][] elevationSteps = new double[work.elevations().size()][];
        for (int e = 0; e < elevationSteps.length; e++) {
            elevationSteps[e] = weights(steps, work.elevations().get(e).lines());
        }
        double[] packages = new double[work.assumptions().materials().size()];
        double[][] openingItems = new double[openings.size()][packages.length];
        items(work, packages, openingItems);
        return new WorkWeights(
                openingSteps,
                elevationSteps,
                weights(steps, work.jobLines(), work.dayLines()),
                work.travel().value(),
                openingItems,
                packages,
                unitUsd,
                tippingUsd,
                work.houseFixedUsd(),
                work.personHour().value(),
                work.crewSize(),
                work.crewDays().days());
    }

    private static void items(WorkTakeoff work, double[] packages, double[][] openingItems) {
        List<Material> items = work.assumptions().materials();
        int item = 0;
        for (MaterialLine line : work.materials()) {
            while (items.get(item) != line.item()) {
                item++;
            }
            packages[item] = line.packages();
            for (int o = 0; o < openingItems.length; o++) {
                openingItems[o][item] = line.inPackages(line.openings()[o]);
            }
        }
    }

    /** By step, from lines that each stand in the order of the steps. */
    @SafeVarargs
    private static double[] weights(LabourStep[] steps, List<LabourLine>... some) {
        double[] weights = new double[steps.length];
        for (List<LabourLine> lines : some) {
            int step = 0;
            for (LabourLine line : lines) {
                while (steps[step] != line.step()) {
                    step++;
                }
                weights[step] += line.weight();
            }
        }
        return weights;
    }
}
