package weatherlap.analysis.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.sim.assumptions.Assumptions;

/** Records as people type them. */
class TypingFaultsTest {
    private static final Assumptions TABLES = CalibrationFixtures.assumptions();

    private static List<JobRecord> jobs(int count, double timedShare, long seed) {
        Map<String, Double> minutes = new HashMap<>();
        TABLES.steps().forEach(step -> minutes.put(step.id(), step.minutes().mean()));
        return new ArrayList<>(new JobMaker(TABLES, new MadeShop(minutes), 0.15, timedShare, seed).jobs(count));
    }

    private static Calibration calibrate(List<JobRecord> jobs) {
        return Calibrator.calibrate(TABLES, jobs, CalibrationOptions.ORDINARY);
    }

    private static StepFit unload(Calibration calibration) {
        return calibration.steps().get(0);
    }

    private static int firstTimed(List<JobRecord> jobs) {
        return IntStream.range(0, jobs.size())
                .filter(j -> !jobs.get(j).stepMinutes().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static JobRecord mistyped(JobRecord job, String step, double factor) {
        Map<String, Double> minutes = new HashMap<>(job.stepMinutes());
        minutes.computeIfPresent(step, (id, taken) -> factor * taken);
        return CalibrationFixtures.with(job, job.personHours().orElseThrow(), minutes);
    }

    /** Typed without its decimal point, or with one too many: unload is set aside by name and its rate stays where it was. */
    @ParameterizedTest
    @CsvSource({"100, 0.2", "10, 0.2", "0.1, 0.2", "100, 0.08"})
    void aMistypedTimingIsSetAsideByName(double factor, double timedShare) {
        List<JobRecord> jobs = jobs(40, timedShare, 5);
        double before = unload(calibrate(jobs)).fittedMinutes();
        int place = firstTimed(jobs);
        jobs.set(place, mistyped(jobs.get(place), "unload", factor));
        Calibration calibration = calibrate(jobs);
        assertThat(calibration.grossTimings()).singleElement().satisfies(timing -> {
            assertThat(timing.job().id()).isEqualTo(jobs.get(place).id());
            assertThat(timing.step().id()).isEqualTo("unload");
            assertThat(timing.minutes()).isEqualTo(jobs.get(place).stepMinutes().get("unload"));
        });
        assertThat(unload(calibration).fittedMinutes()).isCloseTo(before, within(0.15 * before));
    }

    /** Seeds 1 to 40, 40 jobs each, a fifth timed: about 70 timings a set. */
    @Test
    void soundTimingsAreRarelySetAside() {
        int aside = 0;
        for (long seed = 1; seed <= 40; seed++) {
            aside += calibrate(jobs(40, 0.2, seed)).grossTimings().size();
        }
        assertThat(aside).isLessThan(6);
    }

    /** Person-hours of a job whose steps were all timed typed at a third: a contradiction by name, and its total is not fitted. */
    @Test
    void timedMinutesThatContradictTheHoursAreNamed() {
        List<JobRecord> jobs = jobs(40, 0.2, 5);
        int place = firstTimed(jobs);
        JobRecord job = jobs.get(place);
        assertThat(calibrate(jobs).outliers()).isEmpty();
        jobs.set(place, CalibrationFixtures.with(job, job.personHours().orElseThrow() / 3, job.stepMinutes()));
        assertThat(calibrate(jobs).outliers()).singleElement().satisfies(aside -> {
            assertThat(aside.job().id()).isEqualTo(job.id());
            assertThat(aside.aside()).isEqualTo(FittedJob.Aside.TIMINGS);
        });
    }

    /** One job in 40 with its hours halved, or doubled; seeds 1 to 60. */
    @Test
    void halvedJobsAreFoundLikeDoubledOnes() {
        int halved = found(0.5);
        int doubled = found(2);
        assertThat(halved).isCloseTo(doubled, within(8));
        assertThat(Math.min(halved, doubled)).isGreaterThan(45);
    }

    private static int found(double factor) {
        int found = 0;
        for (long seed = 1; seed <= 60; seed++) {
            List<JobRecord> jobs = jobs(40, 0, seed);
            jobs.set(7, CalibrationFixtures.slower(jobs.get(7), factor));
            found += calibrate(jobs).outliers().stream()
                            .anyMatch(o -> o.job().id().equals(jobs.get(7).id()))
                    ? 1
                    : 0;
        }
        return found;
    }

    /** Three of 40 jobs with hours of the clock of a crew of two, or of three. */
    @Test
    void clockHoursAreNamedForWhatTheyAre() {
        for (int crew = 2; crew <= 3; crew++) {
            List<JobRecord> jobs = jobs(40, 0, 8);
            for (int place : List.of(4, 17, 30)) {
                jobs.set(place, CalibrationFixtures.slower(jobs.get(place), 1.0 / crew));
            }
            assertThat(calibrate(jobs).clockHours(crew)).hasSizeGreaterThanOrEqualTo(2);
            assertThat(calibrate(jobs).clockHours(5 - crew)).isEmpty();
        }
        assertThat(calibrate(jobs(40, 0, 8)).clockHours(2)).isEmpty();
    }

    /**
     * A job timed but for a step that is a small part of it, for which its hours leave twice what it takes and more: as a whole they are
     * right to a tenth, and rounding or a pause explains the rest. At five times the hours the rest is set aside for what it is.
     */
    @Test
    void theRestOfAJobThatAgreesInAllIsNoReason() {
        List<JobRecord> jobs = jobs(40, 0.2, 5);
        int place = firstTimed(jobs);
        JobRecord job = jobs.get(place);
        Map<String, Double> minutes = new HashMap<>(job.stepMinutes());
        double all = minutes.values().stream().mapToDouble(m -> m).sum();
        String small = minutes.keySet().stream()
                .filter(step -> minutes.get(step) > 0.06 * all)
                .min(Comparator.comparing(minutes::get))
                .orElseThrow();
        minutes.remove(small);
        jobs.set(place, CalibrationFixtures.with(job, 1.09 * all / 60, minutes));
        Calibration kept = calibrate(jobs);
        assertThat(fitted(kept, job).aside()).isEqualTo(FittedJob.Aside.NOT);
        assertThat(fitted(kept, job).robustDeviations()).isGreaterThan(3.5);
        jobs.set(place, CalibrationFixtures.with(job, 5 * all / 60, minutes));
        assertThat(fitted(calibrate(jobs), job).aside()).isEqualTo(FittedJob.Aside.REST);
        jobs.set(place, CalibrationFixtures.with(job, all / 120, job.stepMinutes()));
        assertThat(fitted(calibrate(jobs), job).aside()).isEqualTo(FittedJob.Aside.TIMINGS);
    }

    private static FittedJob fitted(Calibration calibration, JobRecord job) {
        return calibration.jobs().stream()
                .filter(each -> each.job().id().equals(job.id()))
                .findFirst()
                .orElseThrow();
    }
}
