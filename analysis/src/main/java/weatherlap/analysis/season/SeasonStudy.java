package weatherlap.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.rule.Rule;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.method.Method;

/**
 * What a season comes to by each way to choose, and how that moves with what is assumed of the season.
 *
 * @param season as assumed
 * @param rows as assumed, a row a way
 * @param dayPrice of the best mix
 * @param swept the best mix and the methods, with one assumption at the low or high end of its range
 */
public record SeasonStudy(Season season, List<SeasonRow> rows, DayPrice dayPrice, List<SeasonRow> swept) {
    private static final String AS_SET = "as set";

    public SeasonStudy {
        rows = List.copyOf(rows);
        swept = List.copyOf(swept);
    }

    /**
     * Studies the season.
     *
     * @param choices of the houses that stand for those that wait
     * @param rule for the houses in their order
     * @param rainShare of working days that rain takes; empty where the weather is not that of the houses
     * @return empty where no house has a window
     */
    public static Optional<SeasonStudy> of(
            List<HouseChoice> choices, Rule rule, Scenario scenario, OptionalDouble rainShare) {
        double repairUsd = scenario.repairUsd().mean();
        List<RuledJob> houses = IntStream.range(0, choices.size())
                .filter(i -> choices.get(i).result().house().openingCount() > 0)
                .mapToObj(i -> new RuledJob(WaitingHouse.of(choices.get(i), repairUsd), rule.method(i)))
                .toList();
        if (houses.isEmpty()) {
            return Optional.empty();
        }
        Season season = Season.of(scenario, rainShare);
        Evaluation asSet = new Evaluation(houses, season);
        List<SeasonRow> swept = new ArrayList<>();
        for (Scalar scalar : Scalar.values()) {
            if (scalar.ofTheSeason()) {
                ends(scenario, scalar).forEach(value -> {
                    Season other = Season.of(scenario.with(scalar, value), rainShare);
                    swept.addAll(new Evaluation(houses, other).rows(when(scalar, value)));
                });
            }
        }
        return Optional.of(new SeasonStudy(season, asSet.rows(AS_SET), asSet.dayPrice(), swept));
    }

    private static String when(Scalar scalar, double value) {
        return scalar.key() + " = "
                + (value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value));
    }

    /** Low and high of the range, where they are not the value. */
    private static List<Double> ends(Scenario scenario, Scalar scalar) {
        double value = scenario.value(scalar);
        return scenario.settings().get(scalar).range().stream()
                .flatMapToDouble(range -> Arrays.stream(new double[] {range.low(), range.high()}))
                .map(end -> scalar.whole() ? Math.rint(end) : end)
                .filter(end -> end != value)
                .boxed()
                .toList();
    }

    /** The row of a way, as assumed. */
    public Optional<SeasonRow> row(Way way) {
        return rows.stream().filter(row -> row.way() == way).findFirst();
    }

    /** A job, and the method that the rule gives it. */
    private record RuledJob(WaitingHouse job, Method rule) {}

    /** One season. */
    private static final class Evaluation {
        private final Season season;
        private final List<WaitingHouse> jobs;
        private final List<Method> ruled;
        private final CrewDays days;

        Evaluation(List<RuledJob> houses, Season season) {
            this.season = season;
            List<Integer> indices = WaitingHouse.waiting(
                    IntStream.range(0, houses.size()).boxed().toList(), season.jobs());
            jobs = indices.stream().map(i -> houses.get(i).job()).toList();
            ruled = indices.stream().map(i -> houses.get(i).rule()).toList();
            days = CrewDays.of(ways(), season.withOneMoreCrew().crewDays());
        }

        private List<List<JobOption>> ways() {
            return jobs.stream().map(WaitingHouse::options).toList();
        }

        DayPrice dayPrice() {
            return DayPrice.of(ways(), season.crewDays());
        }

        List<SeasonRow> rows(String when) {
            Set<Method> open = EnumSet.noneOf(Method.class);
            jobs.forEach(job -> open.addAll(job.wherever().keySet()));
            return Arrays.stream(Way.values())
                    .filter(way -> way.method().map(open::contains).orElse(true))
                    .map(way -> row(when, way))
                    .toList();
        }

        private SeasonRow row(String when, Way way) {
            SeasonOutcome now = outcome(way, season);
            SeasonOutcome more = outcome(way, season.withOneMoreCrew());
            return new SeasonRow(
                    when,
                    way,
                    season,
                    now,
                    more.grossProfitUsd().mean() - now.grossProfitUsd().mean(),
                    way == Way.BEST_MIX ? OptionalDouble.of(dayPrice().usd()) : OptionalDouble.empty());
        }

        private SeasonOutcome outcome(Way way, Season season) {
            List<SeasonOutcome.Done> done =
                    switch (way) {
                        case ALWAYS_FULL_FLANGE, ALWAYS_FULL_FRAME, ALWAYS_INSERT ->
                            each(j -> jobs.get(j).by(way.method().orElseThrow()));
                        case RULE -> each(j -> jobs.get(j).by(ruled.get(j)));
                        case FAMILY_PLANS -> each(j -> jobs.get(j).family());
                        case BEST_MIX -> SeasonOutcome.done(jobs, days.mix(season.crewDays()));
                    };
            return done.isEmpty() ? SeasonOutcome.none() : SeasonOutcome.of(done, season.crewDays());
        }

        private List<SeasonOutcome.Done> each(java.util.function.IntFunction<JobOption> by) {
            return IntStream.range(0, jobs.size())
                    .mapToObj(j -> new SeasonOutcome.Done(jobs.get(j), by.apply(j)))
                    .toList();
        }
    }
}
