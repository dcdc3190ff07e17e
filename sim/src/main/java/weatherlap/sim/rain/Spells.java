package weatherlap.sim.rain;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * Spells of driving rain on one wall: a run of wet hours ends with so many dry ones (96 in ISO 15927-3). Each spell belongs to the year
 * of its first hour; a year is known by its worst.
 *
 * <p>The design spell is a quantile of the worst spells of the years, at the plotting position rank/(years + 1); with less than three
 * years it is the worst on file or close to it, and no statistic of the once-in-three-years spell.
 */
final class Spells {
    private final double worst;
    private final double[] worstOfYears;

    private Spells(double worst, double[] worstOfYears) {
        this.worst = worst;
        this.worstOfYears = worstOfYears;
    }

    static Spells of(WallHours hours, RainYears years, double dryHoursEnd) {
        double[] worstOfYears = new double[years.count()];
        double worst = 0;
        double spell = 0;
        int year = 0;
        int last = 0;
        for (int i = 0; i < hours.count(); i++) {
            int hour = hours.hour(i);
            if (i == 0 || hour - last > dryHoursEnd) {
                spell = 0;
                year = years.yearOf(hour);
            }
            spell += hours.litres(i);
            last = hour;
            worst = Math.max(worst, spell);
            if (year < worstOfYears.length) {
                worstOfYears[year] = Math.max(worstOfYears[year], spell);
            }
        }
        Arrays.sort(worstOfYears);
        return new Spells(worst, worstOfYears);
    }

    /** L/m², of all the weather. */
    double worst() {
        return worst;
    }

    /** L/m², not exceeded in this share of the years. */
    double quantile(double share) {
        return new Percentile().evaluate(worstOfYears, share * 100);
    }
}
