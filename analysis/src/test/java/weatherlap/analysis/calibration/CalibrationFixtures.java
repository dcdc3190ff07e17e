package weatherlap.analysis.calibration;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/** A shop of a dozen steps. */
final class CalibrationFixtures {
    private CalibrationFixtures() {}

    static Assumptions assumptions() {
        List<LabourStep> steps = List.of(
                step("unload", MethodScope.EVERY, Driver.JOB, 35, "", false),
                step("sweep", MethodScope.EVERY, Driver.DAY, 25, "", false),
                step("staging", MethodScope.EVERY, Driver.ELEVATION, 90, "storeys=2|3", false),
                step("unlock", MethodScope.of(Method.FULL_FLANGE), Driver.PANEL, 2, "", true),
                step("rehang", MethodScope.of(Method.FULL_FLANGE), Driver.PANEL, 3, "", true),
                step("lift_out", MethodScope.of(Method.FULL_FLANGE), Driver.OPENING, 45, "", false),
                step("cut_back", MethodScope.of(Method.FULL_FLANGE), Driver.RETURN_FT, 2.5, "", false),
                step("screws", MethodScope.of(Method.FULL_FLANGE), Driver.FASTENER, 0.3, "", false),
                step("seal", MethodScope.of(Method.FULL_FLANGE), Driver.PERIMETER_FT, 4, "", true),
                step("sashes", MethodScope.of(Method.INSERT), Driver.OPENING, 20, "", false),
                step("set", MethodScope.of(Method.INSERT), Driver.UNIT, 24, "", false),
                step("capping", MethodScope.of(Method.INSERT), Driver.CAPPING_FT, 2.5, "", false),
                step("clean", MethodScope.EVERY, Driver.OPENING, 12, "", false));
        Origin origin = new Origin("wages.csv", "here", Basis.INVENTED, "");
        List<Wage> wages =
                List.of(new Wage("here", "carpenter", 30, 0.4, origin), new Wage("here", "helper", 20, 0.4, origin));
        return new Assumptions(steps, List.of(), List.of(), List.of(), List.of(), wages, scenario());
    }

    /** A job with its hours and all of its timed steps times a factor. */
    static JobRecord slower(JobRecord job, double factor) {
        Map<String, Double> minutes = new LinkedHashMap<>(job.stepMinutes());
        minutes.replaceAll((step, taken) -> factor * taken);
        return with(job, factor * job.personHours().orElseThrow(), minutes);
    }

    static JobRecord with(JobRecord job, double personHours, Map<String, Double> stepMinutes) {
        return new JobRecord(
                job.id(),
                job.date(),
                job.houseId(),
                job.method(),
                job.crew(),
                job.openings(),
                job.counted(),
                job.temperatureF(),
                OptionalDouble.of(personHours),
                job.facts(),
                stepMinutes);
    }

    private static LabourStep step(
            String id, MethodScope method, Driver driver, double likely, String when, boolean cold) {
        return new LabourStep(
                id,
                method,
                id,
                driver,
                new ThreePoint(0.6 * likely, likely, 1.8 * likely),
                Condition.parse(when, Fact.ofWork()),
                cold,
                false,
                1,
                new Origin("labour-steps.csv", id, Basis.INVENTED, ""));
    }

    private static Scenario scenario() {
        Origin origin = new Origin("scenario.toml", "test", Basis.INVENTED, "");
        Map<Scalar, Double> values = Map.ofEntries(
                Map.entry(Scalar.CREW_SPREAD, 0.15),
                Map.entry(Scalar.OPENING_SPREAD, 0.15),
                Map.entry(Scalar.RECORDS_HALF_LIFE_YEARS, 6.0),
                Map.entry(Scalar.CREW_SIZE, 2.0),
                Map.entry(Scalar.LEARNING_SLOPE, 0.95),
                Map.entry(Scalar.TEMPERATURE_F, 60.0),
                Map.entry(Scalar.LEAD_SAFE_FACTOR, 1.25),
                Map.entry(Scalar.BREAKAGE_FREEZING_FACTOR, 10.0 / 3),
                Map.entry(Scalar.BREAKAGE_COLD_FACTOR, 25.0 / 3),
                Map.entry(Scalar.BREAKAGE_UNKNOWN_FACTOR, 1.5),
                Map.entry(Scalar.BREAKAGE_BRITTLE_FACTOR, 2.0),
                Map.entry(Scalar.JOB_WINDOW_WIDTH_IN, 36.0),
                Map.entry(Scalar.JOB_WINDOW_HEIGHT_IN, 60.0),
                Map.entry(Scalar.JOB_GLASS_SHARE, 0.73),
                Map.entry(Scalar.JOB_PANELS_PER_WINDOW, 10.0),
                Map.entry(Scalar.JOB_WINDOWS_PER_WALL, 3.0),
                Map.entry(Scalar.JOB_WINDOWS_A_DAY_FULL_FLANGE, 4.0),
                Map.entry(Scalar.JOB_WINDOWS_A_DAY_FULL_FRAME, 5.0),
                Map.entry(Scalar.JOB_WINDOWS_A_DAY_INSERT, 9.0));
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value = values.getOrDefault(scalar, scalar.low());
            settings.put(scalar, new Setting(scalar, value, Optional.empty(), origin));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(
                    choice,
                    choice.allowed().isEmpty() ? "here" : choice.allowed().get(0));
        }
        return new Scenario(settings, choices);
    }
}
