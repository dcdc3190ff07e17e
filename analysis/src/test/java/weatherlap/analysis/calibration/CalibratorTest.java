package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.madeup.JobHabits;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.ThreePoint;

class CalibratorTest {
    private static final Assumptions TABLES = CalibrationFixtures.assumptions();
    private static final CalibrationOptions ORDINARY = CalibrationOptions.ORDINARY;

    private static List<JobRecord> jobs(MadeShop shop, int count, double timedShare, long seed) {
        return new JobMaker(TABLES, shop, 0.15, timedShare, seed).jobs(count);
    }

    private static Calibration calibrate(List<JobRecord> jobs) {
        return Calibrator.calibrate(TABLES, jobs, ORDINARY);
    }

    private static MadeShop tables(double pace) {
        Map<String, Double> minutes = new HashMap<>();
        TABLES.steps()
                .forEach(step -> minutes.put(step.id(), pace * step.minutes().mean()));
        return new MadeShop(minutes);
    }

    /**
     * Shops drawn from the prior, 40 jobs each, a fifth of them timed; seeds 1 to 200, 13 rates each. For one step alone the share has
     * a binomial standard error of 0.021. Seen: 0.924, a little wide.
     */
    @Test
    void intervalsHoldNineTrueRatesInTen() {
        RecoveryStudy study =
                RecoveryStudy.of(TABLES, new RecoveryStudy.Case("40 jobs", 40, 0.2, JobHabits.CAREFUL), 200);
        assertThat(study.inside()).isCloseTo(0.9, within(0.04));
        assertThat(study.standardError()).isLessThan(0.01);
        assertThat(study.insideByStep()).hasSize(13).allSatisfy((step, inside) -> assertThat(inside)
                .isBetween(0.83, 0.98));
    }

    /** A shop half as slow again as the tables. */
    @Test
    void fewJobsMoveTheRatesALittleAndManyALot() {
        MadeShop slow = tables(1.5);
        double few = meanRatio(calibrate(jobs(slow, 2, 0, 7)));
        double many = meanRatio(calibrate(jobs(slow, 200, 0, 7)));
        assertThat(few).isBetween(1.0, 1.35);
        assertThat(many).isBetween(few, 1.6);
        assertThat(many).isCloseTo(1.5, within(0.1));
    }

    private static double meanRatio(Calibration calibration) {
        return calibration.steps().stream()
                .mapToDouble(fit -> fit.fittedMinutes() / fit.priorMinutes())
                .average()
                .orElseThrow();
    }

    @Test
    void withoutJobsTheTablesStand() {
        Calibration none = calibrate(List.of());
        for (StepFit fit : none.steps()) {
            assertThat(fit.fittedMinutes()).isCloseTo(fit.priorMinutes(), within(1e-6));
            assertThat(fit.jobs()).isZero();
        }
        assertThat(none.heldOut()).isEmpty();
    }

    @Test
    void aTimedStepInformsItself() {
        Map<String, Double> minutes = new HashMap<>(tables(1).minutes());
        minutes.put("cut_back", 4.2);
        Calibration calibration = calibrate(jobs(new MadeShop(minutes), 60, 1, 3));
        assertThat(fit(calibration, "cut_back").fittedMinutes()).isCloseTo(4.2, within(0.4));
        assertThat(fit(calibration, "capping").fittedMinutes())
                .isCloseTo(minutes.get("capping"), within(0.1 * minutes.get("capping")));
    }

    private static StepFit fit(Calibration calibration, String id) {
        return calibration.steps().stream()
                .filter(fit -> fit.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aJobThatTookThriceItsTimeIsSetAside() {
        List<JobRecord> jobs = new ArrayList<>(jobs(tables(1), 40, 0, 11));
        jobs.set(5, CalibrationFixtures.slower(jobs.get(5), 3));
        Calibration calibration = calibrate(jobs);
        assertThat(calibration.outliers()).extracting(o -> o.job().id()).contains("job-0006");
        assertThat(calibration.outliers().size()).isLessThanOrEqualTo(2);
        assertThat(meanRatio(calibration)).isCloseTo(1, within(0.1));
    }

    @Test
    void fittedRatesForeseeUnseenJobsBetterWhereTheTablesAreWrong() {
        HeldOutError wrong = calibrate(jobs(tables(1.4), 60, 0, 5)).heldOut().orElseThrow();
        assertThat(wrong.fitted()).isLessThan(wrong.tables());
        assertThat(wrong.fittedHours()).isLessThan(wrong.tablesHours());
        HeldOutError right = calibrate(jobs(tables(1), 60, 0, 5)).heldOut().orElseThrow();
        assertThat(right.fitted()).isCloseTo(right.tables(), within(0.02));
    }

    @Test
    void noiseIsFoundAgain() {
        assertThat(calibrate(jobs(tables(1.3), 300, 0, 9)).noise()).isCloseTo(0.15, within(0.02));
    }

    @Test
    void noRateFallsBelowZero() {
        Map<String, Double> minutes = new HashMap<>(tables(1).minutes());
        List.of("lift_out", "seal", "screws", "cut_back").forEach(id -> minutes.put(id, 0.0));
        for (StepFit fit : calibrate(jobs(new MadeShop(minutes), 400, 0, 2)).steps()) {
            assertThat(fit.fittedMinutes()).isNotNegative();
            assertThat(fit.lowMinutes()).isNotNegative();
        }
    }

    @Test
    void theCalibratedTablesHoldTheFit() {
        Calibration calibration = calibrate(jobs(tables(1.2), 40, 0.2, 4));
        for (int s = 0; s < calibration.steps().size(); s++) {
            LabourStep step = calibration.calibrated().steps().get(s);
            StepFit fit = calibration.steps().get(s);
            assertThat(step.minutes().mean()).isCloseTo(fit.fittedMinutes(), within(1e-9 * fit.fittedMinutes()));
            assertThat(step.minutes().variance()).isLessThanOrEqualTo(Math.pow(fit.standardError(), 2) * (1 + 1e-9));
            assertThat(step.origin().source()).contains("job");
        }
    }

    @Test
    void tablesThatWereFittedAreKnownAndTheirSourcesDoNotGrow() {
        List<JobRecord> jobs = jobs(tables(1.2), 20, 0.2, 4);
        Calibration once = calibrate(jobs);
        Calibration twice = Calibrator.calibrate(once.calibrated(), jobs, ORDINARY);
        assertThat(Calibrator.isFitted(TABLES)).isFalse();
        assertThat(Calibrator.isFitted(once.calibrated())).isTrue();
        assertThat(twice.calibrated().steps())
                .allSatisfy(step -> assertThat(step.origin().source()).containsOnlyOnce("own records"));
    }

    /** By hand: (6, 10, 18) has mean 10.667 and low point 4.667 below it; at mean 4 and the same spread the low point would be −0.667. */
    @Test
    void aLowPointIsNeverBelowZero() {
        ThreePoint points = new ThreePoint(6, 10, 18);
        ThreePoint moved = FittedTables.moved(points, 4, Math.sqrt(points.variance()));
        assertThat(moved.low()).isZero();
        assertThat(moved.mean()).isCloseTo(4, within(1e-12));
    }

    @Test
    void jobsThatTellNothingAreNamed() {
        JobRecord silent = new JobRecord(
                "job-x",
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                weatherlap.sim.method.Method.INSERT,
                java.util.Optional.empty(),
                4,
                JobRecord.Counted.NOTHING,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Map.of(),
                Map.of());
        assertThat(calibrate(List.of(silent)).skipped()).containsExactly("job-x");
    }
}
