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
 * @param openingDamageUsd mean of what the family pays for repairs
 * @param damageUsd the same of all openings by draw
 * @param openingWarranted mean of the damages that the shop mends, each at its discount
 * @param warrantyUsd by draw: what the shop pays for repairs
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record HouseLeaks(
        double[][] chance,
        double[][] contribution,
        double[] openingDamageUsd,
        double[] damageUsd,
        double[] openingWarranted,
        double[] warrantyUsd) {

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
                new double[openings],
                new double[draws],
                new double[openings],
                new double[draws]);
        for (int o = 0; o < openings; o++) {
            LeakModel model = models.get(o);
            model.run(causes, scratch);
            leaks.chance[o] = scratch.damage().clone();
            leaks.contribution[o] =
                    Arrays.copyOf(scratch.contribution(), model.paths().size());
            leaks.add(o, model.repairWorth(scratch), repairUsd, meanRepairUsd);
        }
        return leaks;
    }

    private void add(int opening, RepairWorth worth, double[] repairUsd, double meanRepairUsd) {
        double[] own = chance[opening];
        for (int d = 0; d < own.length; d++) {
            double usd = own[d] * repairUsd[d];
            damageUsd[d] += usd * worth.family();
            warrantyUsd[d] += usd * worth.shop();
        }
        double mean = Summary.mean(own);
        openingDamageUsd[opening] = mean * worth.family() * meanRepairUsd;
        openingWarranted[opening] = mean * worth.shop();
    }

    /** Mean damages that the shop mends at all openings. */
    double warranted() {
        return Sum.of(openingWarranted);
    }

    /** Mean of what the family pays for repairs at all openings. */
    double meanDamageUsd() {
        return Sum.of(openingDamageUsd);
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
