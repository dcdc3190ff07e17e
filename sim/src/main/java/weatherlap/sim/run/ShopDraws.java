package weatherlap.sim.run;

import java.util.Arrays;
import weatherlap.sim.Units;

/**
 * What a job is to the shop, a value a draw; not to be changed.
 *
 * @param grossProfitUsd price less direct cost and service, USD; overhead is paid out of it
 * @param labourMinutes person-minutes
 */
@SuppressWarnings("ArrayRecordComponent") // draws, summed over houses by whoever needs the portfolio's
public record ShopDraws(double[] grossProfitUsd, double[] labourMinutes) {
    static ShopDraws of(MethodDraws drawn) {
        double[] gross = new double[drawn.costUsd().length];
        double overheadUsdPerMinute = drawn.pricing().overheadUsdPerCrewHour()
                * Units.minutesToHours(1)
                / drawn.weights().crewSize();
        for (int d = 0; d < gross.length; d++) {
            gross[d] = drawn.priceUsd() - drawn.costUsd()[d] + overheadUsdPerMinute * drawn.labourMinutes()[d];
        }
        return new ShopDraws(gross, drawn.labourMinutes());
    }

    static ShopDraws steady(MethodResult result, int draws) {
        double[] gross = new double[draws];
        double[] minutes = new double[draws];
        Arrays.fill(gross, result.grossProfitUsd());
        Arrays.fill(minutes, result.labourHours().mean() * Units.MINUTES_PER_HOUR);
        return new ShopDraws(gross, minutes);
    }
}
