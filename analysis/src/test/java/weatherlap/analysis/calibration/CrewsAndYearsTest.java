package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.regression.OrdinaryCrew;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.EarlierRate;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.madeup.JobHabits;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.explain.Basis;

class CrewsAndYearsTest {
    private static final Assumptions TABLES = CalibrationFixtures.assumptions();
    private static final CalibrationOptions OPTIONS = CalibrationOptions.ORDINARY.withoutHeldOut();

    private static List<JobRecord> jobs(int count, double timedShare, long seed) {
        Map<String, Double> minutes = new HashMap<>();
        TABLES.steps().forEach(step -> minutes.put(step.id(), step.minutes().mean()));
        return new JobMaker(TABLES, new MadeShop(minutes), 0.15, timedShare, seed).jobs(count);
    }

    private static Calibration calibrate(List<JobRecord> jobs) {
        return Calibrator.calibrate(TABLES, jobs, OPTIONS);
    }

    private static double meanRatio(Calibration calibration) {
        return calibration.steps().stream()
                .mapToDouble(fit -> fit.fittedMinutes() / fit.priorMinutes())
                .average()
                .orElseThrow();
    }

    /** A third of 120 jobs by a crew that takes 35 % longer, a fifth of all timed, seeds 1 to 6: one rate for all reads 9 % high. */
    @Test
    void aSlowCrewShowsInItsOwnPaceAndNotInEveryRate() {
        JobHabits habits = new JobHabits(Map.of("south", 1.35), 0, 0, 0, 0, 0, 1);
        double level = 0;
        int held = 0;
        for (long seed = 1; seed <= 6; seed++) {
            Calibration calibration = calibrate(habits.applied(jobs(120, 0.2, seed)));
            level += meanRatio(calibration) / 6;
            for (CrewPace crew : calibration.crews()) {
                double truth = crew.crew().equals("south") ? 1.35 : 1;
                held += crew.low() <= truth && truth <= crew.high() ? 1 : 0;
                assertThat(crew.isApart() && crew.factor() > 1.15)
                        .isEqualTo(crew.crew().equals("south"));
            }
        }
        assertThat(level).isCloseTo(1, within(0.03));
        assertThat(held).isGreaterThanOrEqualTo(14);
    }

    /** Also where every job is timed whole and no total is left to fit. */
    @Test
    void aSlowCrewIsFoundFromTimingsAlone() {
        JobHabits habits = new JobHabits(Map.of("south", 1.35), 0, 0, 0, 0, 0, 1);
        Calibration calibration = calibrate(habits.applied(jobs(40, 1, 3)));
        assertThat(calibration.crews())
                .filteredOn(crew -> crew.crew().equals("south"))
                .singleElement()
                .satisfies(crew -> assertThat(crew.factor()).isBetween(1.2, 1.45));
    }

    /** 400 jobs over 3.3 years, each taking 10 % longer than one a year before. */
    @Test
    void driftIsFoundAndRatesAreThoseOfTheLastDay() {
        Calibration calibration = calibrate(new JobHabits(Map.of(), 0.1, 0, 0, 0, 0, 1).applied(jobs(400, 0.1, 2)));
        assertThat(calibration.drift().orElseThrow()).satisfies(drift -> {
            assertThat(drift.low()).isLessThan(0.1).isPositive();
            assertThat(drift.high()).isGreaterThan(0.1);
            assertThat(drift.isSure()).isTrue();
        });
        assertThat(meanRatio(calibration)).isCloseTo(1, within(0.03));
        assertThat(calibrate(jobs(400, 0.1, 2)).drift().orElseThrow().isSure()).isFalse();
    }

    /** 3.3 years of a shop that turned a quarter slower half a year ago: a short half-life follows it. */
    @Test
    void oldJobsCountLess() {
        List<JobRecord> turned = new ArrayList<>(jobs(400, 0, 4));
        for (int j = 340; j < 400; j++) {
            turned.set(j, CalibrationFixtures.slower(turned.get(j), 1.25));
        }
        double soon = meanRatio(withHalfLife(turned, 0.3));
        double never = meanRatio(withHalfLife(turned, 1000));
        assertThat(soon).isGreaterThan(never + 0.02);
    }

    private static Calibration withHalfLife(List<JobRecord> jobs, double years) {
        Assumptions tables = TABLES.with(TABLES.scenario().with(Scalar.RECORDS_HALF_LIFE_YEARS, years));
        return Calibrator.calibrate(tables, jobs, OPTIONS);
    }

