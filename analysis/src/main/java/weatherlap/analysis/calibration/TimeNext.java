package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.price.CrewRate;

/**
 * A step that totals cannot tell from others, and what timing it would tell.
 *
 * @param openUsd width of its 90 % interval in labor of an average job, USD
 * @param thenUsd the same once it was timed in {@value #TIMINGS} more jobs
 */
public record TimeNext(LabourStep step, double openUsd, double thenUsd) {
    /** Jobs in which a step would be timed. */
    public static final int TIMINGS = 10;

    private static final int STEPS = 5;
    /** Share of what the table and the pace of shops leave open below which the jobs have told a step apart (judgement). */
    private static final double TOLD_APART = 0.5;

    /** Steps worth most, first; at most five. */
    static List<TimeNext> of(
            Assumptions assumptions,
            CalibrationOptions options,
            JobTable table,
            PaceFit fit,
            List<StepFit> steps,
            List<Double> usdPerMinute) {
        double spread = Math.hypot(fit.noise(), assumptions.scenario().value(Scalar.OPENING_SPREAD));
        return IntStream.range(0, steps.size())
                .filter(s -> usdPerMinute.get(s) > 0 && !isToldApart(table, options, s, steps.get(s)))
                .mapToObj(s -> {
                    StepFit step = steps.get(s);
                    double open = (step.highMinutes() - step.lowMinutes()) * usdPerMinute.get(s);
                    double one = step.fittedMinutes() * spread;
                    double less = one / Math.sqrt(one * one + TIMINGS * Math.pow(step.standardError(), 2));
                    return new TimeNext(step.step(), open, open * less);
                })
                .filter(next -> next.thenUsd() < next.openUsd())
                .sorted(Comparator.comparingDouble(next -> next.thenUsd() - next.openUsd()))
                .limit(STEPS)
                .toList();
    }

    /** What a minute of each step's rate makes in labor of an average job, USD. */
    static List<Double> usdPerMinute(Assumptions assumptions, JobTable table) {
        double[] usd = new double[table.steps().size()];
        double each = Units.minutesToHours(usdPerHour(assumptions))
                / Math.max(1, table.lines().size());
        table.lines().forEach(line -> {
            for (int i = 0; i < line.steps().length; i++) {
                usd[line.steps()[i]] += line.weights()[i] * each;
            }
        });
        return Arrays.stream(usd).boxed().toList();
    }

    private static boolean isToldApart(JobTable table, CalibrationOptions options, int step, StepFit fit) {
        double before =
                Math.hypot(Math.sqrt(table.variances().getEntry(step)), options.paceSpread() * fit.priorMinutes());
        double scale = fit.priorMinutes() > 0 ? fit.fittedMinutes() / fit.priorMinutes() : 1;
        return fit.standardError() < TOLD_APART * before * Math.min(1, scale);
    }

    /** Of a person, where the scenario looks wages up. */
    private static double usdPerHour(Assumptions assumptions) {
        String region = assumptions.scenario().choice(Choice.REGION);
        return CrewRate.usdPerPersonHour(
                        assumptions.wages().stream()
                                .filter(wage -> wage.region().equals(region))
                                .toList(),
                        assumptions.scenario().whole(Scalar.CREW_SIZE))
                .value();
    }
}
