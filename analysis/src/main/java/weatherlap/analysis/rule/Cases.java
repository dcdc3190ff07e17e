package weatherlap.analysis.rule;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * What the rules are judged on.
 *
 * @param facts of every case
 * @param insertUsd mean horizon cost of each case with the insert, USD
 * @param differenceUsd full flange less insert: one row a case, one column a draw, USD; not to be changed
 * @param blocks cases with the same number (walls of one house) are held out together
 */
@SuppressWarnings("ArrayRecordComponent") // draws
public record Cases(List<? extends AskedFact> facts, double[] insertUsd, double[][] differenceUsd, int[] blocks) {
    public Cases {
        facts = List.copyOf(facts);
        int size = insertUsd.length;
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
    public static Cases apart(List<? extends AskedFact> facts, double[] insertUsd, double[][] differenceUsd) {
        int[] blocks = new int[insertUsd.length];
        Arrays.setAll(blocks, i -> i);
        return new Cases(facts, insertUsd, differenceUsd, blocks);
    }

    int size() {
        return insertUsd.length;
    }

    /** Mean difference of each case, USD. */
    double[] meanDifferenceUsd() {
        return Arrays.stream(differenceUsd)
                .mapToDouble(draws -> Arrays.stream(draws).average().orElseThrow())
                .toArray();
    }

    /**
     * What it costs to give some cases the full flange rather than none, by draw, summed over the cases, USD.
     *
     * @param flange the cases, by index
     */
    double[] againstInsertUsd(BitSet flange) {
        double[] sums = new double[differenceUsd[0].length];
        for (int c = flange.nextSetBit(0); c >= 0; c = flange.nextSetBit(c + 1)) {
            for (int d = 0; d < sums.length; d++) {
                sums[d] += differenceUsd[c][d];
            }
        }
        return sums;
    }
}
