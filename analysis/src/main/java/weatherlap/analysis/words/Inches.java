package weatherlap.analysis.words;

import java.util.Locale;

/** Lengths as a tape measure reads them. */
public final class Inches {

    private static final int SIXTEENTHS = 16;

    private Inches() {}

    /** The nearest sixteenth of an inch, as a reduced fraction: 35 1/2″. */
    public static String text(double inches) {
        long sixteenths = Math.round(Math.abs(inches) * SIXTEENTHS);
        long whole = sixteenths / SIXTEENTHS;
        long rest = sixteenths % SIXTEENTHS;
        String sign = inches < 0 && sixteenths > 0 ? "\u2212" : "";
        if (rest == 0) {
            return sign + whole + "\u2033";
        }
        int shift = Long.numberOfTrailingZeros(rest);
        String fraction = (rest >> shift) + "/" + (SIXTEENTHS >> shift);
        return sign + (whole == 0 ? "" : whole + " ") + fraction + "\u2033";
    }

    /** Feet and inches to the nearest inch: 8′ 6″. */
    public static String feet(double inches) {
        long whole = Math.round(inches);
        return whole % 12 == 0
                ? whole / 12 + "\u2032"
                : String.format(Locale.ROOT, "%d\u2032 %d\u2033", whole / 12, whole % 12);
    }
}
