package weatherlap.sim.run;

import java.util.Arrays;
import weatherlap.sim.Kept;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.work.WorkTakeoff;
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
 * δ_o and γ_o share out the present worth of a repair ({@link LeakModel.RepairWorth}). The price is one number, quoted on the mean cost. P_o is the chance given the causes, not a toss of it: bands are over what is not
 * known, not over luck.
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record MethodDraws(
        HouseTakeoff takeoff,
        WorkWeights weights,
        double[] labourMinutes,
        Summary[] openingMinutes,
        Summary materialUsd,
        Summary[] openingUsd,
        HouseLeaks leaks,
        Pricing pricing,
        JobCost expected,
        double priceUsd,
        double[] costUsd) {

    static MethodDraws of(
            HouseTakeoff takeoff,
            Scenario scenario,
            World world,
            MaterialPrices prices,
            HouseCauses causes,
            LeakDraws scratch) {
        WorkWeights weights = takeoff.work().weights();
        HouseLeaks leaks =
                HouseLeaks.of(takeoff.leaks(), world.repairUsd(), world.meanRepairUsd(), causes.leaks(), scratch);
        double[] labourMinutes = shared(weights, world, causes);
        Summary[] openingMinutes = openingMinutes(takeoff.work(), weights, world, causes, labourMinutes);
        double[] materialUsd = material(weights, world);
        Pricing pricing = Pricing.of(scenario);
        JobCost expected = takeoff.work().expectedCost(leaks.means().allWarranted() * world.meanRepairUsd());
        double priceUsd = pricing.priceUsd(expected);
        double[] costUsd = new double[world.draws()];
        for (int d = 0; d < costUsd.length; d++) {
            double hours = Units.minutesToHours(labourMinutes[d]);
            double directUsd =
                    JobCost.directUsd(hours * weights.usdPerPersonHour(), materialUsd[d], leaks.warrantyUsd()[d]);
            costUsd[d] = pricing.fullCostUsd(priceUsd, directUsd, hours / weights.crewSize());
        }
        return new MethodDraws(
                takeoff,
                weights,
                labourMinutes,
                openingMinutes,
                Summary.of(expected.materialUsd(), materialUsd),
                prices.of(takeoff.work(), weights),
                leaks,
                pricing,
                expected,
                priceUsd,
                costUsd);
    }

    /** What openings share, and the road. */
    private static double[] shared(WorkWeights weights, World world, HouseCauses causes) {
        double[] shared = weights.houseSteps().clone();
        for (double[] wall : weights.elevationSteps()) {
            for (int s = 0; s < shared.length; s++) {
                shared[s] += wall[s];
            }
        }
        double[] labour = new double[world.draws()];
        weighted(shared, world.stepMinutes(), labour);
        for (int d = 0; d < labour.length; d++) {
            labour[d] = labour[d] * causes.pace()[d] + weights.travelMinutes();
        }
        return labour;
    }

    /** @param labour of the house, to which that of each opening is added */
    private static Summary[] openingMinutes(
            WorkTakeoff work, WorkWeights weights, World world, HouseCauses causes, double[] labour) {
        Summary[] minutes = new Summary[weights.openingSteps().length];
        double[] drawn = new double[labour.length];
        for (int o = 0; o < minutes.length; o++) {
            weighted(weights.openingSteps()[o], world.stepMinutes(), drawn);
            double[] pace = causes.openingPace()[o];
            for (int d = 0; d < drawn.length; d++) {
                double own = drawn[d] * pace[d];
                drawn[d] = own;
                labour[d] += own;
            }
            minutes[o] = Summary.of(work.openings().get(o).meanMinutes(), drawn);
        }
        return minutes;
    }

    private static double[] material(WorkWeights weights, World world) {
        double[] material = new double[world.draws()];
        weighted(weights.packages(), world.itemPriceUsd(), material);
        double units = Sum.of(weights.unitUsd());
        double fixed = Sum.of(weights.openingFixedUsd()) + weights.houseFixedUsd();
        add(material, world.unitPriceFactor(), units, fixed);
        return material;
    }

    /**
     * What the material at an opening costs. Windows of one size take the same, at this house and at others: its percentiles are kept.
     */
    static final class MaterialPrices {
        /** Kept: some 2 MB. */
        private static final int MOST = 4096;

        private final World world;
        private final Kept<Material, double[]> points = new Kept<>(MOST);

        MaterialPrices(World world) {
            this.world = world;
        }

        private record Material(double unitUsd, double fixedUsd, double[] items) {
            @Override
            public boolean equals(Object other) {
                return other instanceof Material material
                        && unitUsd == material.unitUsd
                        && fixedUsd == material.fixedUsd
                        && Arrays.equals(items, material.items);
            }

            @Override
            public int hashCode() {
                return Arrays.hashCode(items) * 31 + Double.hashCode(unitUsd);
            }
        }

        private Summary[] of(WorkTakeoff work, WorkWeights weights) {
            double[] exactMeans = work.openingMaterialUsd();
            Summary[] usd = new Summary[exactMeans.length];
            for (int o = 0; o < usd.length; o++) {
                usd[o] = Summary.at(
                        exactMeans[o],
                        points(new Material(
                                weights.unitUsd()[o], weights.openingFixedUsd()[o], weights.openingItems()[o])));
            }
            return usd;
        }

        private double[] points(Material material) {
            double[] known = points.get(material);
            return known != null ? known : points.keep(material, Summary.points(draws(material)));
        }

        private double[] draws(Material material) {
            double[] usd = new double[world.draws()];
            weighted(material.items, world.itemPriceUsd(), usd);
            add(usd, world.unitPriceFactor(), material.unitUsd, material.fixedUsd);
            return usd;
        }
    }

    /** Σ_k weight_k · column_k, draw by draw and in the order of the columns: four at a time, so that the sums are gone over less often. */
    private static void weighted(double[] weights, double[][] columns, double[] total) {
        double[] used = new double[weights.length + 3];
        double[][] of = new double[weights.length + 3][];
        int count = 0;
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] != 0) {
                used[count] = weights[k];
                of[count++] = columns[k];
            }
        }
        Arrays.fill(total, 0);
        Arrays.fill(of, count, count + 3, total); // times 0
        for (int k = 0; k < count; k += 4) {
            add(total, used[k], of[k], used[k + 1], of[k + 1], used[k + 2], of[k + 2], used[k + 3], of[k + 3]);
        }
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
}
