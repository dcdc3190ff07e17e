package weatherlap.datasets.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

class JobWorkTest {
    private static final LabourStep CUT_NEW_PANELS = new LabourStep(
            "cut_new_panels",
            MethodScope.of(Method.FULL_FLANGE),
            "cut panels for broken ones",
            Driver.BROKEN_PANEL,
            ThreePoint.exactly(10),
            Condition.parse("", Fact.ofWork()),
            false,
            false,
            1,
            new Origin("labour-steps.csv", "cut_new_panels", Basis.INVENTED, ""));

    /** By hand: of 40 panels at 32 °F the warm share times 10/3 breaks, twice as much where they are brittle. */
    @Test
    void brokenPanelsAreExpectedFromThoseTakenDown() {
        double warm = AssumptionTables.bundled().assumptions().scenario().value(Scalar.BREAKAGE_FRACTION);
        assertThat(broken(80, "sound")).isCloseTo(40 * warm, within(1e-9));
        assertThat(broken(32, "sound")).isCloseTo(40 * warm * 10 / 3, within(1e-9));
        assertThat(broken(32, "brittle")).isCloseTo(40 * warm * 20 / 3, within(1e-9));
    }

    private static double broken(double temperatureF, String condition) {
        Assumptions bundled = AssumptionTables.bundled().assumptions();
        Assumptions tables = new Assumptions(
                List.of(CUT_NEW_PANELS),
                bundled.materials(),
                bundled.unitPrices(),
                bundled.sightlines(),
                bundled.faults(),
                bundled.wages(),
                bundled.scenario());
        JobRecord.Counted panels = new JobRecord.Counted(Map.of(Driver.PANEL, 40.0));
        JobRecord job = new JobRecord(
                "job-1",
                Optional.empty(),
                Optional.empty(),
                Method.FULL_FLANGE,
                Optional.empty(),
                10,
                panels,
                OptionalDouble.of(temperatureF),
                OptionalDouble.of(40),
                Map.of(Fact.CLADDING, "vinyl_siding", Fact.SIDING_CONDITION, condition),
                Map.of());
        return JobWork.of(tables, job).weights().get(CUT_NEW_PANELS) / learning(tables, job);
    }

    /** Practice slows or speeds every step of a job alike; with that taken out the weight is the quantity. */
    private static double learning(Assumptions tables, JobRecord job) {
        return new weatherlap.sim.labour.Pace(tables.scenario(), job.openings(), false)
                .atElevation(CUT_NEW_PANELS, List.of(1)).stream()
                        .mapToDouble(amount -> amount.value())
                        .reduce(1, (a, b) -> a * b);
    }
}
