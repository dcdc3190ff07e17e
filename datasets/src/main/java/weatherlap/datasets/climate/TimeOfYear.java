package weatherlap.datasets.climate;

/** Where in the year and the day an hour stands; the northern hemisphere. */
final class TimeOfYear {
    private static final double HOURS_PER_YEAR = 8766;
    private static final double COLDEST_HOUR = 15 * 24;
    private static final double WARMEST_HOUR_OF_DAY = 15;

    private TimeOfYear() {}

    /** 1 in the middle of January, −1 in the middle of July. */
    static double winter(int hour) {
        return Math.cos(2 * Math.PI * (hour - COLDEST_HOUR) / HOURS_PER_YEAR);
    }

    /** 1 in mid-afternoon, −1 before dawn. */
    static double afternoon(int hour) {
        return Math.cos(2 * Math.PI * (hour - WARMEST_HOUR_OF_DAY) / 24);
    }
}
