package weatherlap.analysis.backtest;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.datasets.jobs.JobRecord;

/**
 * One amount of one job: what came, and what each foresaw that knew nothing of the job's own outcome.
 *
 * @param came as the record has it
 */
public record Trial(JobRecord job, JobAmount amount, double came, Map<Seer, Forecast> foreseen) {
    public Trial {
        foreseen = Collections.unmodifiableMap(new EnumMap<>(foreseen));
    }

    public Forecast by(Seer seer) {
        return foreseen.get(seer);
    }

    public double score(Seer seer) {
        return by(seer).score(came);
    }
}
