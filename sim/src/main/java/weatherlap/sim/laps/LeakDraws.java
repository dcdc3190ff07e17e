package weatherlap.sim.laps;

import java.util.Arrays;

/** What {@link LeakModel#run} writes into: one for each thread, used again for each opening. The arrays are its own. */
public final class LeakDraws {
    private final double[] damage;
    final double[] sum;
    double[][] byPath = new double[0][];
    double[] contribution = new double[0];
    double[] discounting = new double[0];
    double[] warranted = new double[0];

    public LeakDraws(int draws) {
        damage = new double[draws];
        sum = new double[draws];
    }

    void prepare(int paths) {
        if (byPath.length < paths) {
            byPath = new double[paths][damage.length];
            contribution = new double[paths];
            discounting = new double[paths];
            warranted = new double[paths];
        }
        Arrays.fill(damage, 1);
        Arrays.fill(sum, 0);
    }

    /** Takes a path in that does no damage in any draw. */
    void addDry(int path) {
        Arrays.fill(byPath[path], 0);
        discounting[path] = 0;
        warranted[path] = 0;
    }

    /** Takes one more path in: no damage so far, and none by it. */
    void add(double[] own) {
        for (int d = 0; d < own.length; d++) {
            damage[d] *= 1 - own[d];
            sum[d] += own[d];
        }
    }

    /** Chance of leak damage within the horizon, by draw. */
    public double[] damage() {
        return damage;
    }

    /**
     * What each path adds to the mean of {@link #damage()}, in the order of {@link LeakModel#paths()}; they sum to it. Entries past the
     * last path mean nothing.
     */
    public double[] contribution() {
        return contribution;
    }
}
