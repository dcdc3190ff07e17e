package weatherlap.analysis.calibration;

import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** Assumptions with fitted rates in place of the old ones, each with what it rests on. */
final class FittedTables {
    private static final String FITTED = "the shop's own records of ";
    private static final String BEFORE = "; before: ";
    private static final int LONGEST_BEFORE = 850;

    private FittedTables() {}

    static Assumptions of(Assumptions assumptions, List<StepFit> fits, Scenario scenario) {
        return new Assumptions(
                fits.stream().map(FittedTables::calibrated).toList(),
                assumptions.materials(),
                assumptions.unitPrices(),
                assumptions.sightlines(),
                assumptions.faults(),
                assumptions.wages(),
                scenario);
    }

    private static LabourStep calibrated(StepFit fit) {
        LabourStep step = fit.step();
        return new LabourStep(
                step.id(),
                step.method(),
                step.tradeName(),
                step.driver(),
                moved(step.minutes(), fit.fittedMinutes(), fit.standardError()),
                step.appliesWhen(),
                step.coldSensitive(),
                step.heightSensitive(),
                step.people(),
                fit.jobs() == 0 ? step.origin() : fittedOrigin(step, fit.jobs()));
    }

    private static Origin fittedOrigin(LabourStep step, int jobs) {
        return new Origin(
                step.origin().table(),
                step.origin().row(),
                Basis.OWN_RECORDS,
                FITTED + (jobs == 1 ? "1 job" : jobs + " jobs") + ", shrunk towards the table"
                        + before(step.origin().source()));
    }

    /** What a row rested on before it was ever fitted, in so many characters that a table takes the cell. */
    private static String before(String source) {
        if (source.startsWith(FITTED)) {
            int at = source.indexOf(BEFORE);
            return at < 0 ? "" : source.substring(at);
        }
        return source.isEmpty() ? "" : BEFORE + source.substring(0, Math.min(source.length(), LONGEST_BEFORE));
    }

    static boolean isFitted(Assumptions assumptions) {
        return assumptions.steps().stream()
                .anyMatch(step -> step.origin().source().startsWith(FITTED));
    }

    /**
     * The three points moved and drawn together so that their mean and standard deviation are the fitted ones; drawn further together
     * where the low point would fall below zero.
     */
    static ThreePoint moved(ThreePoint points, double mean, double deviation) {
        double old = Math.sqrt(points.variance());
        if (old == 0) {
            return ThreePoint.exactly(mean);
        }
        double below = points.mean() - points.low();
        double scale = Math.min(deviation / old, mean / below);
        return new ThreePoint(
                Math.max(0, mean - scale * below),
                mean + scale * (points.likely() - points.mean()),
                mean + scale * (points.high() - points.mean()));
    }
}
