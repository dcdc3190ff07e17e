package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Sums over some walls of a {@link LimitedSearch} that no other beats on cost and on the bound of the chance; the cheaper first. */
record Frontier(double[] usd, double[] log) {
    static final Frontier NOTHING = new Frontier(new double[] {0}, new double[] {0});

    private record Sum(double usd, double log) {}

    Frontier with(List<BoundedOption> options) {
        List<Sum> sums = new ArrayList<>(options.size() * usd.length);
        for (BoundedOption option : options) {
            add(option.usd(), option.log(), sums);
        }
        return of(sums);
    }

    Frontier with(Frontier more) {
        List<Sum> sums = new ArrayList<>(more.usd.length * usd.length);
        for (int i = 0; i < more.usd.length; i++) {
            add(more.usd[i], more.log[i], sums);
        }
        return of(sums);
    }

    private void add(double moreUsd, double moreLog, List<Sum> sums) {
        for (int i = 0; i < usd.length; i++) {
            sums.add(new Sum(usd[i] + moreUsd, log[i] + moreLog));
        }
    }

    private static Frontier of(List<Sum> sums) {
        sums.sort(Comparator.comparingDouble(Sum::usd));
        List<Sum> kept = new ArrayList<>();
        for (Sum sum : sums) {
            if (kept.isEmpty() || sum.log > kept.get(kept.size() - 1).log) {
                kept.add(sum);
            }
        }
        return new Frontier(
                kept.stream().mapToDouble(Sum::usd).toArray(),
                kept.stream().mapToDouble(Sum::log).toArray());
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
