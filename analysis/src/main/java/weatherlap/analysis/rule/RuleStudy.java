package weatherlap.analysis.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.sim.Check;
import weatherlap.sim.random.Streams;

/**
 * The best default rule, how it was chosen, and what stands beside it.
 *
 * @param rule to hang on the wall
 * @param lengths the best rule of at most 0, 1, 2, 3 questions, and its score
 * @param scores always the first, always the second, rule, best_choice
 * @param folds that were held out in turn
 */
public record RuleStudy(Rule rule, List<Length> lengths, List<RuleScore> scores, int folds) {
    /** Standard errors that an excess must pass to count: one chance in twenty of paying for a question that is worth nothing. */
    private static final double NOISE = 1.645;

    public RuleStudy {
        lengths = List.copyOf(lengths);
        scores = List.copyOf(scores);
    }

    /**
     * The best rule of a length.
     *
     * @param most questions allowed
     * @param rule found on all cases; it may hold fewer
     * @param regretUsd per case, on the cases it was found on
     * @param heldOutRegretUsd per case, on cases that were held out
     * @param excessUsd by how much that is over the length of least held-out regret
     * @param excessErrorUsd one standard error of the excess, over blocks
     */
    public record Length(
            int most, Rule rule, double regretUsd, double heldOutRegretUsd, double excessUsd, double excessErrorUsd) {
        boolean withinNoise() {
            return excessUsd <= NOISE * excessErrorUsd;
        }
    }

    /**
     * Finds the rule.
     *
     * @param folds held out in turn, 2 or more
     * @param streams deal the cases out
     */
    public static RuleStudy of(Cases cases, int folds, Streams streams) {
        Check.within("folds", folds, 2, 1000);
        List<Question> questions = Question.on(cases.facts());
        double[] differences = cases.meanDifferenceUsd();
        double scale = Arrays.stream(differences).map(Math::abs).sum();
        Sums all = Sums.of(questions, differences, c -> true);
        int[] foldOfCase = CrossValidation.folds(cases.blocks(), folds, streams.world("folds"));
        double[][] heldOut =
                CrossValidation.regrets(cases.contrast(), questions, differences, all, foldOfCase, folds, scale);
        int least = least(heldOut);
        List<Length> lengths = new ArrayList<>();
        for (int most = 0; most < heldOut.length; most++) {
            Rule rule = RuleSearch.best(cases.contrast(), questions, all, most, scale);
            double[] excess = difference(heldOut[most], heldOut[least]);
            lengths.add(new Length(
                    most,
                    rule,
                    RuleScore.regretUsd(cases.contrast(), rule, differences),
                    StatUtils.mean(heldOut[most]),
                    StatUtils.mean(excess),
                    blockError(excess, cases.blocks())));
        }
        Length chosen = lengths.stream().filter(Length::withinNoise).findFirst().orElseThrow();
        return new RuleStudy(chosen.rule, lengths, RuleScore.table(cases, chosen), folds);
    }

    /** Why this length, in words. */
    public String choiceInWords() {
        Length chosen = lengths.stream()
                .filter(length -> length.rule.equals(rule))
                .findFirst()
                .orElseThrow();
        Length least = lengths.stream()
                .min(Comparator.comparingDouble(Length::heldOutRegretUsd))
                .orElseThrow();
        if (chosen.rule.equals(least.rule)) {
            return String.format(
                    Locale.ROOT,
                    "On houses that the rule was not made from, no longer rule does better: %s costs $%,.0f more a house than the best"
                            + " pick.",
                    asked(rule),
                    chosen.heldOutRegretUsd);
        }
        return String.format(
                Locale.ROOT,
                "On houses that the rules were not made from, %s saves $%,.0f more a house than %s, give or take $%,.0f. That may be"
                        + " chance, so the shorter rule stands.",
                asked(least.rule),
                chosen.excessUsd,
                asked(rule),
                chosen.excessErrorUsd);
    }

    /** The longer rule that would do best on the cases it was found on, and why it is not taken; empty where there is none better. */
    public Optional<String> runnerUpInWords() {
        Length chosen = lengths.stream()
                .filter(length -> length.rule.equals(rule))
                .findFirst()
                .orElseThrow();
        return lengths.stream()
                .filter(length -> length.rule.questions() > rule.questions() && length.regretUsd < chosen.regretUsd)
                .min(Comparator.comparingDouble(Length::heldOutRegretUsd))
                .map(length -> String.format(
                        Locale.ROOT,
                        "By %s the best rule is: %s It would save $%,.0f a house on the houses it was made from. On other houses it"
                                + " %s $%,.0f. It takes more houses to trust it.",
                        asked(length.rule),
                        String.join(" ", length.rule.lines()),
                        chosen.regretUsd - length.regretUsd,
                        length.heldOutRegretUsd > chosen.heldOutRegretUsd ? "costs" : "saves",
                        Math.abs(length.heldOutRegretUsd - chosen.heldOutRegretUsd)));
    }

    private static String asked(Rule rule) {
        return switch (rule.questions()) {
            case 0 -> "asking nothing";
            case 1 -> "asking one question";
            case 2 -> "asking two questions";
            default -> "asking three questions";
        };
    }

    private static int least(double[][] heldOut) {
        int least = 0;
        for (int most = 1; most < heldOut.length; most++) {
            if (StatUtils.mean(heldOut[most]) < StatUtils.mean(heldOut[least])) {
                least = most;
            }
        }
        return least;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] difference = new double[a.length];
        Arrays.setAll(difference, i -> a[i] - b[i]);
        return difference;
    }

    /** Standard error of the mean over cases when blocks of cases are independent of each other. */
    private static double blockError(double[] values, int[] blocks) {
        double mean = StatUtils.mean(values);
        Map<Integer, Double> sums = new HashMap<>();
        for (int c = 0; c < values.length; c++) {
            sums.merge(blocks[c], values[c] - mean, Double::sum);
        }
        double squares = sums.values().stream().mapToDouble(s -> s * s).sum();
        int n = sums.size();
        return n < 2 ? 0 : Math.sqrt(squares * n / (n - 1)) / values.length;
    }
}
