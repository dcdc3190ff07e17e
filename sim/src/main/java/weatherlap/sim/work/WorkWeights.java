package weatherlap.sim.work;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.explain.Amount;
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
        List<Material> items = work.assumptions().materials();
        int item = 0;
        double[][] openingItems = new double[openings.size()][items.size()];
        double[] packages = new double[items.size()];
        for (MaterialLine line : work.materials()) {
            while (items.get(item) != line.item()) {
                item++;
            }
            packages[item] = line.packages();
            for (int o = 0; o < openings.size(); o++) {
                openingItems[o][item] = line.inPackages(line.openings()[o]);
            }
        }
        return new WorkWeights(
                weights(openings, opening -> opening.own().weights(steps.length)),
                weights(work.elevations(), wall -> weights(steps, wall.lines())),
                weights(steps, work.jobLines(), work.dayLines()),
                work.travel().value(),
                openingItems,
                packages,
                values(openings, OpeningWork::unit),
                values(openings, OpeningWork::tipping),
                work.houseFixedUsd(),
                work.personHour().value(),
                work.crewSize(),
                work.crewDays().days());
    }

    private static <A> double[][] weights(List<A> list, Function<A, double[]> own) {
        double[][] weights = new double[list.size()][];
        Arrays.setAll(weights, i -> own.apply(list.get(i)));
        return weights;
    }

    private static double[] values(List<OpeningWork> openings, Function<OpeningWork, Amount> amount) {
        double[] values = new double[openings.size()];
        Arrays.setAll(values, o -> amount.apply(openings.get(o)).value());
        return values;
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

    /** The first opening that takes the same material as one, as a rule that one itself. */
    public int firstOfMaterial(int opening) {
        int o = 0;
        while (unitUsd[o] != unitUsd[opening]
                || openingFixedUsd[o] != openingFixedUsd[opening]
                || !Arrays.equals(openingItems[o], openingItems[opening])) {
            o++;
        }
        return o;
    }
}
