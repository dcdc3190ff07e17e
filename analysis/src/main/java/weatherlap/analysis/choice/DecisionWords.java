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
import weatherlap.analysis.words.Numbers;
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
                "Follow the rule and the average house costs its family $%,.0f over the years, $%,.0f more than with the best pick"
                        + " house by house. Always using %s costs $%,.0f more, always using %s $%,.0f, each wherever it can go in. At"
                        + " %.0f%% of the houses the rule is not the best pick.",
                rule.expectedHorizonCostUsd(),
                rule.regretUsd(),
                contrast().first().many(),
                score(RuleScore.always(contrast().first())).regretUsd(),
                contrast().second().many(),
                score(RuleScore.always(contrast().second())).regretUsd(),
                100 * rule.shareNotBest()));
    }

    private List<String> sureness() {
        List<String> words = new ArrayList<>();
        words.add(text(
                "In %.0f%% of the runs no one method, always used, would have cost less than the rule.",
                100 * score("rule").staysBestProbability()));
        if (decision.choices().size() < FEW_HOUSES) {
            words.add(text("%s: too few to test a rule on houses it has not seen.", houses()));
        }
        return words;
    }

    private List<String> limits() {
        List<String> words = new ArrayList<>();
        for (Method method : contrast().both()) {
            List<String> counts = new ArrayList<>();
            for (Limit limit : Limit.values()) {
                long count = count(c -> c.closed(method).contains(limit));
                if (count > 0) {
                    counts.add(limit.words() + " (" + count + ")");
                }
            }
            if (!counts.isEmpty()) {
                words.add(text(
                        "Where %s can't go in at a window or more, by number of houses: %s. The rule holds everywhere else.",
                        method.many(), String.join(", ", counts)));
            }
        }
        long atRisk = count(HouseChoice::atRisk);
        if (atRisk > 0) {
            words.add(text(
                    "At %d of %s no plan keeps leak risk as low as a family should have it. The safest plan stands there.",
                    atRisk, houses()));
        }
        return words;
    }

    private List<String> interests() {
        long parting = count(HouseChoice::interestsPart);
        if (parting == 0) {
            return List.of("Family and shop want the same method in every house.");
        }
        return List.of(text(
                "At %d of %s the family and the shop do better with different methods. With the shop's pick the family would lose"
                        + " $%,.0f over the years, on average; with the family's the shop would lose $%,.0f a crew day.",
                parting,
                houses(),
                mean(HouseChoice::interestsPart, HouseChoice::familyLosesUsd),
                mean(HouseChoice::interestsPart, HouseChoice::shopLosesPerDayUsd)));
    }

    private List<String> mixing() {
        Predicate<HouseChoice> pays = c -> c.mixingSavesUsd() > 0;
        long mixed = count(pays);
        return mixed == 0
                ? List.of()
                : List.of(text(
                        "At %d of %s it pays to choose window by window, every set-up paid: $%,.0f each on average.",
                        mixed, houses(), mean(pays, HouseChoice::mixingSavesUsd)));
    }

    private String houses() {
        return Numbers.count(decision.choices().size(), "house", "houses");
    }

    private Contrast contrast() {
        return decision.cases().contrast();
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
