package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import weatherlap.analysis.plan.PlanReason.Swap;
import weatherlap.analysis.plan.PlanReason.Why;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Method;

/** Reasons as a family and a shop read them, without the windows they are about. */
public final class ReasonWords {
    private record Kind(Method method, Why why, Map<Method, Set<Limit>> closed, Optional<Method> other) {}

    private ReasonWords() {}

    /** Those that read alike but for their numbers together, in the order of their first. */
    public static Collection<List<PlanReason>> alike(List<PlanReason> reasons) {
        Map<Kind, List<PlanReason>> groups = new LinkedHashMap<>();
        reasons.forEach(reason -> groups.computeIfAbsent(
                        new Kind(
                                reason.method(),
                                reason.why(),
                                reason.closed(),
                                reason.swap().map(Swap::method)),
                        kind -> new ArrayList<>())
                .add(reason));
        return groups.values();
    }

    /** A sentence on one opening. */
    public static String of(PlanReason reason) {
        return of(List.of(reason));
    }

    /** A sentence on one or more that are alike; where their numbers differ, from the least to the most. */
    public static String of(List<PlanReason> alike) {
        PlanReason first = alike.get(0);
        String words =
                switch (first.why()) {
                    case ONLY_ONE -> only(first);
                    case LEAST_RISK ->
                        "keeps the leak chance of the house lowest, at "
                                + percent(swap(first).planLeakProbability())
                                + otherwise(alike, swap(first).planLeakProbability());
                    case KEEPS_LIMIT ->
                        "keeps the leak chance of the house within " + percent(first.riskLimit())
                                + otherwise(alike, first.riskLimit());
                    case SHARES_SIDING -> "shares the siding that is down anyway: " + saving(alike);
                    case CHEAPER -> saving(alike);
                    case BEST_FOUND -> "part of the best plan that we found";
                };
        return InWords.capital(words) + ".";
    }

    /** The same with ranks where {@link #of(List)} has figures of the chance of leak damage, for whom judgement alone bears those. */
    public static String ranked(List<PlanReason> alike) {
        return switch (alike.get(0).why()) {
            case LEAST_RISK -> "Keeps the leak risk of the house lowest" + ranked(alike, "raise it");
            case KEEPS_LIMIT ->
                "Keeps the leak risk of the house within what was taken for acceptable"
                        + ranked(alike, "take it above that");
            case ONLY_ONE, SHARES_SIDING, CHEAPER, BEST_FOUND -> of(alike);
        };
    }

    private static String ranked(List<PlanReason> alike, String change) {
        return "; " + other(alike) + " here would " + saved(alike) + change + ".";
    }

    private static String only(PlanReason reason) {
        String closed = reason.closed().entrySet().stream()
                .map(entry -> entry.getKey().inSentence() + " is out, "
                        + entry.getValue().stream().map(Limit::words).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; "));
        return "only " + reason.method().inSentence() + " will do here" + (closed.isEmpty() ? "" : ": " + closed);
    }

    /** What the other method would do here: save money or not, and raise the chance above so much. */
    private static String otherwise(List<PlanReason> alike, double above) {
        String with = range(alike, Swap::leakProbability, ReasonWords::percent);
        String chance = with.equals(percent(above)) ? "just above " + with : "to " + with;
        return "; " + other(alike) + " here would " + saved(alike) + "take it " + chance;
    }

    private static String saved(List<PlanReason> alike) {
        String saved = range(alike, swap -> Math.max(0, -swap.moreUsd()), ReasonWords::usd);
        return saved.equals(usd(0)) ? "" : "save " + saved + " over the years but ";
    }

    private static String saving(List<PlanReason> alike) {
        String usd = range(alike, Swap::moreUsd, ReasonWords::usd);
        return usd.equals(usd(0))
                ? "costs no more over the years than " + other(alike)
                : "costs " + usd + " less over the years than " + other(alike);
    }

    private interface Written {
        String of(double value);
    }

    private static String range(List<PlanReason> alike, ToDoubleFunction<Swap> value, Written written) {
        double[] sorted = alike.stream()
                .map(ReasonWords::swap)
                .mapToDouble(value)
                .sorted()
                .toArray();
        String least = written.of(sorted[0]);
        String most = written.of(sorted[sorted.length - 1]);
        return least.equals(most) ? least : "between " + least + " and " + most;
    }

    private static String percent(double fraction) {
        return Numbers.percent(fraction, 0);
    }

    /** To the nearest ten dollars. */
    private static String usd(double usd) {
        return Numbers.usd(Math.round(usd / 10) * 10.0);
    }

    private static String other(List<PlanReason> alike) {
        return swap(alike.get(0)).method().inSentence();
    }

    private static Swap swap(PlanReason reason) {
        return reason.swap().orElseThrow();
    }
}
