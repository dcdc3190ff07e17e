package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What {@link LeakModel#run} writes into: one for each thread, used again for each opening. The arrays are its own. As long as the causes
 * are the same, a path that does the same as one before it, at another opening or after the work of another method, is not drawn again.
 */
public final class LeakDraws {
    /** Numbers kept of the paths of a house, 32 MB: past them, at the next opening, all are forgotten. */
    private static final int MOST_KEPT = 1 << 22;

    private final int mostColumns;
    private final double[] damage;
    private final double[] sum;
    private double[] contribution = new double[0];
    private PathDraws[] ofPath = new PathDraws[0];

    private LeakCauses causes;
    private double wettest;
    /** Those of the causes first. */
    private final List<PathDraws> columns = new ArrayList<>();

    private int drawn;
    /** By fault, the path drawn last. */
    private PathDraws[] latest = new PathDraws[0];

    public LeakDraws(int draws) {
        this(draws, MOST_KEPT / draws);
    }

    /** @param mostColumns that are kept from one opening to the next */
    LeakDraws(int draws, int mostColumns) {
        this.mostColumns = mostColumns;
        damage = new double[draws];
        sum = new double[draws];
    }

    void run(List<PathTerms> paths, LeakCauses shared) {
        prepare(paths.size(), shared);
        for (int f = 0; f < paths.size(); f++) {
            ofPath[f] = draws(paths.get(f));
            if (ofPath[f].wet) {
                add(ofPath[f].damage);
            }
        }
        finish(paths.size());
    }

    private void prepare(int paths, LeakCauses shared) {
        if (contribution.length < paths) {
            contribution = new double[paths];
            ofPath = new PathDraws[paths];
        }
        Arrays.fill(damage, 1);
        Arrays.fill(sum, 0);
        if (causes != shared || drawn > mostColumns) {
            causes = shared;
            wettest = shared.wettest();
            drawn = 0;
            latest = new PathDraws[shared.admitted().faults()];
        }
    }

    private PathDraws draws(PathTerms path) {
        for (PathDraws one = latest[path.fault()]; one != null; one = one.before) {
            if (one.areOf(path)) {
                return one;
            }
        }
        if (drawn == columns.size()) {
            columns.add(new PathDraws(damage.length));
        }
        PathDraws made = columns.get(drawn++);
        made.draw(path, causes, wettest);
        made.before = latest[path.fault()];
        latest[path.fault()] = made;
        return made;
    }

    private void add(double[] own) {
        for (int d = 0; d < own.length; d++) {
            damage[d] *= 1 - own[d];
            sum[d] += own[d];
        }
    }

    private void finish(int paths) {
        double[] weight = sum;
        for (int d = 0; d < damage.length; d++) {
            damage[d] = 1 - damage[d];
            weight[d] = weight[d] > 0 ? damage[d] / weight[d] : 0;
        }
        for (int f = 0; f < paths; f++) {
            contribution[f] = ofPath[f].wet ? weighted(ofPath[f].damage, weight) / damage.length : 0;
        }
    }

    private static double weighted(double[] own, double[] weight) {
        double total = 0;
        for (int d = 0; d < own.length; d++) {
            total += own[d] * weight[d];
        }
        return total;
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

    /** Columns that there are. */
    int columns() {
        return columns.size();
    }

    /** One path of the opening. */
    PathDraws ofPath(int path) {
        return ofPath[path];
    }
}
