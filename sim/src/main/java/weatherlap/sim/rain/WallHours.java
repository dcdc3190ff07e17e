package weatherlap.sim.rain;

import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import weatherlap.sim.Sum;

/** The wet hours whose wind blows towards one wall. */
final class WallHours {
    /** A wind along the wall reaches it only by rounding error. */
    private static final double ALONG_THE_WALL = 1e-9;

    private static final int YEARS_FOR_A_SPREAD = 3;

    private final WetHours wet;
    private final int[] rows;
    private final double[] cosine;
    private final double[] litres;
    private final double[] tangent;

    WallHours(WetHours wet, double normalEast, double normalNorth) {
        this.wet = wet;
        double[] all = new double[wet.count()];
        int reaching = 0;
        for (int hour = 0; hour < all.length; hour++) {
            all[hour] = wet.east[hour] * normalEast + wet.north[hour] * normalNorth;
            reaching += all[hour] > ALONG_THE_WALL ? 1 : 0;
        }
        rows = new int[reaching];
        cosine = new double[reaching];
        litres = new double[reaching];
        tangent = new double[reaching];
        int i = 0;
        for (int hour = 0; hour < all.length; hour++) {
            if (all[hour] > ALONG_THE_WALL) {
                rows[i] = hour;
                cosine[i] = all[hour];
                litres[i] = wet.isoLitres[hour] * all[hour];
                tangent[i] = wet.drivingRainFactor[hour] * wet.windMetresPerSecond[hour] * all[hour];
                i++;
            }
        }
    }

    int count() {
        return rows.length;
    }

    int hour(int i) {
        return wet.hour[rows[i]];
    }

    /** Term of the airfield index, L/m². */
    double litres(int i) {
        return litres[i];
    }

    /** Tangent of the angle between the falling rain and the wall, at 10 m in open country. */
    double tangent(int i) {
        return tangent[i];
    }

    double isoLitres() {
        return Sum.of(litres);
    }

    double ashraeLitres() {
        double[] hourly = new double[count()];
        for (int i = 0; i < hourly.length; i++) {
            hourly[i] =
                    Ashrae160.hourlyLitresPerM2(1, 1, wet.windMetresPerSecond[rows[i]], wet.rainMm[rows[i]], cosine[i]);
        }
        return Sum.of(hourly);
    }

    double straubeLitres() {
        double[] hourly = new double[count()];
        for (int i = 0; i < hourly.length; i++) {
            hourly[i] = Straube.hourlyLitresPerM2(
                    1,
                    wet.drivingRainFactor[rows[i]],
                    wet.windMetresPerSecond[rows[i]],
                    wet.rainMm[rows[i]],
                    cosine[i]);
        }
        return Sum.of(hourly);
    }

    /** Coefficient of variation of the annual index; empty under three whole years, or on a wall that stays dry. */
    OptionalDouble yearSpread(RainYears years) {
        double[] litres = new double[years.count()];
        for (int i = 0; i < count(); i++) {
            int year = years.yearOf(hour(i));
            if (year < litres.length) {
                litres[year] += litres(i);
            }
        }
        double mean = new Mean().evaluate(litres);
        return litres.length < YEARS_FOR_A_SPREAD || mean == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(new StandardDeviation().evaluate(litres) / mean);
    }
}
