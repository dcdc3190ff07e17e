package weatherlap.datasets.assumptions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;

/** Assumptions with each number at the end of its range that is worst for what {@link CrossChecks} asks of them together. */
final class WorstCorners {
    private WorstCorners() {}

    /** In the coldest weather of its range and in the warmest. */
    static List<Assumptions> of(Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        Scenario worst = scenario;
        for (Scalar scalar : List.of(Scalar.HOURS_PER_DAY, Scalar.CREW_SIZE, Scalar.FAILED_SEAL_PASSES)) {
            worst = worst.with(scalar, whole(scalar, range(scenario, scalar).map(ThreePoint::low), worst));
        }
        for (Scalar scalar : List.of(
                Scalar.TRAVEL_MINUTES_PER_DAY,
                Scalar.GROSS_MARGIN,
                Scalar.NET_PROFIT,
                Scalar.SERVICE_RESERVE,
                Scalar.SOUND_SEAL_PASSES)) {
            worst = worst.with(scalar, whole(scalar, range(scenario, scalar).map(ThreePoint::high), worst));
        }
        Scenario corner = worst;
        List<LabourStep> slowest =
                assumptions.steps().stream().map(WorstCorners::slowest).toList();
        Optional<ThreePoint> temperature = range(scenario, Scalar.TEMPERATURE_F);
        return Stream.of(temperature.map(ThreePoint::low), temperature.map(ThreePoint::high))
                .map(end -> end.orElse(scenario.value(Scalar.TEMPERATURE_F)))
                .map(f -> assumptions.with(corner.with(Scalar.TEMPERATURE_F, f)).withSteps(slowest))
                .toList();
    }

    private static Optional<ThreePoint> range(Scenario scenario, Scalar scalar) {
        return scenario.settings().get(scalar).range();
    }

    private static double whole(Scalar scalar, Optional<Double> end, Scenario scenario) {
        double value = end.orElse(scenario.value(scalar));
        return scalar.whole() ? Math.rint(value) : value;
    }

    private static LabourStep slowest(LabourStep step) {
        return step.driver() == Driver.DAY
                ? step.withMinutes(ThreePoint.exactly(step.minutes().high()))
                : step;
    }
}
