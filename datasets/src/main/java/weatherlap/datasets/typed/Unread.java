package weatherlap.datasets.typed;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text in the place of a number that could mean two things, or none, and what its typist may have meant. */
public final class Unread {
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}([,' \u00a0\u202f]\\d{3})+(\\.\\d*)?");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,9})[ -])?(\\d{1,9})/([1-9]\\d{0,8})");
    private static final Pattern DAY =
            Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})|\\d{1,2}-[A-Z][a-z]{2}|[A-Z][a-z]{2}-\\d{1,2}");
    private static final Pattern WITH_UNIT =
            Pattern.compile("[\\d ./]+(in\\.?|inch|inches|ft\\.?|feet|[\"'\u2032\u2033\u00b0])");

    private Unread() {}

    /** What to write instead, after a semicolon; empty: nothing that a machine could propose. */
    public static String hint(String cell) {
        if (GROUPED.matcher(cell).matches()) {
            return "; write it without separators between thousands";
        }
        if (COMMA.matcher(cell).matches()) {
            return "; write decimals with a point";
        }
        Matcher fraction = FRACTION.matcher(cell);
        if (fraction.matches()) {
            return "; write it as a decimal number, " + Amounts.shown(decimal(fraction));
        }
        Matcher day = DAY.matcher(cell);
        if (day.matches()) {
            return "; a spreadsheet turned what was typed into a date" + (day.group(1) == null ? "" : asTyped(day))
                    + "; write a decimal number";
        }
        return WITH_UNIT.matcher(cell).matches() ? "; write the number without its unit" : "";
    }

    /** The fraction that may have been typed where a day came out, 5/8 for May 8. */
    private static String asTyped(Matcher day) {
        int month = Integer.parseInt(day.group(2));
        int dayOfMonth = Integer.parseInt(day.group(3));
        return ", perhaps of " + month + "/" + dayOfMonth + ", which is " + Amounts.shown((double) month / dayOfMonth);
    }

    /** 31 1/2 as a carpenter writes it. */
    private static double decimal(Matcher fraction) {
        double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
        return whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
    }
}
