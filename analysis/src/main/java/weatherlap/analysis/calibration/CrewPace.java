package weatherlap.analysis.calibration;

import weatherlap.sim.Check;

/**
 * How a crew's time compares with that of an ordinary crew at the same work, shrunk towards it as far as its jobs leave open.
 *
 * @param jobs that tell of it
 * @param factor its minutes over those of an ordinary crew
 * @param low lower end of the interval
 * @param high upper end
 */
public record CrewPace(String crew, int jobs, double factor, double low, double high) {
    public CrewPace {
        Check.text("crew", crew);
        Check.positive("factor", factor);
    }

    /** Whether the interval leaves out the pace of an ordinary crew. */
    public boolean isApart() {
        return low > 1 || high < 1;
    }
}
