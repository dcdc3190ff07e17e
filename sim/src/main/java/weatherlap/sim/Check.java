package weatherlap.sim;

import java.util.Locale;

/** Checks that records make of their own components: each returns the value, or says which one is wrong and what it must be. */
public final class Check {
    private Check() {}

    /** A finite number within [low, high]; NaN and infinities are refused. */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "The %s (%s) must be from %s to %s.", name, value, low, high));
        }
        return value;
    }

    /** A finite number above zero. */
    public static double positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "The %s (%s) must be a number above 0.", name, value));
        }
        return value;
    }

    /** A finite number, zero or above. */
    public static double notNegative(String name, double value) {
        return within(name, value, 0, Double.MAX_VALUE);
    }

    /** The same; the name is put together only where it is told. */
    public static double notNegative(String what, Object of, double value) {
        return value >= 0 && value <= Double.MAX_VALUE ? value : notNegative(what + of, value);
    }

    /** A finite number. */
    public static double finite(String name, double value) {
        return within(name, value, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /** A fraction from 0 to 1. */
    public static double fraction(String name, double value) {
        return within(name, value, 0, 1);
    }

    /** A whole number within [low, high]. */
    public static int within(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(
                    "The " + name + " (" + value + ") must be from " + low + " to " + high + ".");
        }
        return value;
    }

    /** A text that is not blank. */
    public static String text(String name, String value) {
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException("The " + name + " must not be empty.");
        }
        return value;
    }
}
