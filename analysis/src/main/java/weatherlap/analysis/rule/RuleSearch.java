package weatherlap.analysis.rule;

import java.util.List;
import weatherlap.sim.method.Contrast;

/**
 * Tries every tree of at most three questions. The cost of a tree is the sum over its ends of min(Σ d, 0), so the best tree of k
 * questions is a first question and the best trees of a and k − 1 − a questions on its two sides. A longer tree must beat a shorter
 * one by more than rounding; of equal trees the one with the earlier questions is kept.
 */
final class RuleSearch {
    static final int MOST_QUESTIONS = 3;

    private final Contrast contrast;
    private final List<Question> questions;
    private final Sums sums;
    private final double rounding;

    private RuleSearch(Contrast contrast, List<Question> questions, Sums sums, double rounding) {
        this.contrast = contrast;
        this.questions = questions;
        this.sums = sums;
        this.rounding = rounding;
    }

    /**
     * The rule of least cost.
     *
     * @param most questions, 0 to 3
     * @param scale sum of the absolute differences, which rounding is measured by
     */
    static Rule best(Contrast contrast, List<Question> questions, Sums sums, int most, double scale) {
        RuleSearch search = new RuleSearch(contrast, questions, sums, 1e-12 * scale);
        Side all = new Side(sums.everyone(), true);
        return search.best(all, all, Math.min(most, MOST_QUESTIONS)).rule;
    }

    /** Cases with one answer to one question. */
    private record Side(int question, boolean yes) {}

    private record Found(double cost, Rule rule) {}

    /** Over the cases on both sides. */
    private Found best(Side a, Side b, int most) {
        if (most == 1) {
            return bestOfOne(a, b);
        }
        Found best = end(sum(a, b, sums.everyone()));
        if (most == 0) {
            return best;
        }
        // No more than one answer is given yet, so b is free.
        for (int q = 0; q < questions.size(); q++) {
            for (int onYes = most - 1; onYes >= 0; onYes--) {
                Found yes = best(new Side(q, true), a, onYes);
                Found no = best(new Side(q, false), a, most - 1 - onYes);
                if (yes.cost + no.cost < best.cost - rounding) {
                    best = new Found(yes.cost + no.cost, new Rule.Ask(questions.get(q), yes.rule, no.rule));
                }
            }
        }
        return best;
    }

    private Found bestOfOne(Side a, Side b) {
        double total = sum(a, b, sums.everyone());
        double best = Math.min(total, 0);
        int asked = -1;
        for (int q = 0; q < questions.size(); q++) {
            double yes = sum(a, b, q);
            double cost = Math.min(yes, 0) + Math.min(total - yes, 0);
            if (cost < best - rounding) {
                best = cost;
                asked = q;
            }
        }
        if (asked < 0) {
            return end(total);
        }
        double yes = sum(a, b, asked);
        return new Found(best, new Rule.Ask(questions.get(asked), end(yes).rule, end(total - yes).rule));
    }

    private Found end(double sum) {
        return sum < 0
                ? new Found(sum, new Rule.Always(contrast.first()))
                : new Found(0, new Rule.Always(contrast.second()));
    }

    private double sum(Side a, Side b, int k) {
        return sums.sum(a.question, a.yes, b.question, b.yes, k);
    }
}
