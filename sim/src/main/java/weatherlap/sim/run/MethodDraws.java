package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.work.WorkWeights;

/**
 * A house under one method, a column a draw. With the world's minutes t and prices c, the pace κ of the house and κ_o of an opening:
 *
 * <pre>
 *   labour    L   = κ (Σ_o κ_o Σ_s w_os t_s + Σ_s w_s t_s) + travel        person-minutes
 *   material  M   = Σ_i n_i c_i + u Σ_o unit_o + fixed                     n_i whole packages, u the price list's factor
 *   warranty  G   = Σ_o P_o γ_o R                                          γ_o paid by the shop, R a repair, apart from P_o
 *   cost      C   = wage L + M + G + service + overhead of the crew's hours
 *   damage    D   = Σ_o P_o δ_o R                                          δ_o paid by the family
 *   horizon   H   = price + D + worth of the glass lost
 * </pre>
 *
 * Openings that take the same material share a column of its price.
 *
 * <p>δ_o and γ_o share out the present worth of a repair ({@link LeakModel.RepairWorth}). The price is one number, quoted on the mean cost. P_o is the chance given the causes, not a toss of it: bands are over what is not
 * known, not over luck.
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record MethodDraws(
        HouseTakeoff takeoff,
        WorkWeights weights,
        double[] labourMinutes,
        double[][] openingMinutes,
        double[] materialUsd,
        double[][] openingUsd,
        double[][] leak,
        double[] meanLeak,
        double[][] leakContribution,
        double[] openingDamageUsd,
        double[] damageUsd,
        double[] openingWarranted,
        Pricing pricing,
        JobCost expected,
        double priceUsd,
        double[] costUsd) {

    static MethodDraws of(HouseTakeoff takeoff, Scenario scenario, World world, HouseCauses causes, LeakDraws scratch) {
        WorkWeights weights = takeoff.work().weights();
        int openings = takeoff.openings().size();
        double[][] openingMinutes = new double[openings][];
        double[][] openingUsd = new double[openings][];
        for (int o = 0; o < openings; o++) {
            openingMinutes[o] = minutes(weights.openingSteps()[o], world, causes.pace(), causes.openingPace()[o]);
            int same = weights.firstOfMaterial(o);
            openingUsd[o] = same < o ? openingUsd[same] : openingUsd(weights, o, world);
        }
        HouseLeaks leaks =
                HouseLeaks.of(takeoff.leaks(), world.repairUsd(), world.meanRepairUsd(), causes.leaks(), scratch);
        double[] labourMinutes = labour(weights, openingMinutes, world, causes);
        double[] materialUsd = material(weights, world);
        Pricing pricing = Pricing.of(scenario);
        JobCost expected = takeoff.work().expectedCost(leaks.means().allWarranted() * world.meanRepairUsd());
        double priceUsd = pricing.priceUsd(expected);
        double[] warrantyUsd = leaks.warrantyUsd();
        double[] costUsd = new double[world.draws()];
        for (int d = 0; d < costUsd.length; d++) {
            double hours = Units.minutesToHours(labourMinutes[d]);
            double directUsd = JobCost.directUsd(hours * weights.usdPerPersonHour(), materialUsd[d], warrantyUsd[d]);
            costUsd[d] = pricing.fullCostUsd(priceUsd, directUsd, hours / weights.crewSize());
        }
        return new MethodDraws(
                takeoff,
                weights,
                labourMinutes,
                openingMinutes,
                materialUsd,
                openingUsd,
                leaks.chance(),
                leaks.means().chance(),
                leaks.contribution(),
                leaks.means().damageUsd(),
                leaks.damageUsd(),
                leaks.means().warranted(),
                pricing,
                expected,
                priceUsd,
                costUsd);
    }

    private static double[] labour(WorkWeights weights, double[][] openingMinutes, World world, HouseCauses causes) {
        double[] shared = weights.houseSteps().clone();
        for (double[] wall : weights.elevationSteps()) {
            for (int s = 0; s < shared.length; s++) {
                shared[s] += wall[s];
            }
        }
        double[] labour = weighted(shared, world.stepMinutes(), world.draws());
        for (int d = 0; d < labour.length; d++) {
            labour[d] = labour[d] * causes.pace()[d] + weights.travelMinutes();
        }
        for (double[] opening : openingMinutes) {
            for (int d = 0; d < labour.length; d++) {
                labour[d] += opening[d];
            }
        }
        return labour;
    }

    private static double[] minutes(double[] stepWeights, World world, double[] pace, double[] openingPace) {
        double[] minutes = weighted(stepWeights, world.stepMinutes(), world.draws());
        for (int d = 0; d < minutes.length; d++) {
            minutes[d] *= pace[d] * openingPace[d];
        }
        return minutes;
    }

    private static double[] openingUsd(WorkWeights weights, int o, World world) {
        double[] usd = weighted(weights.openingItems()[o], world.itemPriceUsd(), world.draws());
        add(usd, world.unitPriceFactor(), weights.unitUsd()[o], weights.openingFixedUsd()[o]);
        return usd;
    }

    private static double[] material(WorkWeights weights, World world) {
        double[] material = weighted(weights.packages(), world.itemPriceUsd(), world.draws());
        double units = Sum.of(weights.unitUsd());
        double fixed = Sum.of(weights.openingFixedUsd()) + weights.houseFixedUsd();
        add(material, world.unitPriceFactor(), units, fixed);
        return material;
    }

    /** Σ_k weight_k · column_k, draw by draw and in the order of the columns: four at a time, so that the sums are gone over less often. */
    private static double[] weighted(double[] weights, double[][] columns, int draws) {
        double[] used = new double[weights.length + 3];
        double[][] of = new double[weights.length + 3][];
        int count = 0;
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] != 0) {
                used[count] = weights[k];
                of[count++] = columns[k];
            }
        }
        double[] total = new double[draws];
        Arrays.fill(of, count, count + 3, total); // times 0
        for (int k = 0; k < count; k += 4) {
            add(total, used[k], of[k], used[k + 1], of[k + 1], used[k + 2], of[k + 2], used[k + 3], of[k + 3]);
        }
        return total;
    }

    private static void add(
            double[] total,
            double a,
            double[] as,
            double b,
            double[] bs,
            double c,
            double[] cs,
            double e,
            double[] es) {
        for (int d = 0; d < total.length; d++) {
            total[d] = total[d] + a * as[d] + b * bs[d] + c * cs[d] + e * es[d];
        }
    }

    private static void add(double[] total, double[] factor, double varying, double fixed) {
        for (int d = 0; d < total.length; d++) {
            total[d] += varying * factor[d] + fixed;
        }
    }

    /** Openings of a wall, as positions in the house. */
    List<Integer> openingsOf(String elevationId) {
        List<Integer> positions = new ArrayList<>();
        for (int o = 0; o < takeoff.openings().size(); o++) {
            if (takeoff.openings().get(o).elevation().id().equals(elevationId)) {
                positions.add(o);
            }
        }
        return positions;
    }

    /** Chance of damage at any of the openings, by draw: 1 − ∏(1 − P_o). */
    double[] anyLeak(List<Integer> positions) {
        double[][] chances = new double[positions.size()][];
        for (int p = 0; p < chances.length; p++) {
            chances[p] = leak[positions.get(p)];
        }
        return HouseLeaks.any(chances, costUsd.length);
    }
}