    /** Jobs vary by 15 %; windows by 15 % each, eight a job or so, are taken off it. */
    @Test
    void theSpreadGoesIntoTheScenarioWithItsSource() {
        Calibration calibration = calibrate(jobs(200, 0, 6));
        var setting = calibration.calibrated().scenario().settings().get(Scalar.CREW_SPREAD);
        assertThat(setting.value()).isBetween(0.11, 0.16);
        assertThat(setting.range().orElseThrow().low()).isLessThan(setting.value());
        assertThat(setting.origin().basis()).isEqualTo(Basis.OWN_RECORDS);
        assertThat(setting.origin().source()).contains("records of 200 jobs");
    }

    /** By hand: of three crews with 10 jobs each, one is 0.3 away; spread 0.04 at least, so it is beyond 4.685 spreads of the middle. */
    @Test
    void aCrewFarFromTheOthersIsNoOrdinaryOne() {
        assertThat(OrdinaryCrew.shares(new double[] {0, 0, 0.3}, new double[] {10, 10, 10}))
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(0.5, 0.5, 0);
        assertThat(OrdinaryCrew.shares(new double[] {-0.2, 0.2}, new double[] {10, 10}))
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(0.5, 0.5);
    }

    /** A rate of 10 ± 2 that is 11 ± 1 now: chance moves it by √3, so it truly rose with a probability of Φ(1/√3) = 0.7181. */
    @Test
    void aChangeIsAsSureAsWhatMoreRecordsAdd() {
        StepFit fit = new StepFit(TABLES.steps().get(0), 11, 1, 9, 13, 5);
        String id = TABLES.steps().get(0).id();
        List<RateChange> changes = RateChange.of(List.of(fit), Map.of(id, new EarlierRate(10, 2)));
        assertThat(changes).singleElement().satisfies(change -> {
            assertThat(change.sure()).isCloseTo(0.7181, within(1e-3));
            assertThat(change.isSure()).isFalse();
        });
        assertThat(RateChange.of(List.of(fit), Map.of())).isEmpty();
    }

    /** A shop that turned 40 % slower between two fits. */
    @Test
    void whatChangedSinceTheLastFitIsNamed() {
        Map<String, EarlierRate> earlier = new HashMap<>();
        calibrate(jobs(60, 0.2, 5))
                .steps()
                .forEach(
                        fit -> earlier.put(fit.step().id(), new EarlierRate(fit.fittedMinutes(), fit.standardError())));
        List<JobRecord> slow = jobs(60, 0.2, 5).stream()
                .map(job -> CalibrationFixtures.slower(job, 1.4))
                .toList();
        Calibration now = Calibrator.calibrate(TABLES, slow, JobHouses.unmeasured(), earlier, OPTIONS);
        assertThat(now.changes()).hasSize(13);
        assertThat(now.changes().stream().filter(RateChange::isSure).count()).isGreaterThan(6);
    }

    /** Steps of which totals alone tell the sum; once every job is timed nothing is left to time. */
    @Test
    void stepsThatTotalsCannotTellApartAreToBeTimed() {
        List<TimeNext> next = Calibrator.calibrate(BundledTables.ASSUMPTIONS, BundledTables.jobs(60, 0), OPTIONS)
                .timeNext();
        assertThat(next)
                .hasSize(5)
                .isSortedAccordingTo((a, b) -> Double.compare(b.openUsd() - b.thenUsd(), a.openUsd() - a.thenUsd()));
        assertThat(next).allSatisfy(step -> assertThat(step.thenUsd()).isLessThan(step.openUsd()));
        List<TimeNext> timed = Calibrator.calibrate(BundledTables.ASSUMPTIONS, BundledTables.jobs(200, 1), OPTIONS)
                .timeNext();
        assertThat(timed.stream().mapToDouble(TimeNext::openUsd).sum())
                .isLessThan(0.3 * next.stream().mapToDouble(TimeNext::openUsd).sum());
    }

    private static final class BundledTables {
        static final Assumptions ASSUMPTIONS = AssumptionTables.bundled().assumptions();

        static List<JobRecord> jobs(int count, double timedShare) {
            return new JobMaker(ASSUMPTIONS, MadeShop.drawn(ASSUMPTIONS, 0.1, 3), 0.15, timedShare, 3).jobs(count);
        }
    }
}
