package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.callbacks.FittedTables;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.analysis.plan.PlanReason;
import weatherlap.analysis.plan.PlanReasons;
import weatherlap.analysis.plan.ReasonWords;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.handout.Handout.ThirdChoice;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.SidingPlan;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Summary;

/**
 * The family's plan where it takes windows by different methods: a choice beside one method for all.
 *
 * @param leakScore of the plan, percent
 * @param ownRecords whether the shop's own records bear figures of leaks; else they are ranked
 */
record WindowByWindow(
        HouseChoice choice, List<PlanReason> reasons, Summary leakScore, Scenario scenario, boolean ownRecords) {
    static WindowByWindow of(SimulatedHouse house, Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        double riskLimit = scenario.value(Scalar.RISK_LIMIT);
        HouseChoice choice = HouseChoice.of(house, riskLimit);
        return new WindowByWindow(
                choice,
                PlanReasons.of(house.parts(), choice, riskLimit),
                PlanReasons.leakScore(house.parts(), choice.family()),
                scenario,
                FittedTables.isFitted(assumptions));
    }

    /** Empty where one method does all windows: then it is one of the two beside. */
    Optional<ThirdChoice> words(Density density) {
        return choice.family().methods().size() > 1
                ? Optional.of(new ThirdChoice(offer(), named(density)))
                : Optional.empty();
    }

    private String offer() {
        Plan plan = choice.family();
        Map<Method, Long> counts = plan.byOpening().stream()
                .collect(Collectors.groupingBy(
                        method -> method, () -> new EnumMap<>(Method.class), Collectors.counting()));
        String years = Numbers.count(scenario.whole(Scalar.HORIZON_YEARS), "year", "years");
        return "A third choice gives each window the method that suits it: "
                + InWords.list(counts.entrySet().stream()
                        .map(entry -> entry.getKey().inSentence() + " at " + entry.getValue())
                        .toList())
                + ". Price " + Phrases.usd(plan.priceUsd()) + ", "
                + glass() + panels() + ", " + leaks(years)
                + "*. With likely leak damage and the worth of lost glass it comes to "
                + Phrases.usd(plan.horizonCostUsd()) + " over the years."
                + (choice.atRisk()
                        ? " No choice keeps the leak risk within "
                                + (ownRecords
                                        ? Phrases.percent(scenario.value(Scalar.RISK_LIMIT))
                                        : "what was taken for acceptable")
                                + "; this one comes nearest."
                        : "");
    }

    private String leaks(String years) {
        if (ownRecords) {
            return "chance of leak damage in " + years + " " + Phrases.range(leakScore);
        }
        HouseResult house = choice.result();
        return "leak damage in " + years + " "
                + InWords.list(Stream.of(house.first(), house.second())
                        .map(one -> LeakRank.of(choice.family().leakProbability(), one.leakProbability())
                                        .likely()
                                + one.method().inSentence())
                        .toList());
    }

    private String glass() {
        List<Method> plan = choice.family().byOpening();
        List<Map<Method, OpeningResult>> openings = choice.result().byOpening();
        double today = 0;
        double after = 0;
        for (int o = 0; o < plan.size(); o++) {
            OpeningResult opening = openings.get(o).get(plan.get(o));
            today += opening.glassExistingFt2();
            after += opening.glassFt2();
        }
        return "glass against today " + Phrases.glass(today - after, today);
    }

    private String panels() {
        House house = choice.result().house();
        int down = 0;
        for (WallPlan wall : choice.family().walls()) {
            List<Opening> opened = new ArrayList<>();
            for (int o = 0; o < wall.methods().size(); o++) {
                if (wall.methods().get(o).takesSidingDown()) {
                    opened.add(wall.elevation().openings().get(o));
                }
            }
            down += SidingPlan.of(house, wall.elevation(), opened).panelsDown();
        }
        return down == 0 ? "" : ", " + Numbers.count(down, "siding panel", "siding panels") + " down and back";
    }

    private List<Named> named(Density density) {
        return ReasonWords.alike(reasons).stream()
                .map(alike -> new Named(
                        InWords.capital(alike.get(0).method().inSentence()) + " at " + places(alike, density),
                        ownRecords ? ReasonWords.of(alike) : ReasonWords.ranked(alike)))
                .toList();
    }

    /** Every window by wall and key. */
    private String places(List<PlanReason> alike, Density density) {
        Map<String, List<String>> walls = new LinkedHashMap<>();
        House house = choice.result().house();
        alike.forEach(reason -> walls.computeIfAbsent(
                        density.shortWalls()
                                ? Phrases.shortWall(house, reason.elevation())
                                : Phrases.wall(house, reason.elevation()),
                        wall -> new ArrayList<>())
                .add(density.cut(reason.opening().id(), density.longestKey())));
        return walls.entrySet().stream()
                .map(wall -> wall.getKey() + " " + String.join(", ", wall.getValue()))
                .collect(Collectors.joining("; "));
    }
}
