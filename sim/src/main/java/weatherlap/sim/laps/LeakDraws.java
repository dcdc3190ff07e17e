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

    /** Paths whose sums are taken together: each waits for its own last one, not for the others'. */
    private static final int ABREAST = 4;

    private final int mostColumns;
    private final double[] damage;
    private final double[] sum;
    private double[] contribution = new double[0];
    private PathDraws[] ofPath = new PathDraws[0];
    /** Damage of the paths that do any, by draw, and their places among all; then {@link #dry}. */
    private double[][] wet = new double[ABREAST][];

    private int wets;
    private double mean;
    private int[] place = new int[0];
    private final double[] dry;
    private final double[] certain;
    private final double[] position;

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
        dry = new double[draws];
        certain = new double[draws];
        position = new double[draws];
        Arrays.fill(certain, 1);
    }

    void run(PathTerms[] paths, LeakCauses shared) {
        prepare(paths.length, shared);
        wets = 0;
        for (int f = 0; f < paths.length; f++) {
            PathDraws path = draws(paths[f]);
            ofPath[f] = path;
            contribution[f] = 0;
            if (path.wet) {
                wet[wets] = path.damage;
                place[wets++] = f;
            }
        }
        Arrays.fill(wet, wets, wets + ABREAST - 1, dry);
        if (wets == 0) {
            System.arraycopy(dry, 0, damage, 0, dry.length);
            mean = 0;
            return;
        }
        first(damage, sum, wet[0], wet[1]);
        for (int w = 2; w < wets; w += 2) {
            add(damage, sum, wet[w], wet[w + 1]);
        }
        mean = finish(damage, sum) / damage.length;
        for (int w = 0; w < wets; w += ABREAST) {
            share(w);
        }
    }

    /** Drops the paths of openings so far: those to come are like none of them. */
    public void forget() {
        causes = null;
    }

    private void prepare(int paths, LeakCauses shared) {
        if (ofPath.length < paths) {
            contribution = new double[paths];
            ofPath = new PathDraws[paths];
            wet = new double[paths + ABREAST][];
            place = new int[paths + ABREAST];
        }
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
        made.draw(path, causes, wettest, dry, position);
        made.before = latest[path.fault()];
        latest[path.fault()] = made;
        return made;
    }

    private static void first(double[] none, double[] sum, double[] one, double[] two) {
        for (int d = 0; d < none.length; d++) {
            none[d] = (1 - one[d]) * (1 - two[d]);
            sum[d] = one[d] + two[d];
        }
    }

    private static void add(double[] none, double[] sum, double[] one, double[] two) {
        for (int d = 0; d < none.length; d++) {
            none[d] = none[d] * (1 - one[d]) * (1 - two[d]);
            sum[d] = sum[d] + one[d] + two[d];
        }
    }

    /** From the chance of none to the chance of any, which are summed, and from the sum to the weight of each in it. */
    private static double finish(double[] damage, double[] sum) {
        double total = 0;
        for (int d = 0; d < damage.length; d++) {
            double any = 1 - damage[d];
            damage[d] = any;
            sum[d] = sum[d] > 0 ? any / sum[d] : 0;
            total += any;
        }
        return total;
    }

    /** Contributions of the wet paths from one on. */
    private void share(int first) {
        double[] one = wet[first];
        double[] two = wet[first + 1];
        double[] three = wet[first + 2];
        double[] four = wet[first + 3];
        double ofOne = 0;
        double ofTwo = 0;
        double ofThree = 0;
        double ofFour = 0;
        double[] weights = sum;
        for (int d = 0; d < one.length; d++) {
            double weight = weights[d];
            ofOne += one[d] * weight;
            ofTwo += two[d] * weight;
            ofThree += three[d] * weight;
            ofFour += four[d] * weight;
        }
        double[] of = {ofOne, ofTwo, ofThree, ofFour};
        for (int k = 0; k < of.length && wet[first + k] != dry; k++) {
            contribution[place[first + k]] = of[k] / damage.length;
        }
    }

    /** Chance of leak damage within the horizon, by draw. */
    public double[] damage() {
        return damage;
    }

    /** The mean of {@link #damage()}. */
    public double mean() {
        return mean;
    }

    /** Whether no draw does damage. */
    public boolean isDry() {
        return wets == 0;
    }

    /** Chance of no leak damage within the horizon, by draw: a column that stays, not to be changed. */
    public double[] none() {
        if (isDry()) {
            return certain;
        }
        double[] none = new double[damage.length];
        for (int d = 0; d < none.length; d++) {
            none[d] = 1 - damage[d];
        }
        return none;
    }

    /**
     * What each path adds to the {@link #mean()}, in the order of {@link LeakModel#paths()}; they sum to it. Entries past the
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
