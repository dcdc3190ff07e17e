package weatherlap.analysis.calibration;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/**
 * The spread of a crew's pace from house to house, as the scenario holds it: the variance of a job about its fitted minutes, less what
 * the spread of its windows makes of it, s² − s_o² mean(1/n). Its range is the 90 % interval of a variance of that many degrees.
 */
final class CrewSpread {
    private static final int ENOUGH_JOBS = 8;
    private static final double LEAST = 0.02;

    private CrewSpread() {}

    /** The scenario with the spread that the jobs show; as it was where they are too few. */
    static Scenario of(Scenario scenario, List<FittedJob> jobs, PaceFit fit) {
        List<FittedJob> kept = jobs.stream().filter(job -> !job.outlier()).toList();
        if (kept.size() < ENOUGH_JOBS) {
            return scenario;
        }
        double each = kept.stream()
                .mapToDouble(job -> 1.0 / job.job().openings())
                .average()
                .orElseThrow();
        double windows = Math.pow(scenario.value(Scalar.OPENING_SPREAD), 2) * each;
        ChiSquaredDistribution chi = new ChiSquaredDistribution(null, fit.degrees());
        double low = spread(fit, windows, fit.degrees() / chi.inverseCumulativeProbability(0.95));
        double value = spread(fit, windows, 1);
        double high = spread(fit, windows, fit.degrees() / chi.inverseCumulativeProbability(0.05));
        Origin origin = new Origin(
                "scenario.toml",
                Scalar.CREW_SPREAD.key(),
                Basis.OWN_RECORDS,
                "the shop's own records of " + kept.size() + " jobs, less the spread of their windows");
        Map<Scalar, Setting> settings = new EnumMap<>(scenario.settings());
        settings.put(
                Scalar.CREW_SPREAD,
                new Setting(Scalar.CREW_SPREAD, value, Optional.of(new ThreePoint(low, value, high)), origin));
        return new Scenario(settings, scenario.choices());
    }

    private static double spread(PaceFit fit, double windows, double times) {
        double variance = Math.pow(fit.noise(), 2) * times - windows;
        return Math.min(1, Math.sqrt(Math.max(LEAST * LEAST, variance)));
    }
}
