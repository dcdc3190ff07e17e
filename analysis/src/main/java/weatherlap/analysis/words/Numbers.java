package weatherlap.analysis.words;

import java.util.regex.Pattern;

/**
 * Numbers as text: a point as decimal mark, commas between thousands, a true minus sign; the same in every locale. What is not a
 * number becomes a dash.
 */
public final class Numbers {
    private static final Pattern ZEROS = Pattern.compile("\\.?0+$");

    private static final int GROUP = 3;
    private static final char THOUSANDS = ',';
    private static final String MINUS = "\u2212";
    private static final String NONE = "\u2013";
    private static final double MILLION = 1e6;
    private static final double BILLION = 1e9;

    private Numbers() {}

    /** 12345.67 with one decimal: 12,345.7. */
    public static String plain(double value, int decimals) {
        return Double.isFinite(value)
                ? (value < 0 && !isZero(value, decimals) ? MINUS : "") + size(value, decimals)
                : NONE;
    }

    /** At most so many decimals, without zeros at the end: 0.001, 12,345. */
    public static String trimmed(double value, int decimals) {
        String text = plain(value, decimals);
        return text.contains(".") ? ZEROS.matcher(text).replaceFirst("") : text;
    }

    /** With a plus or minus sign unless it rounds to zero. */
    public static String signed(double value, int decimals) {
        return (value > 0 && !isZero(value, decimals) ? "+" : "") + plain(value, decimals);
    }

    /** Whole dollars: $12,346; from ten million on in millions: $12.3M; from ten billion on in billions. */
    public static String usd(double value) {
        return Double.isFinite(value) ? (value < 0 && !isZero(value, 0) ? MINUS : "") + dollars(value) : NONE;
    }

    /** Whole dollars with a plus or minus sign unless they round to zero. */
    public static String signedUsd(double value) {
        return (value > 0 && Double.isFinite(value) && !isZero(value, 0) ? "+" : "") + usd(value);
    }

    /** A fraction as percent: 0.243 with one decimal: 24.3%. */
    public static String percent(double fraction, int decimals) {
        return plain(fraction * 100, decimals) + (Double.isFinite(fraction) ? "%" : "");
    }

    /** A number of things: 1 house, 2 houses. */
    public static String count(long number, String one, String many) {
        return plain(number, 0) + " " + (number == 1 ? one : many);
    }

    private static String dollars(double value) {
        double size = Math.abs(value);
        if (size >= 10 * BILLION) {
            return "$" + size(value / BILLION, 1) + "B";
        }
        return "$" + (size >= 10 * MILLION ? size(value / MILLION, 1) + "M" : size(value, 0));
    }

    private static boolean isZero(double value, int decimals) {
        return size(value, decimals).chars().noneMatch(c -> c >= '1' && c <= '9');
    }

    private static String size(double value, int decimals) {
        StringBuilder text = new StringBuilder(Decimals.fixed(Math.abs(value), decimals));
        int point = text.indexOf(".");
        for (int at = (point < 0 ? text.length() : point) - GROUP; at > 0; at -= GROUP) {
            text.insert(at, THOUSANDS);
        }
        return text.toString();
    }
}
