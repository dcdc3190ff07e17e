package weatherlap.analysis.scenarios;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.rule.RuleScore;
import weatherlap.sim.method.Method;

/** Sets of assumptions beside the first of them; what they come to is worked out once. */
public final class SideBySide {
    private final List<ScenarioRun> runs;
    private final List<Headline> headlines;
    private final List<Regret> regrets;

    /**
     * One set.
     *
     * @param differenceUsd what the first method costs more than the second, mean of a house
     * @param changeUsd by how much that is more than under the first set
     * @param errorUsd one standard error of the change, over the draws that both share
     * @param flips houses whose plan is another than under the first set
     */
    public record Headline(
            ScenarioRun run, double differenceUsd, double changeUsd, double errorUsd, List<Flip> flips) {}

    /** A house whose plan is another than under the first set; methods in words. */
    public record Flip(String scenario, HouseChoice before, HouseChoice after) {
        public String planBefore() {
            return methods(before.family());
        }

        public String planAfter() {
            return methods(after.family());
        }
    }

    /**
     * The rule of one set in the world of another.
     *
     * @param regretUsd what it costs a house more than the best choice there, mean
     */
    public record Regret(String ruleOf, String world, double regretUsd) {}

    /** @param runs of the same houses with the same draws, two or more */
    public SideBySide(List<ScenarioRun> runs) {
        this.runs = List.copyOf(runs);
        if (runs.size() < 2) {
            throw new IllegalArgumentException("Two sets of assumptions or more are set side by side.");
        }
        Set<List<String>> houses = runs.stream()
                .map(run -> run.choices().stream()
                        .map(choice -> choice.result().house().id())
                        .toList())
                .collect(Collectors.toSet());
        if (houses.size() > 1) {
            throw new IllegalArgumentException("The sets must be of the same houses.");
        }
        double[] base = runs.get(0).differenceUsd();
        headlines = runs.stream().map(run -> headline(run, base)).toList();
        regrets = regretsOf(runs);
    }

    public List<ScenarioRun> runs() {
        return runs;
    }

    /** A row a set, the first among them. */
    public List<Headline> headlines() {
        return headlines;
    }

    /** Every rule in every world. */
    public List<Regret> regrets() {
        return regrets;
    }

    private Headline headline(ScenarioRun run, double[] base) {
        double[] own = run.differenceUsd();
        double[] change = new double[own.length];
        for (int d = 0; d < own.length; d++) {
            change[d] = own[d] - base[d];
        }
        double error = own.length < 2 ? 0 : Math.sqrt(StatUtils.variance(change) / change.length);
        return new Headline(run, StatUtils.mean(own), StatUtils.mean(change), error, flips(run));
    }

    private List<Flip> flips(ScenarioRun run) {
        List<HouseChoice> base = runs.get(0).choices();
        return IntStream.range(0, base.size())
                .mapToObj(h -> new Flip(run.name(), base.get(h), run.choices().get(h)))
                .filter(flip -> !flip.before
                        .family()
                        .byOpening()
                        .equals(flip.after.family().byOpening()))
                .toList();
    }

    private static List<Regret> regretsOf(List<ScenarioRun> runs) {
        List<Regret> regrets = new ArrayList<>();
        for (ScenarioRun ruled : runs) {
            for (ScenarioRun world : runs) {
                regrets.add(new Regret(
                        ruled.name(),
                        world.name(),
                        RuleScore.regretUsd(
                                ruled.decision().study().rule(),
                                world.decision().cases())));
            }
        }
        return regrets;
    }

    private static String methods(Plan plan) {
        Set<Method> used = new TreeSet<>(plan.byOpening());
        return used.stream().map(Method::label).collect(Collectors.joining(" + "));
    }
}
