package weatherlap.analysis.backtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.callbacks.ExpectedCalls;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.jobs.FollowedJob;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobMoney;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobStock;
import weatherlap.datasets.jobs.JobStocks;
import weatherlap.datasets.jobs.JobTakeoff;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.datasets.madeup.CallMaker;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.datasets.madeup.MoneyMaker;
import weatherlap.datasets.madeup.ShopMoney;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Simulator;

/** A made-up shop whose pace, prices and leaks are not those of the tables. */
class BacktestTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();
    private static final JobHouses UNMEASURED = JobHouses.unmeasured();
    private static final RainClimate RAIN = RainClimate.of(DemoClimate.hourly(), TABLES.scenario());
    private static final int SEED = 4;
    private static final int PARTS = 3;

    private static List<FollowedJob> followed;
    private static BacktestResult result;

    @BeforeAll
    static void foresee() {
        MoneyMaker money =
                new MoneyMaker(TABLES, ShopMoney.drawn(TABLES, SEED), new JobStocks(TABLES, UNMEASURED), SEED);
        CallMaker calls =
                new CallMaker(CallMaker.drawnLevels(SEED), 0.6, (job, years) -> 0.004 * job.openings() * years, SEED);
        followed = new JobMaker(TABLES, MadeShop.drawn(TABLES, 0.3, SEED), 0.12, 0.2, SEED)
                .jobs(60).stream()
                        .flatMap(job -> calls.followed(money.paid(job)).stream())
                        .toList();
        result = run(followed);
    }

    private static BacktestResult run(List<FollowedJob> jobs) {
        return Backtest.run(
                TABLES, jobs.stream().map(FollowedJob::job).toList(), jobs, UNMEASURED, RAIN, PARTS, () -> {});
    }

    @Test
    void everyAmountIsForeseenThreeTimes() {
        assertThat(result.amounts()).containsExactly(JobAmount.values());
        assertThat(result.scores()).hasSize(15);
        assertThat(result.score(JobAmount.HOURS, Seer.TABLES).jobs()).isEqualTo(60);
        assertThat(result.parts()).isEqualTo(PARTS);
        assertThat(BacktestTables.of(result)).hasSize(4);
    }

    /** The shop differs from the tables by a fit; a plain average knows nothing of stories, siding, rot and lead. */
    @Test
    void calibratedTablesBeatTheAverageAWindowOnHoursAndMoney() {
        for (JobAmount amount : List.of(JobAmount.HOURS, JobAmount.MATERIAL, JobAmount.PRICE)) {
            Score calibrated = result.score(amount, Seer.CALIBRATED);
            assertThat(calibrated.verdict()).as(amount.word()).isEqualTo(Score.Verdict.BETTER);
            assertThat(calibrated.within90()).as(amount.word()).isBetween(0.8, 1.0);
            assertThat(calibrated.bias()).as(amount.word()).isCloseTo(0, within(0.06));
        }
        assertThat(result.score(JobAmount.HOURS, Seer.CALIBRATED).score())
                .isLessThan(result.score(JobAmount.HOURS, Seer.TABLES).score());
        assertThat(result.score(JobAmount.HOURS, Seer.AVERAGE).gain()).isZero();
    }

    /** Ten times the hours, the price and the material of a job change what is foreseen of others, and nothing of its own. */
    @Test
    void theFitNeverSeesTheJobThatItForesees() {
        FollowedJob first = followed.get(7);
        JobRecord job = first.job();
        JobMoney money = job.money();
        JobRecord other = job.keeping(
                        job.temperatureF(),
                        OptionalDouble.of(3 * job.personHours().orElseThrow()),
                        job.facts(),
                        job.stepMinutes())
                .with(new JobMoney(
                        money.quotedUsd(),
                        OptionalDouble.of(9e4),
                        money.estimatedMaterialUsd(),
                        OptionalDouble.of(5e4),
                        List.of()));
        List<FollowedJob> changed = new ArrayList<>(followed);
        changed.set(7, new FollowedJob(other, first.from(), first.until(), List.of()));
        List<Trial> own = of(run(changed), job.id());
        List<Trial> before = of(result, job.id());
        assertThat(own).hasSizeGreaterThanOrEqualTo(before.size());
        for (Trial trial : before) {
            Trial again = own.stream()
                    .filter(t -> t.amount() == trial.amount())
                    .findFirst()
                    .orElseThrow();
            for (Seer seer : Seer.values()) {
                assertThat(again.by(seer).mean())
                        .as(trial.amount() + " " + seer)
                        .isEqualTo(trial.by(seer).mean());
            }
        }
    }

    private static List<Trial> of(BacktestResult of, String id) {
        return of.trials().stream().filter(t -> t.job().id().equals(id)).toList();
    }

    /** Where a window takes what a window takes, whatever the house, the average wins, and that is said. */
    @Test
    void theAverageWinsWhereTheWorldIsAsPlain() {
        List<JobRecord> plain = followed.stream()
                .map(FollowedJob::job)
                .map(job ->
                        job.keeping(job.temperatureF(), OptionalDouble.of(4.0 * job.openings()), job.facts(), Map.of()))
                .map(job -> job.with(JobMoney.NOTHING))
                .toList();
        BacktestResult lost = Backtest.run(TABLES, plain, List.of(), UNMEASURED, RAIN, PARTS, () -> {});
        assertThat(lost.amounts()).containsExactly(JobAmount.HOURS, JobAmount.DAYS);
        assertThat(lost.score(JobAmount.HOURS, Seer.CALIBRATED).verdict()).isEqualTo(Score.Verdict.WORSE);
    }

    @Test
    void curvesRunFromNothingToAll() {
        for (CalibrationCurve curve : result.curves()) {
            assertThat(curve.seen().get(CalibrationCurve.STEPS)).isOne();
            assertThat(curve.seen()).isSorted();
        }
    }

    /** What is called a run's forecast is the run's: a measured house done whole, hours less travel, on the scenario's day. */
    @Test
    void theTablesForeseeWhatARunPrints() {
        Simulator simulator = new Simulator(TABLES, RAIN, Sampling.SOBOL, 256, 1);
        List<House> town = DemoPortfolio.load().houses().subList(0, 4);
        JobHouses houses = JobHouses.of(town);
        ExpectedCalls leaks = new ExpectedCalls(houses, TABLES, RAIN, 256);
        for (House house : town) {
            HouseResult run = simulator.simulate(house);
            for (Method method : Method.openTo(house.cladding())) {
                MethodResult printed = run.method(method);
                JobRecord job = new JobRecord(
                        house.id(),
                        Optional.empty(),
                        Optional.of(house.id()),
                        method,
                        Optional.empty(),
                        house.openingCount(),
                        JobRecord.Counted.NOTHING,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Map.of(),
                        Map.of());
                JobWork work = new JobTakeoff(TABLES, List.of(job), houses).of(job);
                JobStock stock = new JobStocks(TABLES, houses).of(job);
                JobBasis basis = new JobBasis(job, work, stock, work, stock, Optional.empty(), leaks.of(job));
                Foresight tables = new Foresight(TABLES, Map.of(), Optional.empty(), Map.of());
                double travelHours = TABLES.scenario().value(Scalar.TRAVEL_MINUTES_PER_DAY)
                        * TABLES.scenario().value(Scalar.CREW_SIZE)
                        * printed.crewDays()
                        / 60;
                Forecast hours = tables.of(basis, JobAmount.HOURS);
                assertThat(hours.mean()).isCloseTo(printed.labourHours().mean() - travelHours, withinPercentage(0.2));
                assertThat(hours.quantile(0.9))
                        .isCloseTo(printed.labourHours().p90() - travelHours, withinPercentage(4));
                double tipAndPermit = stock.tippingUsd() + TABLES.scenario().value(Scalar.PERMIT_USD);
                assertThat(tables.materialUsd(stock))
                        .isCloseTo(printed.materialUsd().mean() - tipAndPermit, withinPercentage(0.01));
                assertThat(tables.priceUsd(basis)).isCloseTo(printed.priceUsd(), withinPercentage(4));
            }
        }
    }
}
