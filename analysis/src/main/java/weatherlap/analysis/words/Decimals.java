package weatherlap.analysis.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: once rounded, half away from zero, never in exponents, never a zero with a minus sign. */
public final class Decimals {
    private static final double[] POWERS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};

    /** Below it a scaled number is off by less than 1e-5, so that only those next to a tie need care. */
    private static final double LARGEST_PLAIN = 1e10;

    private Decimals() {}

    /** @throws IllegalArgumentException for NaN and infinities */
    public static BigDecimal rounded(double value, int decimals) {
        return exact(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** With so many digits after the point, such as 12.30. */
    public static String fixed(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /** Appends {@link #fixed}. */
    public static void append(StringBuilder text, double value, int decimals) {
        double scaled = Math.abs(value) * (decimals < POWERS.length ? POWERS[decimals] : Double.NaN);
        double fraction = scaled - (long) scaled;
        boolean nearTie = Math.abs(fraction - 0.5) < 1e-4;
        if (!(scaled < LARGEST_PLAIN) || nearTie) {
            text.append(fixed(value, decimals));
            return;
        }
        long units = (long) (scaled + 0.5);
        long power = (long) POWERS[decimals];
        if (value < 0 && units != 0) {
            text.append('-');
        }
        text.append(units / power);
        if (decimals > 0) {
            text.append('.');
        }
        for (long place = power / 10; place > 0; place /= 10) {
            text.append((char) ('0' + units / place % 10));
        }
    }

    /** The shortest text that reads back as the same double, such as 0.1. */
    public static String plain(double value) {
        BigDecimal exact = exact(value);
        return (exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros()).toPlainString();
    }

    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A result (" + value + ") must be a finite number.");
        }
        return BigDecimal.valueOf(value);
    }
}
