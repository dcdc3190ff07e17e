package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.calibration.HeldOutError.Verdict;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;

class HeldOutTest {
    private static final Assumptions TABLES = CalibrationFixtures.assumptions();

    private static List<JobRecord> jobs(double pace, int count, double timedShare, long seed) {
        Map<String, Double> minutes = new HashMap<>();
        TABLES.steps()
                .forEach(step -> minutes.put(step.id(), pace * step.minutes().mean()));
        return new JobMaker(TABLES, new MadeShop(minutes), 0.15, timedShare, seed).jobs(count);
    }

    private static Calibration calibrate(List<JobRecord> jobs) {
        return Calibrator.calibrate(TABLES, jobs, CalibrationOptions.ORDINARY);
    }

    /**
     * One job's timed steps all half as long again, its total with them: it is foreseen as before where its forecast has not seen them,
     * and every other job is foreseen slower.
     */
    @Test
    void aJobIsForeseenWithoutItsOwnTimings() {
        List<JobRecord> plain = jobs(1, 12, 0.4, 3);
        int timed = IntStream.range(0, 12)
                .filter(j -> !plain.get(j).stepMinutes().isEmpty())
                .findFirst()
                .orElseThrow();
        List<JobRecord> slow = new ArrayList<>(plain);
        slow.set(timed, CalibrationFixtures.slower(plain.get(timed), 1.5));
        double[] before = foreseen(plain);
        double[] after = foreseen(slow);
        for (int j = 0; j < 12; j++) {
            if (j == timed) {
                assertThat(after[j]).isCloseTo(before[j], within(1e-9));
            } else {
                assertThat(after[j]).isNotCloseTo(before[j], within(1e-6));
            }
        }
    }

    /** Each job a fold of its own. */
    private static double[] foreseen(List<JobRecord> jobs) {
        JobTable table = JobTable.of(TABLES, jobs);
        List<Integer> all = IntStream.range(0, jobs.size()).boxed().toList();
        Fitter.Guess believed = new Fitter(TABLES.scenario(), CalibrationOptions.ORDINARY, table).believed();
        return new Calibrator(TABLES, CalibrationOptions.ORDINARY, table)
                .heldOut(table.withTotals(), all, jobs.size(), believed)
                .byFit();
    }

    /** Half of the jobs timed, seeds 1 to 12: the error held out against the error on 200 jobs that came later. */
    @Test
    void theHeldOutErrorIsThatOfJobsToCome() {
        double heldOut = 0;
        double later = 0;
        for (long seed = 1; seed <= 12; seed++) {
            List<JobRecord> jobs = jobs(1.3, 220, 0.5, seed);
            Calibration calibration = calibrate(jobs.subList(0, 20));
            heldOut += calibration.heldOut().orElseThrow().fitted() / 12;
            later += error(calibration, jobs.subList(20, 220)) / 12;
        }
        assertThat(heldOut).isCloseTo(later, within(0.02));
    }

    private static double error(Calibration calibration, List<JobRecord> jobs) {
        return Math.sqrt(jobs.stream()
                .mapToDouble(job -> {
                    double minutes = JobWork.of(calibration.calibrated(), job).expectedMinutes();
                    double noise = calibration.noise();
                    return Math.log(job.personHours().orElseThrow() / Units.minutesToHours(minutes))
                            + 0.5 * Math.log1p(noise * noise);
                })
                .map(e -> e * e)
                .average()
                .orElseThrow());
    }

    /**
     * Pace 0.92 and 1 / 0.92, the second with the noise of the first mirrored on the log scale, and the tables' own; 60 jobs each, seeds 1
     * to 20: 8 % is about two standard errors, found half of the time, give or take 2 of 20 on each side.
     */
    @Test
    void tooFastAndTooSlowAreJudgedAlike() {
        Map<Verdict, Integer> fast = verdicts(job -> CalibrationFixtures.slower(job, 0.92));
        Map<Verdict, Integer> slow = verdicts(job -> CalibrationFixtures.slower(job, mirrored(job) / 0.92));
        Map<Verdict, Integer> right = verdicts(job -> job);
        assertThat(fast.get(Verdict.FITTED)).isCloseTo(slow.get(Verdict.FITTED), within(3));
        assertThat(Math.min(fast.get(Verdict.FITTED), slow.get(Verdict.FITTED))).isGreaterThan(6);
        assertThat(fast.get(Verdict.TABLES) + slow.get(Verdict.TABLES)).isZero();
        assertThat(right.get(Verdict.FITTED)).isLessThan(4);
    }

    /** What turns a lognormal ratio of mean 1 and spread 0.15 into its mirror image about the median. */
    private static double mirrored(JobRecord job) {
        double minutes = JobWork.of(TABLES, job).expectedMinutes();
        double ratio = job.personHours().orElseThrow() / Units.minutesToHours(minutes);
        return 1 / ((1 + 0.15 * 0.15) * ratio * ratio);
    }

    private static Map<Verdict, Integer> verdicts(UnaryOperator<JobRecord> change) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        List.of(Verdict.values()).forEach(verdict -> counts.put(verdict, 0));
        for (long seed = 1; seed <= 20; seed++) {
            List<JobRecord> jobs = jobs(1, 60, 0, seed).stream().map(change).toList();
            counts.merge(calibrate(jobs).heldOut().orElseThrow().verdict(), 1, Integer::sum);
        }
        return counts;
    }

    /** By hand, without noise: errors log 2 and −log 2 have the same squares; swapping the forecasts turns the gain round. */
    @Test
    void scoresAreSymmetric() {
        double[] actual = {2, 1, 3};
        double[] right = {2, 1, 3};
        double[] wrong = {1, 2, 3};
        HeldOutError better = new HeldOut(actual, wrong, right, new double[3], new double[3]).error(3);
        HeldOutError worse = new HeldOut(actual, right, wrong, new double[3], new double[3]).error(3);
        double square = Math.log(2) * Math.log(2);
        assertThat(better.gain()).isCloseTo(2 * square / 3, within(1e-12));
        assertThat(worse.gain()).isCloseTo(-better.gain(), within(1e-12));
        assertThat(better.gainError()).isCloseTo(square / 3, within(1e-12));
        assertThat(better.tables()).isCloseTo(Math.sqrt(2 * square / 3), within(1e-12));
    }

    /** By hand: a job at its foreseen median stands in the middle, one a log spread above it at Φ(1) = 0.8413. */
    @Test
    void aJobStandsWhereTheForecastHasIt() {
        double log = 0.2;
        double spread = Math.sqrt(Math.expm1(log * log));
        double median = 10 * Math.exp(-log * log / 2);
        double[] foreseen = {10, 10};
        double[] actual = {median, median * Math.exp(log)};
        double[] spreads = {spread, spread};
        assertThat(new HeldOut(actual, foreseen, foreseen, spreads, spreads).places())
                .satisfiesExactly(place -> assertThat(place).isCloseTo(0.5, within(1e-9)), place -> assertThat(place)
                        .isCloseTo(0.8413, within(1e-4)));
    }
}
