package weatherlap.analysis.scenarios;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.scenarios.SideBySide.Flip;
import weatherlap.analysis.scenarios.SideBySide.Headline;
import weatherlap.analysis.scenarios.SideBySide.Regret;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;

/** Sets of assumptions side by side, as tables. */
public final class ScenarioTables {
    /** {@code scenarios.csv}. */
    public static final Layout<Headline> SETS = Layout.<Headline>of(
                    "scenarios.csv", "Scenarios", "One set of assumptions, the first of them to begin with.")
            .text("scenario", "scenario", "name of the set", row -> row.run().name())
            .number(
                    "difference_usd",
                    "difference",
                    "USD",
                    2,
                    "what the first method costs more than the second over the years, mean of a house",
                    Headline::differenceUsd)
            .number(
                    "change_usd",
                    "change",
                    "USD",
                    2,
                    "by how much that is more than in the first set",
                    Headline::changeUsd)
            .number(
                    "change_error_usd",
                    "error of change",
                    "USD",
                    2,
                    "one standard error of the change, on the runs that the sets share",
                    Headline::errorUsd)
            .whole(
                    "houses_changed",
                    "houses changed",
                    "houses whose plan is another than in the first set",
                    row -> row.flips().size())
            .text(
                    "rule",
                    "rule",
                    "the rule that this set gives",
                    row -> String.join(" ", row.run().decision().study().rule().lines()))
            .build();

    /** {@code scenario-methods.csv}. */
    public static final Layout<Side> METHODS = Layout.<Side>of(
                    "scenario-methods.csv",
                    "Methods",
                    "One method of the pair under one set of assumptions, mean of a house.")
            .text("scenario", "scenario", "name of the set", side -> side.run().name())
            .method(Side::method)
            .number("price_usd", "price", "USD", 2, "what the shop asks", side -> side.of(MethodResult::priceUsd))
            .number("crew_days", "crew days", "days", 2, "days of the crew", side -> side.of(MethodResult::crewDays))
            .leakProbability(
                    "of leak damage at any opening within the years looked at",
                    side -> side.of(MethodResult::leakProbability))
            .number(
                    "plan_horizon_cost_usd_mean",
                    "cost over the years",
                    "USD",
                    2,
                    "price, leak damage and glass lost, this method wherever it can be built: mean of the runs",
                    side -> side.run().meanPlan(side.method(), Plan::horizonCostUsd))
            .build();

    /** {@code flips.csv}. */
    public static final Layout<Flip> FLIPS = Layout.<Flip>of(
                    "flips.csv", "Flips", "One house whose plan is another than under the first set of assumptions.")
            .text("scenario", "scenario", "name of the set", Flip::scenario)
            .house(flip -> flip.before().result().house().id())
            .text(
                    "cladding",
                    "cladding",
                    "of the house",
                    flip -> flip.before().result().house().cladding().name().toLowerCase(Locale.ROOT))
            .text("plan_before", "plan before", "methods of the family's plan in the first set", Flip::planBefore)
            .text("plan_after", "plan after", "the same in this set", Flip::planAfter)
            .build();

    /** {@code flips-by-kind.csv}. */
    public static final Layout<FlipKind> KINDS = Layout.<FlipKind>of(
                    "flips-by-kind.csv",
                    "Flips by kind",
                    "One kind of house under one set of assumptions other than the first.")
            .text("scenario", "scenario", "name of the set", FlipKind::scenario)
            .text("told_by", "told by", "what houses are told apart by", kind -> kind.by()
                    .title())
            .text("kind", "kind", "kind of house", FlipKind::label)
            .whole("houses", "houses", "houses of that kind", FlipKind::houses)
            .whole(
                    "houses_changed",
                    "houses changed",
                    "of those, houses whose plan is another than under the first set",
                    FlipKind::changed)
            .build();

    /** {@code scenario-rules.csv}. */
    public static final Layout<Regret> RULES = Layout.<Regret>of(
                    "scenario-rules.csv", "Rules", "The rule of one set of assumptions in the world of another.")
            .text("rule_of", "rule of", "set that the rule was found in", Regret::ruleOf)
            .text("world", "world", "set that it is used in", Regret::world)
            .number(
                    "regret_usd",
                    "above the best pick",
                    "USD",
                    2,
                    "what it costs a house more than the best choice there, mean",
                    Regret::regretUsd)
            .build();

    /** A method in a set. */
    public record Side(ScenarioRun run, Method method) {
        double of(java.util.function.ToDoubleFunction<MethodResult> of) {
            return run.mean(method, of);
        }
    }

    private ScenarioTables() {}

    public static List<ResultTable> of(SideBySide sets) {
        List<Headline> headlines = sets.headlines();
        return List.of(
                ResultTable.of(SETS, headlines),
                ResultTable.of(METHODS, sides(sets)),
                ResultTable.of(
                        FLIPS,
                        headlines.stream().flatMap(row -> row.flips().stream()).toList()),
                ResultTable.of(KINDS, FlipKind.of(sets)),
                ResultTable.of(RULES, sets.regrets()));
    }

    private static List<Side> sides(SideBySide sets) {
        return sets.runs().stream()
                .flatMap(run -> Stream.of(run.contrast().first(), run.contrast().second())
                        .map(method -> new Side(run, method)))
                .toList();
    }
}
