package weatherlap.analysis.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.rule.RuleScore;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** What a decision says, for the owner of a shop. */
public final class DecisionWords {
    /** Below this, held-out scores are mostly chance. */
    private static final int FEW_HOUSES = 30;

    private final Decision decision;

    private DecisionWords(Decision decision) {
        this.decision = decision;
    }

    /** The rule itself, as it hangs on the wall. */
    public static List<String> rule(Decision decision) {
        return decision.study().rule().lines();
    }

    /** Sentences about it, the most important first. */
    public static List<String> of(Decision decision) {
        DecisionWords words = new DecisionWords(decision);
        return Stream.of(
                        words.cost(),
                        List.of(decision.study().choiceInWords()),
                        decision.study().runnerUpInWords().stream().toList(),
                        words.sureness(),
                        words.limits(),
                        words.interests(),
                        words.mixing())
                .flatMap(List::stream)
                .map(DecisionWords::typeset)
                .toList();
    }

    private List<String> cost() {
        RuleScore rule = score("rule");
        return List.of(text(
                "Followed, the rule costs $%,.0f a house over the horizon, $%,.0f more than the best choice for each house; always"
                        + " full-flange costs $%,.0f more, always insert $%,.0f, each wherever no limit closes it. It departs from the best"
                        + " choice in %.0f%% of the houses.",
                rule.expectedHorizonCostUsd(),
                rule.regretUsd(),
                score("always_full_flange").regretUsd(),
                score("always_insert").regretUsd(),
                100 * rule.shareNotBest()));
    }

    private List<String> sureness() {
        List<String> words = new ArrayList<>();
        words.add(text(
                "In %.0f%% of the draws neither always full-flange nor always insert would have cost less than the rule.",
                100 * score("rule").staysBestProbability()));
        if (decision.choices().size() < FEW_HOUSES) {
            words.add(text(
                    "Houses in the portfolio: %d, too few to judge a rule by houses held out.",
                    decision.choices().size()));
        }
        return words;
    }

    private List<String> limits() {
        List<String> words = new ArrayList<>();
        for (Method method : Contrast.USUAL.both()) {
            List<String> counts = new ArrayList<>();
            for (Limit limit : Limit.values()) {
                long count = count(c -> c.closed(method).contains(limit));
                if (count > 0) {
                    counts.add(limit.words() + " (" + count + ")");
                }
            }
            if (!counts.isEmpty()) {
                words.add(text(
                        "Limits close the %s at a window or more, by number of houses: %s. The rule holds elsewhere.",
                        method.label(), String.join(", ", counts)));
            }
        }
        long atRisk = count(HouseChoice::atRisk);
        if (atRisk > 0) {
            words.add(text(
                    "Houses where no plan keeps the chance of leak damage under the family's limit: %d of %d. The least risky plan stands"
                            + " there.",
                    atRisk, decision.choices().size()));
        }
        return words;
    }

    private List<String> interests() {
        long parting = count(HouseChoice::interestsPart);
        if (parting == 0) {
            return List.of("Family and shop want the same method in every house.");
        }
        return List.of(text(
                "Houses where the family's cost and the shop's profit for a crew day point to different methods: %d of %d. There, by"
                        + " the shop's method, the family would lose $%,.0f over the horizon; by the family's, the shop would lose $%,.0f"
                        + " a crew day (means).",
                parting,
                decision.choices().size(),
                mean(HouseChoice::interestsPart, HouseChoice::familyLosesUsd),
                mean(HouseChoice::interestsPart, HouseChoice::shopLosesPerDayUsd)));
    }

    private List<String> mixing() {
        Predicate<HouseChoice> pays = c -> c.mixingSavesUsd() > 0;
        long mixed = count(pays);
        return mixed == 0
                ? List.of()
                : List.of(text(
                        "Houses where it pays to choose window by window, every set-up paid: %d of %d, by $%,.0f each on average.",
                        mixed, decision.choices().size(), mean(pays, HouseChoice::mixingSavesUsd)));
    }

    private RuleScore score(String name) {
        return decision.study().scores().stream()
                .filter(score -> score.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private long count(Predicate<HouseChoice> which) {
        return decision.choices().stream().filter(which).count();
    }

    private double mean(Predicate<HouseChoice> which, ToDoubleFunction<HouseChoice> value) {
        return decision.choices().stream()
                .filter(which)
                .mapToDouble(value)
                .average()
                .orElseThrow();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private static String typeset(String text) {
        return text.replace('\'', '\u2019');
    }
}
