package weatherlap.analysis.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.rule.Rule;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Simulator;

/** Seasons of the demo's first houses. */
class SeasonStudyTest {
    private static final Rule INSERT = new Rule.Always(Method.INSERT);
    private static final OptionalDouble DRY = OptionalDouble.empty();

    private static Scenario scenario;
    private static List<HouseChoice> choices;

    @BeforeAll
    static void simulate() {
        Assumptions assumptions = AssumptionTables.bundled().assumptions();
        scenario = assumptions.scenario();
        Simulator simulator =
                new Simulator(assumptions, RainClimate.of(DemoClimate.hourly(), scenario), Sampling.SOBOL, 32, 1);
        List<House> houses = DemoPortfolio.load().houses().subList(0, 12);
        List<HouseChoice> found = new ArrayList<>();
        simulator.run(
                houses.iterator(),
                1,
                simulated -> simulated.stream()
                        .map(house -> HouseChoice.of(house, scenario.value(Scalar.RISK_LIMIT)))
                        .toList(),
                found::addAll);
        choices = List.copyOf(found);
    }

    private static Scenario with(double crews, double weeks, double jobs) {
        return scenario.with(Scalar.CREWS, crews)
                .with(Scalar.SEASON_WEEKS, weeks)
                .with(Scalar.SEASON_DAYS_PER_WEEK, 5)
                .with(Scalar.JOBS_WAITING, jobs);
    }

    private static SeasonStudy study(Scenario scenario) {
        return SeasonStudy.of(choices, INSERT, scenario, DRY).orElseThrow();
    }

    @Test
    void daysAreThoseOfAllCrewsLessWhatRainTakes() {
        assertThat(new Season(2, 40, 5, OptionalDouble.of(0.1), 60).crewDays()).isEqualTo(360);
        assertThat(new Season(1, 1, 5, DRY, 1).crewDays()).isEqualTo(5);
        assertThat(new Season(1, 1, 3.5, DRY, 1).crewDays()).isEqualTo(3);
    }

    /** A job wholly by one method is that method's result, to the cent and to the day. */
    @Test
    void aPlanOfOneMethodIsTheJobByThatMethod() {
        int seen = 0;
        for (HouseChoice choice : choices) {
            WaitingHouse job = WaitingHouse.of(choice, scenario.repairUsd().mean());
            HouseResult house = choice.result();
            for (var each : job.wherever().entrySet()) {
                JobOption option = each.getValue();
                if (option.plan().single().filter(each.getKey()::equals).isPresent()) {
                    MethodResult whole = house.method(each.getKey());
                    assertThat(option.crewDays()).isEqualTo(whole.crewDays());
                    assertThat(option.grossProfitUsd()).isEqualTo(whole.grossProfitUsd(), within(1.0));
                    assertThat(option.callbacks() * scenario.repairUsd().mean())
                            .isEqualTo(whole.warrantyUsd(), within(1e-6));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(12);
    }

    @Test
    void whereDaysAreLeftEveryHouseIsDoneAndADayIsWorthNothing() {
        SeasonStudy study = study(with(4, 52, 12));
        assertThat(study.rows()).allSatisfy(row -> {
            assertThat(row.outcome().housesDone().mean()).isEqualTo(12, within(1e-9));
            assertThat(row.oneMoreCrewUsd()).isZero();
        });
        assertThat(study.dayPrice().usd()).isZero();
        double insert = profit(study, Way.ALWAYS_INSERT);
        assertThat(profit(study, Way.RULE)).isEqualTo(insert);
        assertThat(profit(study, Way.BEST_MIX)).isGreaterThanOrEqualTo(insert - 1e-6);
        assertThat(study.row(Way.FAMILY_PLANS).orElseThrow().outcome().familyExtraUsd())
                .isZero();
        for (SeasonRow row : study.rows()) {
            assertThat(row.outcome().familyExtraUsd()).isGreaterThanOrEqualTo(-1e-6);
        }
    }

    private static double profit(SeasonStudy study, Way way) {
        return study.row(way).orElseThrow().outcome().grossProfitUsd().mean();
    }

    /** The best mix earns at least what any other way earns on mean days, never more than its bound, and takes no more days than there are. */
    @Test
    void theBestMixIsBestAndKeepsItsDays() {
        for (double weeks : new double[] {1, 2, 4, 8, 16}) {
            SeasonStudy study = study(with(1, weeks, 40));
            SeasonRow best = study.row(Way.BEST_MIX).orElseThrow();
            int days = best.season().crewDays();
            assertThat(best.outcome().crewDays()).isLessThanOrEqualTo(days);
            double exact = CrewDays.of(
                            WaitingHouse.waiting(
                                            choices.stream()
                                                    .map(c -> WaitingHouse.of(
                                                            c,
                                                            scenario.repairUsd().mean()))
                                                    .toList(),
                                            40)
                                    .stream()
                                    .map(WaitingHouse::options)
                                    .toList(),
                            days)
                    .profitUsd(days);
            assertThat(study.dayPrice().boundUsd()).isGreaterThanOrEqualTo(exact - 1e-6);
            for (SeasonRow row : study.rows()) {
                double onMeanDays = row.outcome().crewDays() / days;
                assertThat(row.way() == Way.BEST_MIX || onMeanDays <= 1 + 1e-9).isTrue();
                assertThat(row.outcome().grossProfitUsd().p90()).isLessThanOrEqualTo(1.5 * exact);
            }
        }
    }

    @Test
    void fewerJobsThanHousesAreSpreadOverThemAndMoreAreSharedOut() {
        assertThat(WaitingHouse.waiting(List.of("a", "b", "c", "d"), 2)).containsExactly("a", "c");
        assertThat(WaitingHouse.waiting(List.of("a", "b"), 5)).containsExactly("a", "a", "a", "b", "b");
    }

    @Test
    void everyAssumptionOfTheSeasonIsSwept() {
        SeasonStudy study = study(with(2, 40, 60));
        assertThat(study.swept().stream().map(SeasonRow::when).distinct())
                .containsExactly(
                        "crews = 1",
                        "crews = 4",
                        "season_weeks = 30",
                        "season_weeks = 48",
                        "season_days_per_week = 4",
                        "season_days_per_week = 6",
                        "jobs_waiting = 30",
                        "jobs_waiting = 120");
    }

    /** In a draw in which work takes half as long again, two thirds of the houses are done. */
    @Test
    void slowWorkLeavesHousesWaiting() {
        WaitingHouse job = WaitingHouse.of(choices.get(0), 1000);
        SeasonOutcome.Done done = new SeasonOutcome.Done(job, MadeJobs.way(2, 500));
        SeasonOutcome outcome = SeasonOutcome.of(List.of(done, done, done), 6);
        assertThat(outcome.housesDone().mean()).isEqualTo((2.0 + 3.0) / 2, within(1e-12));
        assertThat(outcome.grossProfitUsd().mean()).isEqualTo((2.0 * 400 + 3.0 * 600) / 2, within(1e-9));
        assertThat(outcome.crewDays()).isEqualTo(6);
    }
}
