package weatherlap.sim.rain;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

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
        for (int i = 0; i < all.length; i++) {
            all[i] = wet.east[i] * normalEast + wet.north[i] * normalNorth;
        }
        rows = IntStream.range(0, all.length)
                .filter(i -> all[i] > ALONG_THE_WALL)
                .toArray();
        cosine = IntStream.of(rows).mapToDouble(i -> all[i]).toArray();
        litres = IntStream.of(rows).mapToDouble(i -> wet.isoLitres[i] * all[i]).toArray();
        tangent = IntStream.of(rows)
                .mapToDouble(i -> wet.drivingRainFactor[i] * wet.windMetresPerSecond[i] * all[i])
                .toArray();
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
        return DoubleStream.of(litres).sum();
    }

    double ashraeLitres() {
        return IntStream.range(0, count())
                .mapToDouble(i -> Ashrae160.hourlyLitresPerM2(
                        1, 1, wet.windMetresPerSecond[rows[i]], wet.rainMm[rows[i]], cosine[i]))
                .sum();
    }

    double straubeLitres() {
        return IntStream.range(0, count())
                .mapToDouble(i -> Straube.hourlyLitresPerM2(
                        1,
                        wet.drivingRainFactor[rows[i]],
                        wet.windMetresPerSecond[rows[i]],
                        wet.rainMm[rows[i]],
                        cosine[i]))
                .sum();
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
