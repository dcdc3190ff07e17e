package weatherlap.reports.callbacks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.analysis.callbacks.CallbackFit;
import weatherlap.analysis.callbacks.FaultGroup;
import weatherlap.analysis.callbacks.LevelFit;
import weatherlap.analysis.callbacks.ServiceReserve;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/** A fit of service calls in sentences and tables. */
record CallbackText(CallbackFit fit) {
    /** Where the shares of the faults bring a level to within this share of what was wanted, they reach it. */
    private static final double NEAR = 0.05;

    String scope() {
        return Numbers.count(fit.jobs().size(), "job", "jobs") + " followed over "
                + Numbers.plain(fit.openingYears(), 0) + " window-years, "
                + Numbers.count(fit.calls(), "call", "calls") + " for leak damage."
                + (fit.measured() == 0
                        ? ""
                        : " Of " + Numbers.count(fit.measured(), "job", "jobs") + " the house was measured.");
    }

    List<String> sentences() {
        return Stream.concat(Stream.of(scope()), found().stream()).toList();
    }

    /** What came of it; {@link #scope} says of what. */
    List<String> found() {
        List<String> sentences = new ArrayList<>();
        fit.methods().values().forEach(level -> sentences.add(sentence(level)));
        sentences.add(groups());
        sentences.add(repair());
        sentences.add(reserve());
        fit.shares().reached().forEach((method, reached) -> {
            CallbackFit.MethodLevel level = fit.methods().get(method);
            if (level != null && Math.abs(reached / level.level().mean() - 1) > NEAR) {
                sentences.add(apart(method, reached, level.level()));
            }
        });
        return sentences;
    }

    /** Where the tables, whose faults methods share, come to another level than a method's own records. */
    static String apart(Method method, double reached, LevelFit.Level own) {
        String both = times(reached) + " what the tables expected, its own records to " + times(own.mean());
        return reached >= own.low() && reached <= own.high()
                ? "For " + method.label() + " the fitted tables come to " + both
                        + ": no further apart than so few records can tell, and other methods share most of its faults."
                : "Lap faults alone do not explain the leaks of " + method.label() + ": the fitted tables come to "
                        + both
                        + ", since other methods share most of its faults. A report with the fitted tables still shows too "
                        + (reached < own.mean() ? "few of them." : "many of them.");
    }

    private static String sentence(CallbackFit.MethodLevel level) {
        return "Of 100 windows like these done by " + level.method().label() + ", about "
                + windows(level.ofHundred(level.level().mean())) + " have leak damage within ten years ("
                + windows(level.ofHundred(level.level().low())) + " to "
                + windows(level.ofHundred(level.level().high())) + ", nine times in ten); the tables expected "
                + windows(level.ofHundred(1)) + ".";
    }

    private static String windows(double count) {
        return Numbers.plain(count, count < 10 ? 1 : 0);
    }

    private String repair() {
        CallbackFit.Repair repair = fit.repair();
        return repair.calls() == 0
                ? "No leak call has a cost, so the price of a repair stays as it was."
                : Numbers.count(repair.calls(), "leak call", "leak calls") + " cost " + Numbers.usd(repair.meanUsd())
                        + " on average; a likely repair moves from "
                        + Numbers.usd(repair.before().likely()) + " to "
                        + Numbers.usd(repair.after().likely()) + ".";
    }

    /** What the records say of old laps, own laps and seals. */
    private String groups() {
        List<String> told = fit.groups().entrySet().stream()
                .filter(e -> e.getValue().tells())
                .map(e -> e.getKey().label() + " (" + times(e.getValue().level().mean()) + ", "
                        + interval(e.getValue().level()) + ")")
                .toList();
        List<String> untold = fit.groups().entrySet().stream()
                .filter(e -> !e.getValue().tells())
                .map(e -> e.getKey().label())
                .toList();
        return (told.isEmpty() ? "" : "The records tell of " + InWords.list(told) + ". ")
                + (untold.isEmpty()
                        ? ""
                        : "They cannot tell of " + InWords.list(untold) + " yet; "
                                + (untold.size() == 1 ? "it moves" : "these move") + " with the rest.");
    }

    private String reserve() {
        ServiceReserve reserve = fit.reserve();
        return reserve.isFitted()
                ? Numbers.count(reserve.calls(), "other call", "other calls") + " within the warranty cost "
                        + Numbers.usd(reserve.meanUsd()) + " on average, on "
                        + Numbers.count(reserve.jobs(), "job", "jobs")
                        + " with a price; the share of the price kept for them moves from "
                        + Numbers.percent(reserve.before(), 1) + " to " + Numbers.percent(reserve.after(), 1) + "."
                : "The share of the price kept for other service stays at "
                        + Numbers.percent(reserve.before(), 1)
                        + ": it takes jobs with a price (price_usd) and what their other calls cost.";
    }

