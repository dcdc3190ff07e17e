package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.page.ReportWords;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;

/** What to do at one house, window by window, and what closes a method there. */
final class PlanWords {
    private PlanWords() {}

    /** The plan in a word: a method, or mixed. */
    static String word(HouseChoice choice) {
        return choice.family().single().map(ReportWords::of).orElse("mixed");
    }

    /** The plan in a line, and how sure the cost alone is. */
    static String line(HouseChoice choice) {
        HouseResult house = choice.result();
        Method cheaper = house.preferred();
        String sure = "cheaper in " + Math.round(100 * house.preferredProbability()) + " of 100 runs";
        return choice.family()
                .single()
                .map(one -> one == cheaper
                        ? ReportWords.of(one) + ", " + sure
                        : ReportWords.of(one) + "; " + cheaper.many() + " everywhere, " + sure
                                + ", can\u2019t be built or would leak too often")
                .orElseGet(() -> "mixed: " + windows(choice.family()));
    }

    /**
     * Sentences: the windows of a mixed plan, what is closed where, and whether any plan keeps the risk limit. Empty where one method
     * does it all and nothing is closed.
     */
    static Stream<String> sentences(HouseChoice choice) {
        Plan plan = choice.family();
        Stream<String> mixed = plan.single().isPresent()
                ? Stream.empty()
                : Stream.of("Plan: " + windows(plan) + ", for " + ReportWords.usd(plan.priceUsd()) + ", "
                        + ReportWords.usd(plan.horizonCostUsd()) + " over the years, chance of leak damage "
                        + ReportWords.percent(plan.leakProbability(), 0) + ".");
        Stream<String> risk = choice.atRisk()
                ? Stream.of("No plan keeps leak risk as low as a family should have it. This is the safest, at "
                        + ReportWords.percent(plan.leakProbability(), 0) + ".")
                : Stream.empty();
        return Stream.of(mixed, closed(choice), risk).flatMap(s -> s);
    }

    /** The windows of each method: a wall that is all of one by its name, else wall/opening. */
    private static String windows(Plan plan) {
        Map<Method, List<String>> places = new EnumMap<>(Method.class);
        for (WallPlan wall : plan.walls()) {
            for (int o = 0; o < wall.methods().size(); o++) {
                List<String> own = places.computeIfAbsent(wall.methods().get(o), method -> new ArrayList<>());
                if (wall.single().isEmpty()) {
                    own.add(wall.elevation().id() + "/"
                            + wall.elevation().openings().get(o).id());
                } else if (o == 0) {
                    own.add(wall.elevation().id());
                }
            }
        }
        return places.entrySet().stream()
                .map(entry -> ReportWords.of(entry.getKey()) + " at " + InWords.list(entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static Stream<String> closed(HouseChoice choice) {
        return Stream.of(Method.values())
                .filter(method -> !choice.closed(method).isEmpty())
                .map(method -> {
                    String where = choice.closed(method).stream()
                            .map(limit -> at(choice, method, limit) + ", " + limit.words())
                            .collect(Collectors.joining("; "));
                    return InWords.capital(method.many()) + " won\u2019t do: " + where + ".";
                });
    }

    private static String at(HouseChoice choice, Method method, Limit limit) {
        if (limit == Limit.RISK_LIMIT) {
            return "for the whole house";
        }
        List<Integer> closed = choice.closedAt(method, limit);
        List<String> openings = choice.result().byOpening().stream()
                .map(ways -> ways.values().iterator().next())
                .map(way -> way.elevation().id() + "/" + way.opening().id())
                .toList();
        return closed.size() == openings.size()
                ? "at every window"
                : "at " + InWords.list(closed.stream().map(openings::get).toList());
    }
}
