package weatherlap.reports.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.calibration.FittedJob;
import weatherlap.analysis.calibration.FittedJob.Aside;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.method.Method;

/** Each reason names the numbers that contradict one another; half of the hours reads as what it most likely is. */
class AsideTextTest {
    private static String reason(double tookHours, Map<String, Double> timed, double fitted, double rest, Aside aside) {
        JobRecord job = new JobRecord(
                "job-1",
                Optional.empty(),
                Optional.empty(),
                Method.INSERT,
                Optional.empty(),
                5,
                JobRecord.Counted.NOTHING,
                OptionalDouble.empty(),
                OptionalDouble.of(tookHours),
                Map.of(),
                timed);
        return AsideText.of(new FittedJob(job, fitted, fitted, rest, -5, aside));
    }

    @Test
    void reasonsSayWhatContradictsWhat() {
        assertThat(reason(7, Map.of("in_set", 852.0), 8, 0, Aside.TIMINGS))
                .isEqualTo(
                        "its timed steps add up to 14.2 person-hours, person_hours says 7.0: about half, as if hours of the"
                                + " clock were written for a crew of two");
        assertThat(reason(12, Map.of("in_set", 600.0), 13, 6, Aside.REST))
                .isEqualTo("its hours leave 2.0 for the steps that were not timed, which take 6.0 in such a job");
        assertThat(reason(21.7, Map.of(), 13.9, 13.9, Aside.WHOLE))
                .isEqualTo("took 21.7 person-hours where such a job by this crew takes 13.9");
        assertThat(reason(4.7, Map.of(), 14, 14, Aside.WHOLE)).contains("about a third", "crew of three");
        assertThat(reason(140, Map.of(), 14, 14, Aside.WHOLE)).contains("ten times", "decimal point");
    }
}
