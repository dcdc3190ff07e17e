package weatherlap.analysis.rule;

import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * One row of {@code rule.csv}.
 *
 * @param name always_ and a method, rule, best_choice
 * @param questions the rule in words; what the best choice is not
 * @param expectedHorizonCostUsd per case
 * @param regretUsd per case, against the best choice
 * @param heldOutRegretUsd per case, on cases that the rule was not found on; the regret itself where nothing was searched for
 * @param shareFirst share of the cases that get the first of the two methods
 * @param shareNotBest share of the cases that get a method other than their best
 * @param staysBestProbability share of the draws in which, over all cases, none of the two constants and the rule costs less; for the
 *     best choice, likewise beside these three
 */
public record RuleScore(
        String name,
        String questions,
        double expectedHorizonCostUsd,
        double regretUsd,
        double heldOutRegretUsd,
        double shareFirst,
        double shareNotBest,
        double staysBestProbability) {

    static List<RuleScore> table(Cases cases, RuleStudy.Length chosen) {
        double[] differences = cases.meanDifferenceUsd();
        int n = cases.size();
        Contrast contrast = cases.contrast();
        Choice first = choice(contrast, always(contrast.first()), new Rule.Always(contrast.first()), n);
        Choice second = choice(contrast, always(contrast.second()), new Rule.Always(contrast.second()), n);
        Choice rule = choice(contrast, "rule", chosen.rule(), n);
        Choice best = new Choice(
                "best_choice", "Whichever costs the house less; the rule where both cost the same.", new BitSet(n));
        for (int c = 0; c < n; c++) {
            best.first.set(c, differences[c] < 0 || differences[c] == 0 && rule.first.get(c));
        }
        List<Choice> rivals = List.of(first, second, rule);
        return Stream.of(first, second, rule, best)
                .map(own -> of(own, cases, differences, rivals, chosen.heldOutRegretUsd()))
                .toList();
    }

    /** Mean regret of a rule over other cases than it was found on, as long as they are of the same houses, USD. */
    public static double regretUsd(Rule rule, Cases cases) {
        return regretUsd(cases.contrast(), rule, cases.meanDifferenceUsd());
    }

    /** The name of the rule that asks nothing. */
    public static String always(Method method) {
        return "always_" + method.word();
    }

    /** Mean regret of a rule over the cases, USD. */
    static double regretUsd(Contrast contrast, Rule rule, double[] differences) {
        return regretUsd(choice(contrast, "", rule, differences.length), differences);
    }

    /** Cases that get the first method, by index. */
    private record Choice(String name, String words, BitSet first) {}

    private static Choice choice(Contrast contrast, String name, Rule rule, int n) {
        BitSet first = new BitSet(n);
        for (int c = 0; c < n; c++) {
            first.set(c, rule.method(c) == contrast.first());
        }
        return new Choice(name, String.join(" ", rule.lines()), first);
    }

    private static double regretUsd(Choice own, double[] differences) {
        double sum = 0;
        for (int c = 0; c < differences.length; c++) {
            sum += CrossValidation.regret(own.first.get(c), differences[c]);
        }
        return sum / differences.length;
    }

    private static RuleScore of(
            Choice own, Cases cases, double[] differences, List<Choice> rivals, double ruleHeldOutRegretUsd) {
        int n = cases.size();
        double cost = 0;
        int notBest = 0;
        for (int c = 0; c < n; c++) {
            boolean first = own.first.get(c);
            cost += cases.secondUsd()[c] + (first ? differences[c] : 0);
            notBest += CrossValidation.regret(first, differences[c]) > 0 ? 1 : 0;
        }
        double regretUsd = regretUsd(own, differences);
        return new RuleScore(
                own.name,
                own.words,
                cost / n,
                regretUsd,
                own.name.equals("rule") ? ruleHeldOutRegretUsd : regretUsd,
                (double) own.first.cardinality() / n,
                (double) notBest / n,
                staysBest(cases, own, rivals));
    }

    private static double staysBest(Cases cases, Choice choice, List<Choice> rivals) {
        double[] own = cases.againstSecondUsd(choice.first);
        boolean[] beaten = new boolean[own.length];
        for (Choice rival : rivals) {
            double[] other = cases.againstSecondUsd(rival.first);
            for (int d = 0; d < own.length; d++) {
                beaten[d] |= other[d] < own[d] - 1e-9 * Math.abs(own[d]);
            }
        }
        int stays = 0;
        for (boolean lost : beaten) {
            stays += lost ? 0 : 1;
        }
        return (double) stays / own.length;
    }
}
