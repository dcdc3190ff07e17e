package weatherlap.sim.laps;

import java.util.Arrays;

/** Natural logarithms of the share of the water that each lap fault lets in, a column a draw; the same for all houses of a run. */
public final class AdmittedShares {
    private final double[][] logs;
    private final double[] highest;

    /** @param shares 0 to 1, by position of the fault in its table, then by draw; 0 lets nothing in */
    public AdmittedShares(double[][] shares) {
        logs = Arrays.stream(shares)
                .map(draws -> Arrays.stream(draws).map(AdmittedShares::log).toArray())
                .toArray(double[][]::new);
        highest = Arrays.stream(logs)
                .mapToDouble(draws -> Arrays.stream(draws).max().orElseThrow())
                .toArray();
    }

    private AdmittedShares(double[][] logs, double[] highest) {
        this.logs = logs;
        this.highest = highest;
    }

    /** The same but for one fault, which lets in so much at every draw, 0 to 1. */
    public AdmittedShares with(int fault, double share) {
        double[][] changed = logs.clone();
        double[] changedHighest = highest.clone();
        changedHighest[fault] = log(share);
        changed[fault] = new double[logs[fault].length];
        Arrays.fill(changed[fault], changedHighest[fault]);
        return new AdmittedShares(changed, changedHighest);
    }

    private static double log(double share) {
        return Math.log(Math.max(share, Double.MIN_VALUE));
    }

    int faults() {
        return logs.length;
    }

    /** By draw; that of the smallest number where nothing is let in, so that all are finite. */
    double[] logs(int fault) {
        return logs[fault];
    }

    /** The greatest of {@link #logs}. */
    double highest(int fault) {
        return highest[fault];
    }
}
