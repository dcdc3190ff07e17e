package weatherlap.analysis.choice;

import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Answer.PerHouse;
import weatherlap.sim.Check;
import weatherlap.sim.method.Method;

/**
 * The price at which the method that earns the shop less for each day of a crew earns it as much as the other: with G the gross profit
 * of a house, N its crew days, s the part of a price that is kept for service, the price of the first rises by x where
 *
 * <pre>  (G₁ + x (1 − s)) / N₁ = G₂ / N₂</pre>
 *
 * over the whole portfolio, so that x is a mean of a house. Where days are not so scarce, and one of them is worth v and not all that the
 * other method earns in it, the raise is x = (v (N₁ − N₂) − (G₁ − G₂)) / (1 − s); with v = G₂ / N₂ that is the same.
 *
 * @param raised the method that earns less a crew day
 * @param other the one that it is to catch up with
 * @param perHouseUsd what to add to its price, mean of a house, USD; 0 where both earn the same
 * @param perWindowUsd the same, mean of an opening
 * @param priceUsd of a house by that method with it, mean
 */
public record EvenPrice(Method raised, Method other, double perHouseUsd, double perWindowUsd, double priceUsd) {

    /** @param serviceReserve part of a price, 0 to below 1 */
    public static EvenPrice of(Answer answer, double serviceReserve) {
        Check.within("service reserve", serviceReserve, 0, Math.nextDown(1.0));
        Method first = answer.contrast().first();
        Method second = answer.contrast().second();
        Method raised = perDay(answer, first) < perDay(answer, second) ? first : second;
        Method other = answer.contrast().other(raised);
        PerHouse now = answer.of(raised);
        double perHouse = Math.max(0, raiseUsd(answer, serviceReserve, raised, perDay(answer, other)));
        return new EvenPrice(
                raised,
                other,
                perHouse,
                answer.openings() == 0 ? 0 : perHouse * answer.houses() / answer.openings(),
                now.priceUsd() + perHouse);
    }

    /**
     * What to add to the price of one method so that a house earns the shop as much as by the other, every crew day that it takes more
     * paid for, mean of a house, USD; negative where it earns more as it is.
     *
     * @param crewDayUsd what a day of a crew is worth
     */
    public static double raiseUsd(Answer answer, double serviceReserve, Method raised, double crewDayUsd) {
        PerHouse now = answer.of(raised);
        PerHouse other = answer.of(answer.contrast().other(raised));
        return (crewDayUsd * (now.crewDays() - other.crewDays()) - (now.grossProfitUsd() - other.grossProfitUsd()))
                / (1 - serviceReserve);
    }

    private static double perDay(Answer answer, Method method) {
        return answer.of(method).grossProfitPerCrewDayUsd();
    }
}
