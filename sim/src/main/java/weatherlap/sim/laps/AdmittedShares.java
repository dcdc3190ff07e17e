package weatherlap.sim.laps;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Natural logarithms of the share of the water that each lap fault lets in, a column a draw; the same for all houses of a run. */
public final class AdmittedShares {
    private final Fault[] faults;

    /** @param shares 0 to 1, by position of the fault in its table, then by draw; 0 lets nothing in */
    public AdmittedShares(double[][] shares) {
        this(Arrays.stream(shares)
                .map(draws ->
                        Fault.of(Arrays.stream(draws).map(AdmittedShares::log).toArray()))
                .toArray(Fault[]::new));
    }

    private AdmittedShares(Fault[] faults) {
        this.faults = faults;
    }

    /** The same but for one fault, which lets in so much at every draw, 0 to 1. */
    public AdmittedShares with(int fault, double share) {
        double[] logs = new double[faults[fault].logs.length];
        Arrays.fill(logs, log(share));
        Fault[] changed = faults.clone();
        changed[fault] = Fault.of(logs);
        return new AdmittedShares(changed);
    }

    private static double log(double share) {
        return Math.log(Math.max(share, Double.MIN_VALUE));
    }

    int faults() {
        return faults.length;
    }

    Fault fault(int fault) {
        return faults[fault];
    }

    /**
     * One fault. A path that most draws leave dry is gone through by those alone that let in more than some level.
     *
     * @param logs by draw; that of the smallest number where nothing is let in, so that all are finite
     * @param levels of the logarithm, rising from −∞ to the greatest
     * @param above draws that lie above each level, in their order
     */
    @SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
    record Fault(double[] logs, double[] levels, int[][] above) {
        private static final int LEVELS = 8;

        private static Fault of(double[] logs) {
            double[] sorted = logs.clone();
            Arrays.sort(sorted);
            double[] levels = IntStream.rangeClosed(0, LEVELS)
                    .mapToDouble(level -> level == 0
                            ? Double.NEGATIVE_INFINITY
                            : sorted[Math.max(0, level * logs.length / LEVELS - 1)])
                    .toArray();
            int[][] above = Arrays.stream(levels)
                    .mapToObj(level -> IntStream.range(0, logs.length)
                            .filter(d -> logs[d] > level)
                            .toArray())
                    .toArray(int[][]::new);
            return new Fault(logs, levels, above);
        }

        /** Draws, in their order, without most of those that are dry; none where all are. */
        int[] wet(PathTerms path, double wettest) {
            int dry = 0; // the highest level that is known to be
            int next = levels.length; // the lowest that is known to be not, or none
            while (next - dry > 1) {
                int middle = dry + next >>> 1;
                if (path.isWet(levels[middle], wettest)) {
                    next = middle;
                } else {
                    dry = middle;
                }
            }
            return above[dry];
        }
    }
}
