package weatherlap.sim;

/**
 * Every conversion of units, once. Lengths of the tables are in inches and feet, weather is metric; both are kept as they come and
 * converted here where they meet. Factors are exact by definition (international inch of 1959) unless noted.
 */
public final class Units {
    /** Metres in an inch (exact). */
    public static final double METRES_PER_INCH = 0.0254;

    /** Metres in a foot (exact). */
    public static final double METRES_PER_FOOT = 0.3048;

    public static final double INCHES_PER_FOOT = 12;

    /** Square inches in a square foot. */
    public static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

    public static final double MINUTES_PER_HOUR = 60;

    /** Metres per second in a mile per hour (exact). */
    public static final double METRES_PER_SECOND_PER_MPH = 0.44704;

    /** Kilograms in a pound (exact). */
    public static final double KILOGRAMS_PER_POUND = 0.45359237;

    /** Pounds in a short ton. */
    public static final double POUNDS_PER_SHORT_TON = 2000;

    private Units() {}

    public static double inchesToMetres(double inches) {
        return inches * METRES_PER_INCH;
    }

    public static double feetToMetres(double feet) {
        return feet * METRES_PER_FOOT;
    }

    public static double inchesToFeet(double inches) {
        return inches / INCHES_PER_FOOT;
    }

    public static double feetToInches(double feet) {
        return feet * INCHES_PER_FOOT;
    }

    public static double squareInchesToSquareFeet(double squareInches) {
        return squareInches / SQUARE_INCHES_PER_SQUARE_FOOT;
    }

    public static double minutesToHours(double minutes) {
        return minutes / MINUTES_PER_HOUR;
    }

    public static double kilogramsToPounds(double kilograms) {
        return kilograms / KILOGRAMS_PER_POUND;
    }

    public static double squareFeetToSquareMetres(double squareFeet) {
        return squareFeet * METRES_PER_FOOT * METRES_PER_FOOT;
    }

    public static double poundsToShortTons(double pounds) {
        return pounds / POUNDS_PER_SHORT_TON;
    }
}
