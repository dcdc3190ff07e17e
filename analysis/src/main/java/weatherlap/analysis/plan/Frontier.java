package weatherlap.analysis.plan;

import java.util.Arrays;
import java.util.List;

/** Sums over some walls of a {@link LimitedSearch} that no other beats on cost and on the bound of the chance; the cheaper first. */
record Frontier(double[] usd, double[] log) {
    static final Frontier NOTHING = new Frontier(new double[] {0}, new double[] {0});
    private static final Frontier NONE = new Frontier(new double[0], new double[0]);

    /** Those of one wall. */
    static Frontier of(List<BoundedOption> options) {
        Frontier unbeaten = NONE;
        for (BoundedOption option : options) {
            if (option.usd() < unbeaten.leastUsd(option.log())) {
                unbeaten = unbeaten.or(NOTHING.plus(option.usd(), option.log()));
            }
        }
        return unbeaten;
    }

    /** Each with each of some more walls. */
    Frontier with(Frontier more) {
        Frontier sums = NONE;
        for (int i = 0; i < more.usd.length; i++) {
            sums = sums.or(plus(more.usd[i], more.log[i]));
        }
        return sums;
    }

    private Frontier plus(double moreUsd, double moreLog) {
        double[] usds = usd.clone();
        double[] logs = log.clone();
        for (int i = 0; i < usds.length; i++) {
            usds[i] += moreUsd;
            logs[i] += moreLog;
        }
        return new Frontier(usds, logs);
    }

    private Frontier or(Frontier other) {
        double[] usds = new double[usd.length + other.usd.length];
        double[] logs = new double[usds.length];
        int kept = 0;
        int own = 0;
        for (int i = 0; i < usds.length; i++) {
            int others = i - own;
            boolean isOwn = others == other.usd.length || own < usd.length && usd[own] <= other.usd[others];
            usds[kept] = isOwn ? usd[own] : other.usd[others];
            logs[kept] = isOwn ? log[own++] : other.log[others];
            kept += kept == 0 || logs[kept] > logs[kept - 1] ? 1 : 0;
        }
        return new Frontier(Arrays.copyOf(usds, kept), Arrays.copyOf(logs, kept));
    }

    /** Least cost at which so much is reached; infinite: at none. */
    double leastUsd(double needed) {
        int low = 0;
        int high = log.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (log[middle] >= needed) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low == log.length ? Double.POSITIVE_INFINITY : usd[low];
    }
}
