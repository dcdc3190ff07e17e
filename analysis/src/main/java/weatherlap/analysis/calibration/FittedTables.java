package weatherlap.analysis.calibration;

import java.util.List;
import weatherlap.analysis.words.OwnRecords;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;

/** Assumptions with fitted rates in place of the old ones, each with what it rests on. */
final class FittedTables {
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
                fit.jobs() == 0 ? step.origin() : OwnRecords.origin(fit.jobs(), step.origin()));
    }

    static boolean isFitted(Assumptions assumptions) {
        return assumptions.steps().stream()
                .anyMatch(step -> OwnRecords.isFitted(step.origin().source()));
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
