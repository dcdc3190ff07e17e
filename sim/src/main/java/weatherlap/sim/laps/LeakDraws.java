package weatherlap.sim.laps;

import java.util.Arrays;

/** What {@link LeakModel#run} writes into: one for each thread, used again for each opening. The arrays are its own. */
public final class LeakDraws {
    private final double[] damage;
    private final double[] callback;
    final double[] sum;
    final double[] early;
    double[][] byPath = new double[0][];
    double[] contribution = new double[0];
    double[] discounting = new double[0];

    public LeakDraws(int draws) {
        damage = new double[draws];
        callback = new double[draws];
        sum = new double[draws];
        early = new double[draws];
    }

    void prepare(int paths) {
        if (byPath.length < paths) {
            byPath = new double[paths][damage.length];
            contribution = new double[paths];
            discounting = new double[paths];
        }
        Arrays.fill(damage, 1);
        Arrays.fill(callback, 1);
        Arrays.fill(sum, 0);
    }

    /** Takes a path in that does no damage in any draw. */
    void addDry(int path) {
        Arrays.fill(byPath[path], 0);
        discounting[path] = 0;
    }

    /** Takes one more path in: no damage so far, and none by it. */
    void add(double[] own) {
        for (int d = 0; d < own.length; d++) {
            damage[d] *= 1 - own[d];
            callback[d] *= 1 - early[d];
            sum[d] += own[d];
        }
    }

    /** Chance of leak damage within the horizon, by draw. */
    public double[] damage() {
        return damage;
    }

    /** Chance of leak damage within the warranty, by draw. */
    public double[] callback() {
        return callback;
    }

    /**
     * What each path adds to the mean of {@link #damage()}, in the order of {@link LeakModel#paths()}; they sum to it. Entries past the
     * last path mean nothing.
     */
    public double[] contribution() {
        return contribution;
    }
}
