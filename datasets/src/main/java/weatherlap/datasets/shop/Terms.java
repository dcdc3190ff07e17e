package weatherlap.datasets.shop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The terms on which a shop names a price.
 *
 * @param warranty in the shop's words, at most 2,000 characters; may hold line breaks
 * @param priceHoldsDays 1 to 365
 * @param roundToUsd a price is rounded to the nearest multiple of it, 0.01 to 10,000 USD; empty: to the dollar
 * @param discount taken off the rounded price
 * @param tax put on what the discount leaves
 * @param deposit share of the total that is due when the order is signed, 0 to 1
 */
public record Terms(
        Optional<String> warranty,
        Optional<Integer> priceHoldsDays,
        OptionalDouble roundToUsd,
        Optional<Rate> discount,
        Optional<Rate> tax,
        OptionalDouble deposit) {
    static final Terms NONE = new Terms(
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty());

    /** From one to twelve, twice. */
    private static final List<String> COUNTED = List.of(
            "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "un",
            "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce");

    private static final Pattern NAMED_YEARS = Pattern.compile(
            "(?iu)\\b(\\d{1,2}|" + String.join("|", COUNTED) + ")[ \u00a0-]+(?:full +)?(?:years?|yrs?|a\u00f1os?)\\b");

    /**
     * A line of a price.
     *
     * @param label in the shop's words, at most 60 characters
     * @param share 0 to 1
     */
    public record Rate(String label, double share) {}

    /**
     * A price to the last line, in USD.
     *
     * @param price rounded as the shop says
     * @param discount to take off, 0 where there is none
     * @param tax to put on, 0 where there is none
     * @param deposit of the total; empty: none is asked for
     */
    public record Quote(double price, double discount, double tax, double total, OptionalDouble deposit) {}

    /**
     * What a price comes to on these terms; discount, tax and deposit are rounded to the cent, half up.
     *
     * @param priceUsd as the model has it
     */
    public Quote quote(double priceUsd) {
        double price = nearest(priceUsd, roundToUsd.orElse(1));
        double off = cents(price * discount.map(Rate::share).orElse(0.0));
        double on = cents((price - off) * tax.map(Rate::share).orElse(0.0));
        double total = cents(price - off + on);
        OptionalDouble down =
                deposit.isPresent() ? OptionalDouble.of(cents(total * deposit.getAsDouble())) : OptionalDouble.empty();
        return new Quote(price, off, on, total, down);
    }

    /** A price of a list, USD: rounded as the shop says; as it is where the shop says nothing. */
    public double rounded(double priceUsd) {
        return roundToUsd.isPresent() ? nearest(priceUsd, roundToUsd.getAsDouble()) : priceUsd;
    }

    /** The years that its warranty names, as "10 years", "two-year" or "dos años"; empty where it names none. */
    public Set<Integer> warrantyYears() {
        Set<Integer> years = new TreeSet<>();
        warranty.map(NAMED_YEARS::matcher).ifPresent(found -> {
            while (found.find()) {
                String number = found.group(1).toLowerCase(Locale.ROOT);
                years.add(
                        Character.isDigit(number.charAt(0))
                                ? Integer.parseInt(number)
                                : 1 + COUNTED.indexOf(number) % 12);
            }
        });
        return years;
    }

    private static double nearest(double priceUsd, double step) {
        return cents(Math.round(priceUsd / step) * step);
    }

    private static double cents(double usd) {
        return Math.round(usd * 100) / 100.0;
    }
}
