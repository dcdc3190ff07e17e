package weatherlap.datasets.typed;

/**
 * A number as most cells have it: at most 15 digits, a point at most among them and a minus at most before them. Its digits are a whole
 * number that a double holds exactly, and so is the power of ten that they are divided by; so the quotient, which is rounded once, is what
 * {@link Double#parseDouble} gives, without the work that other numbers ask of it.
 *
 * @see "Clinger 1990, How to read floating point numbers accurately"
 */
public final class PlainNumber {
    private static final int MOST_DIGITS = 15;

    /** Of a number that a long holds. */
    private static final int MOST_WHOLE_DIGITS = 18;

    private PlainNumber() {}

    /** The number; NaN where the text is none, or none so plain. */
    public static double of(String cell) {
        long whole = 0;
        double over = 1;
        int digits = 0;
        boolean point = false;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c >= '0' && c <= '9') {
                whole = 10 * whole + (c - '0');
                over = point ? 10 * over : over;
                digits++;
            } else if (c == '.' && !point) {
                point = true;
            } else if (c != '-' || i > 0) {
                return Double.NaN;
            }
            if (digits > MOST_DIGITS) {
                return Double.NaN;
            }
        }
        double number = digits == 0 ? Double.NaN : whole / over;
        return cell.startsWith("-") ? -number : number;
    }

    /** Whether the text is of digits that a long holds, with a sign before them at most. */
    public static boolean isWhole(String cell) {
        int sign = cell.startsWith("-") || cell.startsWith("+") ? 1 : 0;
        for (int i = sign; i < cell.length(); i++) {
            if (cell.charAt(i) < '0' || cell.charAt(i) > '9') {
                return false;
            }
        }
        return cell.length() > sign && cell.length() <= sign + MOST_WHOLE_DIGITS;
    }
}