    TableView groupLevels() {
        TableView.Builder table = TableView.of("Where the leaks come from, by what was wrong")
                .texts("fault group")
                .numbers("by the tables", "level", "90% interval", "told by the records");
        fit.groups()
                .forEach((group, level) -> table.row(
                        group.label(),
                        Numbers.plain(level.expected(), 1),
                        times(level.level().mean()),
                        interval(level.level()),
                        level.tells() ? "yes" : "not yet"));
        return table.build();
    }

    TableView levels() {
        TableView.Builder table = TableView.of("Calls and the level that they give, by method")
                .texts("method")
                .numbers("jobs", "windows", "window-years", "calls seen", "by the tables", "level", "90% interval");
        fit.methods()
                .values()
                .forEach(m -> table.row(
                        m.method().label(),
                        Numbers.plain(m.jobs(), 0),
                        Numbers.plain(m.openings(), 0),
                        Numbers.plain(m.openingYears(), 0),
                        Numbers.plain(m.calls(), 0),
                        Numbers.plain(m.expected(), 1),
                        times(m.level().mean()),
                        interval(m.level())));
        table.row("shared by all", "", "", "", "", "", times(fit.shared().mean()), interval(fit.shared()));
        return table.build();
    }

    private static String interval(LevelFit.Level level) {
        return Numbers.plain(level.low(), 2) + " to " + Numbers.plain(level.high(), 2);
    }

    private static String times(double level) {
        return Numbers.plain(level, 2) + " times";
    }

    TableView seen() {
        TableView.Builder table = TableView.of("Leak calls seen and expected")
                .texts("by", "level")
                .numbers("jobs", "window-years", "seen", "by the tables", "fitted");
        fit.seen()
                .forEach(row -> table.row(
                        row.factor(),
                        row.level(),
                        Numbers.plain(row.jobs(), 0),
                        Numbers.plain(row.openingYears(), 0),
                        Numbers.plain(row.seen(), 0),
                        Numbers.plain(row.expected(), 1),
                        Numbers.plain(row.fitted(), 1)));
        return table.build();
    }

    List<String> method() {
        LevelFit.Level lag = fit.lagYears();
        Map<Method, Double> factors = fit.shares().factors();
        List<String> shares = new ArrayList<>();
        for (FaultGroup group : FaultGroup.values()) {
            shares.add(group.label() + " \u00d7 "
                    + Numbers.plain(fit.shares().within().get(group), 2));
        }
        for (Method method : Method.values()) {
            if (factors.containsKey(method)) {
                shares.add("all of " + method.label() + " \u00d7 " + Numbers.plain(factors.get(method), 2));
            }
        }
        return List.of(
                "A call counts for leak damage where its cause is a leak and nobody noted that there was no damage; the first call of a"
                        + " named window counts, later ones are the same leak. A job counts for as long as it was followed.",
                "Expected calls come from the leak model for the house that a record names, where it was measured"
                        + " (--portfolio), mean over its windows. For other jobs it takes a house with the facts of the record: windows of"
                        + " 36 \u00d7 60 in. to each quarter, on each story, under 12 in. of eave (our judgment: records seldom say which"
                        + " way a window faces). What a record leaves out is that of an ordinary job, a barrier unknown.",
                "The level is calls over expected calls, gamma distributed before any record with mean 1, and with a width from the ranges"
                        + " of the tables: variance "
                        + Numbers.plain(fit.prior().shared(), 2)
                        + " for what all methods share and as much again for each method. Little data moves it little. A call comes after"
                        + " an exponential time, here " + Numbers.plain(lag.mean(), 2) + " years on average ("
                        + Numbers.plain(lag.low(), 2) + " to " + Numbers.plain(lag.high(), 2)
                        + "), so that the last years of the records count for less.",
                "Nobody notes which lap a call came from. The method, the house and the year of a call make one group of faults likelier than"
                        + " another: old laps leak from the first year and more where the barrier is poor, seals and capping later. The three"
                        + " levels are gamma distributed about one that they share, and drawn in turn with where each call came from, at the"
                        + " mean time to a call above.",
                "The fitted tables change the share of the water that the lap faults let past, not how often they stand, until the model expects these levels: "
                        + String.join(", ", shares)
                        + ". First the groups are brought to their levels, then, on top, each method to its own. A fault that several methods leave moves with the one that leaves most.",
                "Calls of one house are taken to be independent given its facts. Where laps are good or bad by house, the intervals are too"
                        + " narrow. Families who never call are not seen: the level is that of damage that is reported to the shop.");
    }
}
