package weatherlap.analysis.calibration;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobTakeoff;
import weatherlap.sim.assumptions.Fact;

/**
 * What records left out and was filled in.
 *
 * @param blanks jobs by the fact that they left out; facts that no step asks of are not counted
 * @param jobs that left out any
 * @param measured jobs that were taken off a measured house
 */
public record FilledIn(Map<Fact, Integer> blanks, int jobs, int measured) {
    /** Nothing is known to have been filled in. */
    static final FilledIn NOTHING = new FilledIn(new EnumMap<>(Fact.class), 0, 0);

    public FilledIn {
        blanks = Collections.unmodifiableMap(new EnumMap<>(blanks));
    }

    static FilledIn of(List<JobRecord> jobs, JobTakeoff takeoff) {
        Map<Fact, Integer> blanks = new EnumMap<>(Fact.class);
        int any = 0;
        int measured = 0;
        for (JobRecord job : jobs) {
            takeoff.filledIn(job).forEach(fact -> blanks.merge(fact, 1, Integer::sum));
            any += takeoff.filledIn(job).isEmpty() ? 0 : 1;
            measured += takeoff.isMeasured(job) ? 1 : 0;
        }
        return new FilledIn(blanks, any, measured);
    }
}
