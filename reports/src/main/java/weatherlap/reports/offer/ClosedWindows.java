package weatherlap.reports.offer;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.plan.Limit;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.method.Method;

/** At which windows one of the two methods cannot be had, though it does the others: what stands behind a choice that is not all of one. */
record ClosedWindows(Choices choices, FamilyWords words) {
    /** A sentence for each method and what closes it. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (Method method : choices.choice().result().contrast().both()) {
            for (Limit limit : Limit.values()) {
                List<Integer> at = choices.choice().closedAt(method, limit);
                if (!at.isEmpty()) {
                    sentences.add(words.count(
                            at.size(), "closed." + limit.word(), words.name(method, "sentence"), by(method, at)));
                }
            }
        }
        return sentences;
    }

    /** What stands in at those windows, where the choice of that method alone is on the sheet. */
    private String by(Method method, List<Integer> at) {
        OfferedPlan.Kind kind = method == choices.choice().result().contrast().first()
                ? OfferedPlan.Kind.FIRST
                : OfferedPlan.Kind.SECOND;
        return choices.all().stream()
                .filter(choice -> choice.kind() == kind)
                .findFirst()
                .map(choice -> words.of(
                        "closed.by",
                        words.list(at.stream()
                                .map(o -> choice.methods().get(o))
                                .distinct()
                                .map(other -> words.name(other, "sentence"))
                                .toList())))
                .orElse("");
    }
}
