package weatherlap.datasets.typed;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as a carpenter writes them: {@code 35-1/2}, {@code 37½"}, {@code 6'2"}, {@code 40 ft}. */
public final class Lengths {
    private static final double INCHES_A_FOOT = 12;
    private static final String AMOUNT =
            "(?:(\\d{1,6})(?:[ -]+| - )(\\d{1,4})/(\\d{1,4})|(\\d{1,4})/(\\d{1,4})|(\\d{1,6}(?:\\.\\d{0,9})?|\\.\\d{1,9}))";
    private static final Pattern ONE =
            Pattern.compile(AMOUNT + " ?-?(?:(\"|in\\.?|inch|inches)|('|ft\\.?|foot|feet))?");
    private static final Pattern BOTH =
            Pattern.compile("(\\d{1,5}) ?-?(?:'|ft\\.?|foot|feet)[ -]*" + AMOUNT + " ?-?(?:\"|in\\.?|inch|inches)?");

    private Lengths() {}

    /** In inches, where a number without a mark is in inches; empty: the text is no length. */
    public static OptionalDouble inches(String cell) {
        return inches(cell, 1);
    }

    /** In feet, where a number without a mark is in feet; empty: the text is no length. */
    public static OptionalDouble feet(String cell) {
        OptionalDouble inches = inches(cell, INCHES_A_FOOT);
        return inches.isPresent() ? OptionalDouble.of(inches.getAsDouble() / INCHES_A_FOOT) : inches;
    }

    private static OptionalDouble inches(String cell, double inchesOfBare) {
        String plain = Typing.plain(cell);
        Matcher both = BOTH.matcher(plain);
        if (both.matches()) {
            double inches = amount(both, 2);
            return inches < INCHES_A_FOOT
                    ? OptionalDouble.of(INCHES_A_FOOT * Integer.parseInt(both.group(1)) + inches)
                    : OptionalDouble.empty();
        }
        Matcher one = ONE.matcher(plain);
        if (!one.matches() || Double.isNaN(amount(one, 1))) {
            return OptionalDouble.empty();
        }
        double of = one.group(7) != null ? 1 : one.group(8) != null ? INCHES_A_FOOT : inchesOfBare;
        return OptionalDouble.of(of * amount(one, 1));
    }

    /** A number, with or without a fraction and without a mark; empty: the text is none. */
    public static OptionalDouble number(String cell) {
        Matcher one = ONE.matcher(Typing.plain(cell));
        boolean bare = one.matches() && one.group(7) == null && one.group(8) == null;
        return bare && !Double.isNaN(amount(one, 1)) ? OptionalDouble.of(amount(one, 1)) : OptionalDouble.empty();
    }

    /** Not a number for a fraction that is none, such as 7/0, or for one above 1 after a whole number. */
    private static double amount(Matcher found, int first) {
        if (found.group(first + 5) != null) {
            return Double.parseDouble(found.group(first + 5));
        }
        boolean mixed = found.group(first) != null;
        double above = Integer.parseInt(found.group(mixed ? first + 1 : first + 3));
        double below = Integer.parseInt(found.group(mixed ? first + 2 : first + 4));
        if (below == 0 || mixed && above >= below) {
            return Double.NaN;
        }
        return (mixed ? Integer.parseInt(found.group(first)) : 0) + above / below;
    }
}
