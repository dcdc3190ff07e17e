package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.plan.PlanReason;
import weatherlap.analysis.plan.PlanReason.Swap;
import weatherlap.analysis.plan.ReasonWords;
import weatherlap.reports.handout.Handout.MixedWindows;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.offer.ChoiceWords;
import weatherlap.reports.offer.Choices;
import weatherlap.reports.offer.Prices;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/** The family's plan where it takes windows by different methods: which by which, and why. */
record MixedPlan(
        Choices choices,
        ChoiceWords names,
        List<PlanReason> reasons,
        Prices prices,
        FamilyWords words,
        Density density) {
    /** Empty where one method does all windows. */
    Optional<MixedWindows> windows() {
        return choices.choice().family().methods().size() > 1
                ? Optional.of(new MixedWindows(heading(), counts(), lines()))
                : Optional.empty();
    }

    /** By the name that the plan has in the boxes. */
    private String heading() {
        return words.of("mixed.heading", names.title(choices.recommended()));
    }

    private String counts() {
        Map<Method, Long> counts = choices.choice().family().byOpening().stream()
                .collect(Collectors.groupingBy(
                        method -> method, () -> new EnumMap<>(Method.class), Collectors.counting()));
        return FamilyWords.capital(words.of(
                "mixed.counts",
                words.list(counts.entrySet().stream()
                        .map(entry -> words.count(entry.getValue(), "mixed.at", words.name(entry.getKey())))
                        .toList())));
    }

    private List<Named> lines() {
        return ReasonWords.alike(reasons).stream()
                .map(alike -> new Named(
                        words.of(
                                "mixed.where",
                                FamilyWords.capital(words.name(alike.get(0).method())),
                                places(alike)),
                        FamilyWords.capital(reason(alike)) + "."))
                .toList();
    }

    /** Every window by wall and key. */
    private String places(List<PlanReason> alike) {
        Map<String, List<String>> walls = new LinkedHashMap<>();
        House house = choices.choice().result().house();
        Phrases phrases = new Phrases(words);
        alike.forEach(reason -> walls.computeIfAbsent(
                        density.cut(
                                density.shortWalls()
                                        ? phrases.shortWall(house, reason.elevation())
                                        : phrases.wall(house, reason.elevation()),
                                2 * density.longestKey()),
                        wall -> new ArrayList<>())
                .add(density.cut(reason.opening().id(), density.longestKey())));
        return walls.entrySet().stream()
                .map(wall -> wall.getKey() + " " + String.join(", ", wall.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Where the swap is with a method that the sheet does not offer, what closes the others is the reason that a family can read. */
    private String reason(List<PlanReason> alike) {
        String closed = closed(alike.get(0));
        boolean offered = alike.get(0)
                .swap()
                .filter(swap -> choices.methods().contains(swap.method()))
                .isPresent();
        return closed.isEmpty() || offered || alike.get(0).why() == PlanReason.Why.ONLY_ONE ? open(alike) : closed;
    }

    private String open(List<PlanReason> alike) {
        return switch (alike.get(0).why()) {
            case ONLY_ONE -> only(alike.get(0));
            case LEAST_RISK -> held(alike, "reason.least_risk");
            case KEEPS_LIMIT -> held(alike, "reason.keeps_limit");
            case SHARES_SIDING -> words.of("reason.shares_siding", saving(alike));
            case CHEAPER -> saving(alike);
            case BEST_FOUND -> words.of("reason.best_found");
        };
    }

    private String only(PlanReason reason) {
        String closed = closed(reason);
        return words.of("reason.only", words.name(reason.method(), "sentence"))
                + (closed.isEmpty() ? "" : ": " + closed);
    }

    private String closed(PlanReason reason) {
        return reason.closed().entrySet().stream()
                .filter(entry -> !entry.getValue().contains(Limit.BEHIND_MASONRY))
                .map(entry -> words.of(
                        "reason.closed",
                        words.name(entry.getKey(), "sentence"),
                        words.list(entry.getValue().stream()
                                .map(limit -> words.of("limit." + limit.word()))
                                .toList())))
                .collect(Collectors.joining("; "));
    }

    /** What the other method would do to the leaks, and what it would save. */
    private String held(List<PlanReason> alike, String key) {
        Optional<String> saved = range(alike, swap -> Math.max(0, -swap.moreUsd()));
        String other = other(alike, "reason.other");
        return saved.isEmpty()
                ? words.of(key, other)
                : prices.shown() ? words.of(key + ".saves", other, saved.get()) : words.of(key + ".untold", other);
    }

    private String saving(List<PlanReason> alike) {
        Optional<String> usd = range(alike, Swap::moreUsd);
        String other = other(alike, "reason.any_other");
        return usd.isEmpty()
                ? words.of("saving.none", other)
                : prices.shown() ? words.of("saving", other, usd.get()) : words.of("saving.untold", other);
    }

    /** From the least to the most; empty where it is nothing. */
    private Optional<String> range(List<PlanReason> alike, ToDoubleFunction<Swap> value) {
        double[] sorted =
                alike.stream().map(MixedPlan::swap).mapToDouble(value).sorted().toArray();
        String least = Phrases.usd(sorted[0]);
        String most = Phrases.usd(sorted[sorted.length - 1]);
        return most.equals(Phrases.usd(0))
                ? Optional.empty()
                : Optional.of(least.equals(most) ? least : words.of("between", least, most));
    }

    /** The method it is held against; not by its name where the sheet offers none by it, and so says nowhere what it is. */
    private String other(List<PlanReason> alike, String unnamed) {
        Method other = swap(alike.get(0)).method();
        return choices.methods().contains(other) ? words.name(other, "sentence") : words.of(unnamed);
    }

    private static Swap swap(PlanReason reason) {
        return reason.swap().orElseThrow();
    }
}
