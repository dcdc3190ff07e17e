package weatherlap.reports.offer;

import java.util.Comparator;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.reports.words.FamilyWords;

/**
 * What the shop would advise, in one sentence with its reason: the family's plan against the best of the other choices, by what decides
 * between them over the horizon.
 */
record Recommendation(Choices choices, ChoiceWords names, Prices prices, String years) {
    /** Share of the draws from which on one choice counts as better; below, either is sound (judgement). */
    private static final double LIKELY = 0.7;

    /** Likewise as clearly better. */
    private static final double CLEAR = 0.9;

    /** Whether it names one choice: more than one is there, and it is not a matter of taste. */
    boolean decides() {
        return choices.all().size() > 1 && !alike() && (choices.choice().atRisk() || saves() < 0 || share() >= LIKELY);
    }

    /** No choice keeps the family's limit, and they differ in leaks by less than judgement can tell: the risk is no reason for one of them. */
    private boolean alike() {
        return choices.choice().atRisk() && !choices.leaks().tells();
    }

    String sentence() {
        FamilyWords words = names.words();
        String best = names.inSentence(choices.recommended());
        if (choices.all().size() == 1) {
            return words.of("advice.only", best);
        }
        String next = names.inSentence(next());
        if (!decides()) {
            return either(alike() ? "advice.alike" : "advice.either", choices.recommended(), next());
        }
        if (choices.choice().atRisk()) {
            return words.of("advice.least_risk", best);
        }
        return saves() < 0
                ? words.of("advice.keeps_limit", best, next)
                : words.of("advice.best", best, reason(choices.recommended(), next()))
                        + ' '
                        + words.of(share() >= CLEAR ? "advice.clear" : "advice.likely", next);
    }

    /** The best of the others over the horizon. */
    private OfferedPlan next() {
        return choices.all().stream()
                .filter(one -> one != choices.recommended())
                .min(Comparator.comparingDouble(one -> one.plan().horizonCostUsd()))
                .orElseThrow();
    }

    /** What the advised choice saves over the horizon, USD. */
    private double saves() {
        return next().plan().horizonCostUsd() - choices.recommended().plan().horizonCostUsd();
    }

    private double share() {
        return PlanSums.cheaper(choices.parts(), choices.recommended().plan(), next().plan());
    }

    private String either(String key, OfferedPlan best, OfferedPlan next) {
        OfferedPlan lighter = best.glassFt2() >= next.glassFt2() ? best : next;
        OfferedPlan cheaper = best.plan().priceUsd() <= next.plan().priceUsd() ? best : next;
        FamilyWords words = names.words();
        return lighter == cheaper
                ? words.of(key, names.inSentence(best), names.inSentence(next))
                : words.of(
                        key + ".light",
                        names.inSentence(best),
                        names.inSentence(next),
                        names.inSentence(lighter),
                        names.inSentence(cheaper));
    }

    /** The largest of what the best choice saves: price, leaks or light. */
    private String reason(OfferedPlan best, OfferedPlan next) {
        double price = next.plan().priceUsd() - best.plan().priceUsd();
        double damage = next.damageUsd() - best.damageUsd();
        double glass = next.plan().horizonCostUsd() - best.plan().horizonCostUsd() - price - damage;
        FamilyWords words = names.words();
        String other = names.inSentence(next);
        if (price >= damage && price >= glass) {
            double lower = prices.quote(next).price() - prices.quote(best).price();
            return prices.shown() && lower > 0
                    ? words.of("advice.price", Prices.usd(lower), other, years)
                    : words.of("advice.price.untold", other, years);
        }
        return words.of(damage >= glass ? "advice.leaks" : "advice.glass", other, years);
    }
}
