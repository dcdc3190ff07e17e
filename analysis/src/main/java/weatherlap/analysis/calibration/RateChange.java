package weatherlap.analysis.calibration;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import weatherlap.datasets.jobs.EarlierRate;
import weatherlap.sim.assumptions.LabourStep;

/**
 * How a rate moved since an earlier fit. What more records add moves a rate by a normal draw whose variance is what they take off it,
 * V_then − V_now, where the earlier records are among the later ones; at least {@value #LEAST_SHARE} of V_then is counted, as older jobs
 * count less meanwhile.
 *
 * @param then person-minutes by the earlier fit
 * @param now by this one
 * @param sure chance that the rate truly went the way that it moved, 0.5 to 1
 */
public record RateChange(LabourStep step, double then, double now, double sure) {
    private static final double LEAST_SHARE = 0.05;
    private static final double SURE = 0.975;

    /** Of each step that both fits know, the surest first. */
    static List<RateChange> of(List<StepFit> steps, Map<String, EarlierRate> earlier) {
        return steps.stream()
                .filter(fit -> earlier.containsKey(fit.step().id()))
                .map(fit -> of(fit, earlier.get(fit.step().id())))
                .sorted(Comparator.comparingDouble(change -> -change.sure()))
                .toList();
    }

    private static RateChange of(StepFit fit, EarlierRate earlier) {
        double before = Math.pow(earlier.standardError(), 2);
        double variance = Math.max(before - Math.pow(fit.standardError(), 2), LEAST_SHARE * before);
        double moved = Math.abs(fit.fittedMinutes() - earlier.minutes());
        double sure = variance > 0
                ? new NormalDistribution(null, 0, Math.sqrt(variance)).cumulativeProbability(moved)
                : moved > 0 ? 1 : 0.5;
        return new RateChange(fit.step(), earlier.minutes(), fit.fittedMinutes(), sure);
    }

    /** Whether chance alone would seldom move it so far. */
    public boolean isSure() {
        return sure >= SURE;
    }
}
