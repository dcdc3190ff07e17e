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
 * @param chance [opening][draw]: of damage within the horizon
 * @param contribution [opening][path]: to the mean of the chance
 * @param damageUsd by draw: what the family pays for repairs
 * @param warrantyUsd by draw: what the shop pays for repairs
 * @param means of both
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record HouseLeaks(
        double[][] chance, double[][] contribution, double[] damageUsd, double[] warrantyUsd, RepairMeans means) {

    /**
     * Means of the repairs, opening by opening.
     *
     * @param chance of damage within the horizon
     * @param damageUsd what the family pays for them
     * @param warranted damages that the shop mends, each at its discount
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    record RepairMeans(double[] chance, double[] damageUsd, double[] warranted) {
        private RepairMeans(int openings) {
            this(new double[openings], new double[openings], new double[openings]);
        }

        /** Of those alone; see {@link HouseLeaks#of}. */
        static RepairMeans of(List<LeakModel> models, double meanRepairUsd, LeakCauses causes, LeakDraws scratch) {
            RepairMeans means = new RepairMeans(models.size());
            for (int o = 0; o < models.size(); o++) {
                LeakModel model = models.get(o);
                model.run(causes, scratch);
                means.set(o, scratch, model.repairWorth(scratch), meanRepairUsd);
            }
            return means;
        }

        private void set(int opening, LeakDraws drawn, RepairWorth worth, double meanRepairUsd) {
            double mean = Summary.mean(drawn.damage());
            chance[opening] = mean;
            damageUsd[opening] = mean * worth.family() * meanRepairUsd;
            warranted[opening] = mean * worth.shop();
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
        int draws = repairUsd.length;
        HouseLeaks leaks = new HouseLeaks(
                new double[openings][],
                new double[openings][],
                new double[draws],
                new double[draws],
                new RepairMeans(openings));
        for (int o = 0; o < openings; o++) {
            LeakModel model = models.get(o);
            model.run(causes, scratch);
            RepairWorth worth = model.repairWorth(scratch);
            leaks.chance[o] = scratch.damage().clone();
            leaks.contribution[o] =
                    Arrays.copyOf(scratch.contribution(), model.paths().size());
            leaks.means.set(o, scratch, worth, meanRepairUsd);
            leaks.pay(leaks.chance[o], repairUsd, worth.family(), worth.shop());
        }
        return leaks;
    }

    private void pay(double[] chance, double[] repairUsd, double family, double shop) {
        double[] damage = damageUsd;
        double[] warranty = warrantyUsd;
        for (int d = 0; d < damage.length; d++) {
            double usd = chance[d] * repairUsd[d];
            damage[d] += usd * family;
            warranty[d] += usd * shop;
        }
    }

    /** Chance of damage at any opening, by draw: 1 − ∏(1 − P_o). */
    double[] any() {
        return any(chance, damageUsd.length);
    }

    static double[] any(double[][] chances, int draws) {
        double[] none = new double[draws];
        Arrays.fill(none, 1);
        for (double[] own : chances) {
            for (int d = 0; d < none.length; d++) {
                none[d] *= 1 - own[d];
            }
        }
        for (int d = 0; d < none.length; d++) {
            none[d] = 1 - none[d];
        }
        return none;
    }
}
