package weatherlap.sim.run;

import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Sum;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakModel.RepairWorth;

/**
 * The leaks of all openings of a house under one method.
 *
 * @param chance [opening]: of damage within the horizon
 * @param dry [opening][draw]: chance of none
 * @param contribution [opening][path]: to the mean of the chance
 * @param damageUsd by draw: what the family pays for repairs
 * @param warrantyUsd by draw: what the shop pays for repairs
 * @param means of both
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record HouseLeaks(
        Summary[] chance,
        double[][] dry,
        double[][] contribution,
        double[] damageUsd,
        double[] warrantyUsd,
        RepairMeans means) {
    private static final Summary NEVER = new Summary(0, 0, 0, 0);

    /** What is to be done with the draws of an opening before those of the next one take their place. */
    @FunctionalInterface
    interface Taker {
        void take(int opening, RepairWorth worth);
    }

    /**
     * Means of the repairs, opening by opening.
     *
     * @param damageUsd what the family pays for them
     * @param warranted damages that the shop mends, each at its discount
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    record RepairMeans(double[] damageUsd, double[] warranted) {
        /**
         * @param models in the order of the openings
         * @param meanRepairUsd exact mean of mending one leak-damaged opening
         * @param scratch drawn in
         */
        static RepairMeans of(
                List<LeakModel> models, double meanRepairUsd, LeakCauses causes, LeakDraws scratch, Taker taker) {
            double[] damageUsd = new double[models.size()];
            double[] warranted = new double[models.size()];
            for (int o = 0; o < damageUsd.length; o++) {
                LeakModel model = models.get(o);
                model.run(causes, scratch);
                RepairWorth worth = model.repairWorth(scratch);
                damageUsd[o] = scratch.mean() * worth.family() * meanRepairUsd;
                warranted[o] = scratch.mean() * worth.shop();
                taker.take(o, worth);
            }
            return new RepairMeans(damageUsd, warranted);
        }

        /** Mean damages that the shop mends at all openings. */
        double allWarranted() {
            return Sum.of(warranted);
        }

        /** Mean of what the family pays for repairs at all openings. */
        double allDamageUsd() {
            return Sum.of(damageUsd);
        }
    }

    /**
     * @param models in the order of the openings
     * @param repairUsd by draw: mending one leak-damaged opening
     * @param meanRepairUsd exact mean of it
     */
    static HouseLeaks of(
            List<LeakModel> models, double[] repairUsd, double meanRepairUsd, LeakCauses causes, LeakDraws scratch) {
        int openings = models.size();
        Summary[] chance = new Summary[openings];
        double[][] dry = new double[openings][];
        double[][] contribution = new double[openings][];
        double[] damageUsd = new double[repairUsd.length];
        double[] warrantyUsd = new double[repairUsd.length];
        RepairMeans means = RepairMeans.of(models, meanRepairUsd, causes, scratch, (o, worth) -> {
            dry[o] = scratch.none();
            contribution[o] =
                    Arrays.copyOf(scratch.contribution(), models.get(o).paths().size());
            if (scratch.isDry()) {
                chance[o] = NEVER;
            } else {
                chance[o] = Summary.of(scratch.mean(), scratch.damage());
                pay(scratch.damage(), repairUsd, damageUsd, worth.family(), warrantyUsd, worth.shop());
            }
        });
        return new HouseLeaks(chance, dry, contribution, damageUsd, warrantyUsd, means);
    }

    private static void pay(
            double[] chance, double[] repairUsd, double[] damageUsd, double family, double[] warrantyUsd, double shop) {
        for (int d = 0; d < chance.length; d++) {
            double usd = chance[d] * repairUsd[d];
            damageUsd[d] += usd * family;
            warrantyUsd[d] += usd * shop;
        }
    }

    /** Chance of damage at any of some openings, by draw: 1 − ∏(1 − P_o). */
    static double[] any(double[][] dry, int draws) {
        double[] any = new double[draws];
        Arrays.fill(any, 1);
        for (double[] none : dry) {
            times(any, none);
        }
        for (int d = 0; d < any.length; d++) {
            any[d] = 1 - any[d];
        }
        return any;
    }

    private static void times(double[] product, double[] factor) {
        for (int d = 0; d < product.length; d++) {
            product[d] *= factor[d];
        }
    }
}
