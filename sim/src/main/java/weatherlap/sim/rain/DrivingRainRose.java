package weatherlap.sim.rain;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import weatherlap.sim.Check;

/**
 * Driving rain by the bearing of the wall, with the ranks that two standards give the bearings and where they disagree.
 *
 * @param rows at equal steps from north, clockwise
 * @param spearman rank correlation of the two indices over the rows, −1 to 1; 1 where a rose is without any difference
 */
public record DrivingRainRose(List<Row> rows, double spearman) {
    /**
     * One bearing.
     *
     * @param bearingDeg outward normal of the wall
     * @param isoLitresPerM2Year airfield index of ISO 15927-3, mean of the years
     * @param ashraeLitresPerM2Year load of ASHRAE 160 with F_E = F_D = 1
     * @param straubeLitresPerM2Year Straube's free-wind driving rain
     * @param worstSpellLitresPerM2 worst airfield spell on file
     * @param wetHours on file with rain driven towards this wall
     * @param isoRank 1 for the wettest; ties share their mean rank
     * @param ashraeRank likewise
     */
    public record Row(
            double bearingDeg,
            double isoLitresPerM2Year,
            double ashraeLitresPerM2Year,
            double straubeLitresPerM2Year,
            double worstSpellLitresPerM2,
            int wetHours,
            double isoRank,
            double ashraeRank) {
        /** Places by which the second opinion holds this wall drier (above 0) or wetter (below 0) than the first. */
        public double rankGap() {
            return ashraeRank - isoRank;
        }
    }

    public DrivingRainRose {
        Check.within("rank correlation", spearman, -1, 1);
        rows = List.copyOf(rows);
    }

    /** @param stepDeg whole degrees, a divisor of 360 */
    public static DrivingRainRose of(RainClimate climate, int stepDeg) {
        if (stepDeg < 1 || 360 % stepDeg != 0) {
            throw new IllegalArgumentException("The step (" + stepDeg + ") must divide 360 degrees.");
        }
        List<WallRain> walls = IntStream.range(0, 360 / stepDeg)
                .mapToObj(i -> climate.wall((double) i * stepDeg))
                .toList();
        double[] isoRanks = ranks(walls, WallRain::isoLitresPerM2Year);
        double[] ashraeRanks = ranks(walls, WallRain::ashraeLitresPerM2Year);
        List<Row> rows = IntStream.range(0, walls.size())
                .mapToObj(i -> row((double) i * stepDeg, walls.get(i), isoRanks[i], ashraeRanks[i]))
                .toList();
        double spearman = new SpearmansCorrelation().correlation(isoRanks, ashraeRanks);
        return new DrivingRainRose(rows, Double.isNaN(spearman) ? 1 : Math.max(-1, Math.min(1, spearman)));
    }

    private static Row row(double bearingDeg, WallRain wall, double isoRank, double ashraeRank) {
        return new Row(
                bearingDeg,
                wall.isoLitresPerM2Year(),
                wall.ashraeLitresPerM2Year(),
                wall.straubeLitresPerM2Year(),
                wall.worstSpellLitresPerM2(),
                wall.wetHours(),
                isoRank,
                ashraeRank);
    }

    private static double[] ranks(List<WallRain> walls, ToDoubleFunction<WallRain> index) {
        return new NaturalRanking()
                .rank(walls.stream().mapToDouble(w -> -index.applyAsDouble(w)).toArray());
    }

    /** The rows that the two standards rank apart by so many places or more, furthest apart first. */
    public List<Row> disagreements(double places) {
        return rows.stream()
                .filter(row -> Math.abs(row.rankGap()) >= places)
                .sorted(Comparator.comparingDouble((Row row) -> -Math.abs(row.rankGap())))
                .toList();
    }
}
