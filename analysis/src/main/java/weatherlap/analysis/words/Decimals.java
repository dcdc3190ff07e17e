package weatherlap.analysis.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

/** Numbers as text: once rounded, half away from zero, never in exponents, never a zero with a minus sign. */
public final class Decimals {
    /** The most that {@link #put} writes: a sign, ten digits and a point. */
    public static final int LONGEST = 12;

    private static final int[] POWERS = {
        1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
    };

    /** Below it a scaled number is off by less than 1e-5, so that only those next to a tie need care. */
    private static final double LARGEST_PLAIN = 2e9;

    private static final int MOST_DECIMALS = 6;

    /** A tenth of an int that is not negative is this many times it, over 2<sup>35</sup>: a division takes longer. */
    private static final long TENTH = 0xCCCC_CCCDL;

    private Decimals() {}

    /** @throws IllegalArgumentException for NaN and infinities */
    public static BigDecimal rounded(double value, int decimals) {
        return exact(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** With so many digits after the point, such as 12.30. */
    public static String fixed(double value, int decimals) {
        byte[] text = new byte[LONGEST];
        int end = put(value, decimals, text, 0);
        return end < 0
                ? rounded(value, decimals).toPlainString()
                : new String(text, 0, end, StandardCharsets.ISO_8859_1);
    }

    /**
     * Writes {@link #fixed} where that takes no long arithmetic, which is nearly always.
     *
     * @param at where to write it, with room for the {@link #LONGEST}
     * @return where it ends; negative where it was not written
     */
    public static int put(double value, int decimals, byte[] text, int at) {
        double scaled = Math.abs(value) * (decimals <= MOST_DECIMALS ? POWERS[decimals] : Double.NaN);
        if (!(scaled < LARGEST_PLAIN)) {
            return -1;
        }
        int units = (int) (scaled + 0.5);
        if (Math.abs(scaled - units) > 0.4999 && !isBinary(value)) {
            return -1;
        }
        int start = at;
        if (value < 0 && units != 0) {
            text[start++] = '-';
        }
        int digits = decimals + 1;
        while (digits < POWERS.length && units >= POWERS[digits]) {
            digits++;
        }
        int point = start + digits - decimals;
        if (decimals == 0) {
            digits(units, text, start, point);
            return point;
        }
        int end = point + 1 + decimals;
        int whole = digits(units, text, point + 1, end);
        text[point] = '.';
        digits(whole, text, start, point);
        return end;
    }

    /** Of whole 1,024ths: scaled it is exact, so that what lies next to a tie is one. */
    private static boolean isBinary(double value) {
        double scaled = 1024 * value;
        return scaled == (long) scaled;
    }

    /** Writes the last digits of a number; what is left of it stands before them. */
    private static int digits(int number, byte[] text, int from, int to) {
        int left = number;
        for (int place = to - 1; place >= from; place--) {
            int tens = (int) (left * TENTH >>> 35);
            text[place] = (byte) ('0' + left - 10 * tens);
            left = tens;
        }
        return left;
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
