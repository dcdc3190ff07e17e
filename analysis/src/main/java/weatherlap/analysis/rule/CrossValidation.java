package weatherlap.analysis.rule;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;
import weatherlap.sim.method.Contrast;

/** Judges rules of each length on cases that they were not found on. */
final class CrossValidation {
    private CrossValidation() {}

    /**
     * Regret of each case under the rule found without its fold, USD.
     *
     * @return one row a number of questions, from 0; one column a case
     */
    static double[][] regrets(
            Contrast contrast,
            List<Question> questions,
            double[] differences,
            Sums all,
            int[] foldOfCase,
            int folds,
            double scale) {
        double[][] regrets = new double[RuleSearch.MOST_QUESTIONS + 1][differences.length];
        for (int fold = 0; fold < folds; fold++) {
            int heldOut = fold;
            Sums rest = all.minus(Sums.of(questions, differences, c -> foldOfCase[c] == heldOut));
            for (int most = 0; most < regrets.length; most++) {
                Rule rule = RuleSearch.best(contrast, questions, rest, most, scale);
                for (int c = 0; c < differences.length; c++) {
                    if (foldOfCase[c] == fold) {
                        regrets[most][c] = regret(rule.method(c) == contrast.first(), differences[c]);
                    }
                }
            }
        }
        return regrets;
    }

    /** What a case loses against its better method, USD. */
    static double regret(boolean first, double difference) {
        return Math.max(0, first ? difference : -difference);
    }

    /** Deals the blocks out to the folds at random, as evenly as they go. */
    static int[] folds(int[] blocks, int folds, UniformRandomProvider stream) {
        int[] names = Arrays.stream(blocks).distinct().toArray();
        PermutationSampler.shuffle(stream, names);
        Map<Integer, Integer> foldOfBlock = new HashMap<>();
        for (int i = 0; i < names.length; i++) {
            foldOfBlock.put(names[i], i % folds);
        }
        return Arrays.stream(blocks).map(foldOfBlock::get).toArray();
    }
}
