package weatherlap.analysis.plan;

import java.util.stream.Collectors;
import weatherlap.analysis.plan.PlanReason.Swap;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;

/** Reasons as a family and a shop read them, without the window they are about. */
public final class ReasonWords {
    private ReasonWords() {}

    /** A sentence. */
    public static String of(PlanReason reason) {
        String words =
                switch (reason.why()) {
                    case ONLY_ONE -> only(reason);
                    case LEAST_RISK -> "keeps the leak chance of the house lowest" + otherwise(reason);
                    case KEEPS_LIMIT ->
                        "keeps the leak chance of the house under " + percent(reason.riskLimit()) + otherwise(reason);
                    case SHARES_SIDING -> "shares the siding that is down anyway: " + saving(reason);
                    case CHEAPER -> saving(reason);
                    case BEST_FOUND -> "part of the best plan that we found";
                };
        return InWords.capital(words) + ".";
    }

    private static String only(PlanReason reason) {
        String closed = reason.closed().entrySet().stream()
                .map(entry -> entry.getKey().inSentence() + " is out, "
                        + entry.getValue().stream().map(Limit::words).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; "));
        return "only " + reason.method().inSentence() + " will do here" + (closed.isEmpty() ? "" : ": " + closed);
    }

    /** What the other method would do here: save money or not, and raise the chance. */
    private static String otherwise(PlanReason reason) {
        Swap swap = swap(reason);
        String without = percent(swap.planLeakProbability());
        String with = percent(swap.leakProbability());
        String chance =
                with.equals(without) ? "take it a little above " + without : "take it from " + without + " to " + with;
        return rounded(-swap.moreUsd()) > 0
                ? "; " + other(reason) + " here would save " + Numbers.usd(rounded(-swap.moreUsd()))
                        + " over the years but " + chance
                : "; " + other(reason) + " here would " + chance;
    }

    private static String saving(PlanReason reason) {
        double usd = rounded(swap(reason).moreUsd());
        return usd > 0
                ? "costs " + Numbers.usd(usd) + " less over the years than " + other(reason)
                : "costs no more over the years than " + other(reason);
    }

    private static String percent(double fraction) {
        return Numbers.percent(fraction, 0);
    }

    /** To the nearest ten dollars. */
    private static double rounded(double usd) {
        return Math.round(usd / 10) * 10.0;
    }

    private static String other(PlanReason reason) {
        return swap(reason).method().inSentence();
    }

    private static Swap swap(PlanReason reason) {
        return reason.swap().orElseThrow();
    }
}
