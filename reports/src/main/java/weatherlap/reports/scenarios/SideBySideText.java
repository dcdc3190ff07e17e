package weatherlap.reports.scenarios;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.scenarios.FlipKind;
import weatherlap.analysis.scenarios.ScenarioRun;
import weatherlap.analysis.scenarios.SideBySide;
import weatherlap.analysis.scenarios.SideBySide.Flip;
import weatherlap.analysis.scenarios.SideBySide.Headline;
import weatherlap.analysis.scenarios.SideBySide.Regret;
import weatherlap.analysis.tables.Segmentation;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.study.ChangedKinds;
import weatherlap.charts.study.Slopes;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;

/** What sets of assumptions make of the answer, in sentences, tables and a picture. */
record SideBySideText(SideBySide sets) {
    private static final int MOST_FLIPS = 60;

    private Contrast pair() {
        return sets.runs().get(0).contrast();
    }

    /** A sentence a set. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (Headline row : sets.headlines()) {
            boolean first = sentences.isEmpty();
            String who = pair().cheaper(row.differenceUsd()).inSentence();
            String saved = Numbers.usd(Math.abs(row.differenceUsd()));
            String answer = "Under \"" + row.run().name() + "\", " + who + " saves a family " + saved + " a house";
            sentences.add(
                    first
                            ? answer + "."
                            : answer + ": " + Numbers.usd(Math.abs(row.changeUsd())) + " "
                                    + (row.changeUsd() < 0 ? "better" : "worse") + " for "
                                    + pair().first().inSentence() + " than under the first set, give or take "
                                    + Numbers.usd(row.errorUsd()) + " of chance. "
                                    + (row.flips().isEmpty()
                                            ? "No house changes its plan."
                                            : "The plan changes at "
                                                    + Numbers.count(row.flips().size(), "house", "houses") + "."));
        }
        return sentences;
    }

    TableView headlines() {
        TableView.Builder table = TableView.of("The sets")
                .texts("set")
                .numbers(
                        pair().first().label() + " less " + pair().second().inSentence(),
                        "change",
                        "error",
                        "plans that change");
        for (Headline row : sets.headlines()) {
            table.row(
                    row.run().name(),
                    Numbers.signedUsd(row.differenceUsd()),
                    Numbers.signedUsd(row.changeUsd()),
                    Numbers.usd(row.errorUsd()),
                    Numbers.plain(row.flips().size(), 0));
        }
        return table.build();
    }

    /** How many plans change, by set and kind of house. */
    ChangedKinds changedKinds(String scope) {
        List<FlipKind> kinds = FlipKind.of(sets);
        return new ChangedKinds(
                scope,
                sets.runs().stream().skip(1).map(ScenarioRun::name).toList(),
                Segmentation.OF_HOUSES.stream()
                        .map(by -> new ChangedKinds.Group(by.title(), kinds(by, kinds)))
                        .toList());
    }

    private static List<ChangedKinds.Kind> kinds(Segmentation by, List<FlipKind> all) {
        Map<String, List<FlipKind>> bySet = all.stream()
                .filter(kind -> kind.by() == by)
                .collect(Collectors.groupingBy(FlipKind::label, LinkedHashMap::new, Collectors.toList()));
        return bySet.entrySet().stream()
                .map(kind -> new ChangedKinds.Kind(
                        kind.getKey(),
                        kind.getValue().get(0).houses(),
                        kind.getValue().stream().map(FlipKind::changed).toList()))
                .toList();
    }

    TableView flips() {
        List<Flip> all =
                sets.headlines().stream().flatMap(row -> row.flips().stream()).toList();
        String caption = "Which plans change"
                + (all.size() > MOST_FLIPS ? " (the first " + MOST_FLIPS + "; flips.csv has all)" : "");
        TableView.Builder table = TableView.of(caption).texts("set", "house", "plan before", "plan after");
        all.stream()
                .limit(MOST_FLIPS)
                .forEach(flip -> table.row(
                        flip.scenario(),
                        flip.before().result().house().id(),
                        flip.planBefore(),
                        flip.planAfter().equals(flip.planBefore())
                                ? "the same methods at other windows"
                                : flip.planAfter()));
        return table.build();
    }

    /** The rule of each set. */
    List<String> rules() {
        return sets.runs().stream()
                .map(run -> run.name() + ": "
                        + String.join(" ", run.decision().study().rule().lines()))
                .toList();
    }

    /** What each rule costs a house in each world, beside the best choice there. */
    TableView regrets() {
        TableView.Builder table = TableView.of(
                        "What a rule costs a house more than the best choice, by where it is used")
                .texts("rule of");
        sets.runs().forEach(run -> table.numbers("in " + run.name()));
        List<Regret> regrets = sets.regrets();
        for (ScenarioRun run : sets.runs()) {
            List<String> cells = new ArrayList<>();
            cells.add(run.name());
            regrets.stream()
                    .filter(regret -> regret.ruleOf().equals(run.name()))
                    .forEach(regret -> cells.add(Numbers.usd(regret.regretUsd())));
            table.row(cells.toArray(String[]::new));
        }
        return table.build();
    }

    Slopes slopes(String scope) {
        return new Slopes(
                scope,
                "Solid: " + pair().first().inSentence() + "; dashed: "
                        + pair().second().inSentence()
                        + ". What a family pays over the years, "
                        + range(pair().first()) + "; " + range(pair().second()) + ".",
                sets.runs().stream().map(ScenarioRun::name).toList(),
                MethodStyle.of(pair().first()),
                MethodStyle.of(pair().second()),
                List.of(
                        panel("price", MethodResult::priceUsd, Numbers::usd),
                        panel("crew days", MethodResult::crewDays, days -> Numbers.plain(days, 1)),
                        panel("chance of a leak", MethodResult::leakProbability, share -> Numbers.percent(share, 1)),
                        plans("cost to the family", Plan::horizonCostUsd, Numbers::usd)));
    }

    private String range(Method method) {
        DoubleSummaryStatistics costs = sets.runs().stream()
                .mapToDouble(run -> run.meanPlan(method, Plan::horizonCostUsd))
                .summaryStatistics();
        return "by " + method.inSentence() + ": " + Numbers.usd(costs.getMin()) + " to " + Numbers.usd(costs.getMax());
    }

    private Slopes.Panel panel(String label, ToDoubleFunction<MethodResult> of, DoubleFunction<String> shown) {
        return new Slopes.Panel(
                label,
                sets.runs().stream().map(run -> run.mean(pair().first(), of)).toList(),
                sets.runs().stream().map(run -> run.mean(pair().second(), of)).toList(),
                shown);
    }

    private Slopes.Panel plans(String label, ToDoubleFunction<Plan> of, DoubleFunction<String> shown) {
        return new Slopes.Panel(
                label,
                sets.runs().stream()
                        .map(run -> run.meanPlan(pair().first(), of))
                        .toList(),
                sets.runs().stream()
                        .map(run -> run.meanPlan(pair().second(), of))
                        .toList(),
                shown);
    }
}
