package weatherlap.reports.owner;

import weatherlap.analysis.words.Numbers;
import weatherlap.reports.owner.OwnerFigures.OwnHouse;
import weatherlap.sim.method.Method;

/** Who gains by which method at a house. */
public final class GainWords {
    private GainWords() {}

    /** In a word or two, the same for all houses of a quadrant. */
    public static String who(OwnHouse house) {
        if (house.choice().onePlan()) {
            return "no choice";
        }
        Method family = house.better();
        Method shop = house.earnsMore();
        return family == shop ? "both: " + family.many() : "family: " + family.many() + ", shop: " + shop.many();
    }

    /** With how much. */
    public static String line(OwnHouse house) {
        if (house.choice().onePlan()) {
            return "only one plan can be built";
        }
        return "family saves " + Numbers.usd(Math.abs(house.familySavesUsd())) + " with "
                + house.there(house.better()).many() + ", shop earns "
                + Numbers.usd(Math.abs(house.choice().shopEarnsMoreUsd())) + " more a day with "
                + house.there(house.earnsMore()).many();
    }
}
