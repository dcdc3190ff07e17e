package weatherlap.sim.rain;

import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Check;

/**
 * The part of a wall's driving rain that passes under the eave.
 *
 * <p>In an hour the rain slants by tanβ = DRF · U · cosθ, so an eave of projection P keeps the wall dry down to
 *
 * <pre>
 * h = P / (DRF · U · cosθ)
 * </pre>
 *
 * below it (geometry; drops of the median size, no eddies). U is the wind at the wall: a factor times the wind at 10 m in open country.
 * The hours are sorted by tanβ once; with running sums of the rain a, and of a/tanβ, the
 * share that reaches a depth, or on the mean a band of depths, is a look-up that equals the sum over the hours to rounding error:
 *
 * <pre>
 * reaches(y)      = Σ a [tanβ &gt; P/y] / Σ a
 * mean(y1 to y2)  = Σ a · max(0, y2 − max(y1, h)) / ((y2 − y1) Σ a)
 * </pre>
 */
final class EaveShadow {
    /** tanβ, steepest (least slanting) first. */
    private final double[] tangent;
    /** Sum of the rain of hour i and all that slant more. */
    private final double[] litresFrom;
    /** Likewise of rain over tangent. */
    private final double[] litresOverTangentFrom;

    /** By the leading bits of a number, counted from those of the least tangent: the first hour whose tangent has them or is greater. */
    private final int[] firstOf;

    private EaveShadow(double[] tangent, double[] litresFrom, double[] litresOverTangentFrom) {
        this.tangent = tangent;
        firstOf = firstOf(tangent);
        this.litresFrom = litresFrom;
        this.litresOverTangentFrom = litresOverTangentFrom;
    }

    /** Of the hours of one or more walls, taken together; hours that slant alike stay in their order. */
    static EaveShadow of(List<WallHours> walls) {
        int n = walls.stream().mapToInt(WallHours::count).sum();
        double[] slant = new double[n];
        double[] rain = new double[n];
        int hour = 0;
        for (WallHours hours : walls) {
            for (int i = 0; i < hours.count(); i++, hour++) {
                slant[hour] = hours.tangent(i);
                rain[hour] = hours.litres(i);
            }
        }
        double[] tangent = new double[n];
        double[] litres = new double[n + 1];
        double[] litresOverTangent = new double[n + 1];
        int place = 0;
        for (int next : byRoughly(slant)) {
            int at = place++;
            for (; at > 0 && tangent[at - 1] > slant[next]; at--) {
                tangent[at] = tangent[at - 1];
                litres[at] = litres[at - 1];
            }
            tangent[at] = slant[next];
            litres[at] = rain[next];
        }
        for (int i = n - 1; i >= 0; i--) {
            litresOverTangent[i] = litresOverTangent[i + 1] + litres[i] / tangent[i];
            litres[i] += litres[i + 1];
        }
        return new EaveShadow(tangent, litres, litresOverTangent);
    }

    /** Places of positive numbers in rising order, but for numbers all but equal: the number in front, its place in its last bits. */
    private static int[] byRoughly(double[] values) {
        long lastBits = Long.highestOneBit(Math.max(1, values.length)) * 2 - 1;
        long[] keys = new long[values.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = Double.doubleToRawLongBits(values[i]) & ~lastBits | i;
        }
        Arrays.sort(keys);
        int[] places = new int[keys.length];
        for (int i = 0; i < places.length; i++) {
            places[i] = (int) (keys[i] & lastBits);
        }
        return places;
    }

    /**
     * Share of the driving rain that reaches a point, 0 to 1.
     *
     * @param depthM below the eave
     * @param overhangM projection of the eave; 0: none, all of it arrives
     * @param windFactor wind at the wall over wind at 10 m in open country
     */
    double share(double depthM, double overhangM, double windFactor) {
        Check.notNegative("depth under the eave", depthM);
        return overhangM == 0 ? 1 : ratio(litresFrom[firstAbove(overhangM, windFactor * depthM)]);
    }

    /** Mean share over a band of the wall from one depth below the eave to a greater one, m. */
    double meanShare(double fromDepthM, double toDepthM, double overhangM, double windFactor) {
        if (overhangM == 0 || toDepthM - fromDepthM < 1e-9) {
            return share(fromDepthM, overhangM, windFactor);
        }
        int reachesBottom = firstAbove(overhangM, windFactor * toDepthM);
        int reachesTop = firstAbove(overhangM, windFactor * fromDepthM);
        double wholeBand = litresFrom[reachesTop] * (toDepthM - fromDepthM);
        double partOfBand = toDepthM * (litresFrom[reachesBottom] - litresFrom[reachesTop])
                - overhangM / windFactor * (litresOverTangentFrom[reachesBottom] - litresOverTangentFrom[reachesTop]);
        return ratio((wholeBand + partOfBand) / (toDepthM - fromDepthM));
    }

    private double ratio(double litres) {
        return litresFrom[0] == 0 ? 0 : Math.max(0, Math.min(1, litres / litresFrom[0]));
    }

    private static int[] firstOf(double[] tangent) {
        if (tangent.length == 0) {
            return new int[1];
        }
        int least = leading(tangent[0]);
        int[] firstOf = new int[leading(tangent[tangent.length - 1]) - least + 2];
        int hour = 0;
        for (int place = 0; place < firstOf.length; place++) {
            while (hour < tangent.length && leading(tangent[hour]) < least + place) {
                hour++;
            }
            firstOf[place] = hour;
        }
        return firstOf;
    }

    /** The bits of a positive number down to a 32nd of its power of two, which rise with it. */
    private static int leading(double number) {
        return (int) (Double.doubleToRawLongBits(number) >>> 47);
    }

    /** First hour whose tangent exceeds overhang over depth. */
    private int firstAbove(double overhangM, double scaledDepthM) {
        double limit = Math.nextUp(overhangM / scaledDepthM);
        int place = tangent.length == 0 ? 0 : leading(limit) - leading(tangent[0]);
        if (place < 0) {
            return 0;
        }
        return place < firstOf.length - 1
                ? firstNotUnder(tangent, limit, firstOf[place], firstOf[place + 1])
                : tangent.length;
    }

    private static int firstNotUnder(double[] ascending, double limit, int from, int to) {
        int low = from;
        int high = to;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ascending[middle] < limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
