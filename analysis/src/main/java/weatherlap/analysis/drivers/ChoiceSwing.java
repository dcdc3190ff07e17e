package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.analysis.drivers.Houses.Difference;
import weatherlap.analysis.sensitivity.Swing;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Wage;

/**
 * What a choice of words does while every number is at its median. A choice has no chances, so that it has a swing and no share of a
 * variance.
 *
 * @param words that it may be
 * @param means over the houses, by word
 */
public record ChoiceSwing(Choice choice, List<String> words, List<Difference> means) {
    /**
     * Choices that no mean of a method at every window hangs on, how draws are laid and what closes a method, and the one that says which
     * difference is asked about.
     */
    private static final Set<Choice> APART = Set.of(Choice.SAMPLING, Choice.ESCAPE_RULE, Choice.METHODS);

    /** Words of a choice, one that is in force among them; none where there is nothing to choose. */
    public static List<String> words(Assumptions base, Choice choice) {
        List<String> words = choice == Choice.REGION
                ? base.wages().stream().map(Wage::region).distinct().toList()
                : choice.allowed();
        return APART.contains(choice) || words.size() < 2 ? List.of() : words;
    }

    /** How many words all choices have. */
    static int words(Assumptions base) {
        return Arrays.stream(Choice.values())
                .mapToInt(choice -> words(base, choice).size())
                .sum();
    }

    /** Those that move either outcome. */
    static List<ChoiceSwing> of(Assumptions base, List<Factor> factors, Houses houses) {
        double[] medians = new double[factors.size()];
        Arrays.fill(medians, 0.5);
        Assumptions middle = new RangedAssumptions(base, factors).at(medians);
        List<Assumptions> asked = new ArrayList<>();
        for (Choice choice : Choice.values()) {
            words(base, choice)
                    .forEach(word -> asked.add(middle.with(middle.scenario().with(choice, word))));
        }
        List<List<Difference>> found = IntStream.range(0, houses.count())
                .parallel()
                .mapToObj(h -> {
                    Houses.OneHouse house = houses.house(h, base);
                    return asked.stream().map(house::at).toList();
                })
                .toList();
        List<ChoiceSwing> swings = new ArrayList<>();
        int next = 0;
        for (Choice choice : Choice.values()) {
            int first = next;
            List<String> words = words(base, choice);
            next += words.size();
            if (!words.isEmpty()) {
                swings.add(new ChoiceSwing(
                        choice,
                        words,
                        IntStream.range(first, next)
                                .mapToObj(i -> mean(found, i))
                                .toList()));
            }
        }
        return swings.stream()
                .filter(swing -> swing.means().stream().distinct().count() > 1)
                .toList();
    }

    private static Difference mean(List<List<Difference>> houses, int i) {
        return new Difference(
                houses.stream().mapToDouble(h -> h.get(i).costUsd()).average().orElseThrow(),
                houses.stream().mapToDouble(h -> h.get(i).risk()).average().orElseThrow());
    }

    /** The words of the least and of the greatest outcome. */
    DriverRow row(Outcome outcome) {
        Comparator<Integer> byOutcome = Comparator.comparingDouble(i -> of(outcome, i));
        int least = IntStream.range(0, words.size()).boxed().min(byOutcome).orElseThrow();
        int greatest = IntStream.range(0, words.size()).boxed().max(byOutcome).orElseThrow();
        return new DriverRow(
                choice.key(),
                false,
                outcome,
                Optional.empty(),
                new Swing(choice.key(), of(outcome, least), of(outcome, greatest)),
                words.get(least),
                words.get(greatest),
                Optional.empty());
    }

    private double of(Outcome outcome, int word) {
        return switch (outcome) {
            case COST_DIFFERENCE -> means.get(word).costUsd();
            case RISK_DIFFERENCE -> means.get(word).risk();
        };
    }
}
