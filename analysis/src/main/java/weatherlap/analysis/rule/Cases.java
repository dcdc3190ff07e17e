package weatherlap.analysis.rule;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import weatherlap.sim.method.Contrast;

/**
 * What the rules are judged on.
 *
 * @param contrast the two methods
 * @param facts of every case
 * @param secondUsd mean horizon cost of each case with the second method, USD
 * @param differenceUsd first less second: one row a case, one column a draw, USD; not to be changed
 * @param blocks cases with the same number (walls of one house) are held out together
 */
@SuppressWarnings("ArrayRecordComponent") // draws
public record Cases(
        Contrast contrast,
        List<? extends AskedFact> facts,
        double[] secondUsd,
        double[][] differenceUsd,
        int[] blocks) {
    public Cases {
        facts = List.copyOf(facts);
        int size = secondUsd.length;
        if (size == 0 || differenceUsd.length != size || blocks.length != size) {
            throw new IllegalArgumentException(
                    "There must be cases, and costs, differences and blocks for each of them.");
        }
        for (AskedFact fact : facts) {
            if (fact.size() != size) {
                throw new IllegalArgumentException("The fact " + fact.name() + " (" + fact.size()
                        + ") must be known for every case (" + size + ").");
            }
        }
    }

    /** Each case a block of its own. */
    public static Cases apart(
            Contrast contrast, List<? extends AskedFact> facts, double[] secondUsd, double[][] differenceUsd) {
        int[] blocks = new int[secondUsd.length];
        Arrays.setAll(blocks, i -> i);
        return new Cases(contrast, facts, secondUsd, differenceUsd, blocks);
    }

    int size() {
        return secondUsd.length;
    }

    /** Mean difference of each case, USD. */
    double[] meanDifferenceUsd() {
        return Arrays.stream(differenceUsd)
                .mapToDouble(draws -> Arrays.stream(draws).average().orElseThrow())
                .toArray();
    }

    /**
     * What it costs to give some cases the first method and the others the second, against the second everywhere, by draw, summed over the cases, USD.
     *
     * @param first the cases, by index
     */
    double[] againstSecondUsd(BitSet first) {
        double[] sums = new double[differenceUsd[0].length];
        for (int c = first.nextSetBit(0); c >= 0; c = first.nextSetBit(c + 1)) {
            for (int d = 0; d < sums.length; d++) {
                sums[d] += differenceUsd[c][d];
            }
        }
        return sums;
    }
}
