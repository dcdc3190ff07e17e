package weatherlap.reports.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Terms;
import weatherlap.datasets.shop.Terms.Quote;

/**
 * Prices as a family reads them.
 *
 * @param terms of the shop
 * @param shown whether prices stand on the sheet at all
 */
public record Prices(Terms terms, boolean shown) {
    Quote quote(OfferedPlan choice) {
        return terms.quote(choice.plan().priceUsd());
    }

    /** A firm amount: whole dollars, with cents where it has some. */
    static String usd(double usd) {
        boolean whole = usd == Math.rint(usd);
        return whole ? Numbers.usd(usd) : exact(usd);
    }

    /** An amount of an account, to the cent. */
    static String exact(double usd) {
        return "$" + Numbers.plain(usd, 2);
    }

    /** Something to take off. */
    static String minus(double usd) {
        return "\u2212" + exact(usd);
    }

    /** A share in percent, as short as it can be: 6.5%. */
    static String percent(double share) {
        return BigDecimal.valueOf(100 * share)
                        .setScale(3, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + "%";
    }
}
