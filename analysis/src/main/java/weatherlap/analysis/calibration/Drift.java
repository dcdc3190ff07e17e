package weatherlap.analysis.calibration;

/**
 * How the time for the same work changes over the years.
 *
 * @param years from the first job to the last
 * @param perYear change a year, fraction; above 0 where jobs take longer
 * @param low lower end of the interval
 * @param high upper end
 */
public record Drift(double years, double perYear, double low, double high) {
    /** Whether the interval leaves out that nothing changes. */
    public boolean isSure() {
        return low > 0 || high < 0;
    }
}
