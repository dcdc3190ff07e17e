package weatherlap.reports.output;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: once rounded, half away from zero, never in exponents, never a zero with a minus sign. */
public final class Decimals {
    private Decimals() {}

    /** @throws IllegalArgumentException for NaN and infinities */
    public static BigDecimal rounded(double value, int decimals) {
        return exact(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** With so many digits after the point, such as 12.30. */
    public static String fixed(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /** The shortest text that reads back as the same double, such as 0.1. */
    public static String plain(double value) {
        BigDecimal exact = exact(value);
        return (exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros()).toPlainString();
    }

    /** With a comma between thousands, for people: 12,345.6. */
    public static String grouped(double value, int decimals) {
        String fixed = fixed(value, decimals);
        int start = fixed.startsWith("-") ? 1 : 0;
        int point = fixed.indexOf('.');
        StringBuilder text = new StringBuilder(fixed);
        for (int i = (point < 0 ? fixed.length() : point) - 3; i > start; i -= 3) {
            text.insert(i, ',');
        }
        return text.toString();
    }

    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A result (" + value + ") must be a finite number.");
        }
        return BigDecimal.valueOf(value);
    }
}
