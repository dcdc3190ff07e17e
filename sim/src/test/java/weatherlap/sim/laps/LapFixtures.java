package weatherlap.sim.laps;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.LapFault.SeenAs;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.Workmanship;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.rain.OpeningExposure;

/** Invented houses, faults and a scenario for the tests of this package. */
final class LapFixtures {
    static final LapFault HEAD_REVERSED = old("head_reversed", Joint.HEAD, 0.2, FirstLine.CLADDING, Lap.REVERSED, 2.5);
    static final LapFault PAN_MISSING = old("pan_missing", Joint.SILL, 0.8, FirstLine.CAPPING, Lap.MISSING, 1.5);
    static final LapFault JAMB_OPEN = old("jamb_open", Joint.JAMB, 0.3, FirstLine.NONE, Lap.MISSING, 1);
    static final LapFault CORNER_UNROLLED =
            work("corner_unrolled", Joint.CORNER, MethodScope.of(Method.FULL_FLANGE), 0.18, FirstLine.CLADDING);
    static final LapFault SILL_SEALED = work(
            LeakTables.SEALED_SILL_FLANGE, Joint.SILL, MethodScope.of(Method.FULL_FLANGE), 0.07, FirstLine.SEALANT);
    static final LapFault CAPPING_SEAM =
            work("capping_seam", Joint.CORNER, MethodScope.of(Method.INSERT), 0.1, FirstLine.CAPPING);
    static final List<LapFault> FAULTS =
            List.of(HEAD_REVERSED, PAN_MISSING, JAMB_OPEN, CORNER_UNROLLED, SILL_SEALED, CAPPING_SEAM);

    private static final Map<Scalar, Double> VALUES = Map.ofEntries(
            Map.entry(Scalar.HORIZON_YEARS, 20.0),
            Map.entry(Scalar.WARRANTY_YEARS, 10.0),
            Map.entry(Scalar.DISCOUNT_RATE, 0.05),
            Map.entry(Scalar.SOUND_SEAL_PASSES, 0.01),
            Map.entry(Scalar.FAILED_SEAL_PASSES, 0.2),
            Map.entry(Scalar.CLADDING_PASSES, 0.25),
            Map.entry(Scalar.SEALANT_LIFE_SHAPE, 1.90753),
            Map.entry(Scalar.SEALANT_LIFE_YEARS, 11.251981),
            Map.entry(Scalar.CAPPING_LIFE_SHAPE, 2.0),
            Map.entry(Scalar.CAPPING_LIFE_YEARS, 15.0),
            Map.entry(Scalar.DRYING_L_PER_YEAR, 0.1),
            Map.entry(Scalar.DAMAGE_MEDIAN_L_PER_YEAR, 4.0),
            Map.entry(Scalar.DAMAGE_SPREAD, 1.2),
            Map.entry(Scalar.HOUSE_CORRELATION, 0.3),
            Map.entry(Scalar.INSPECTION_RELIABILITY, 0.85));

    private LapFixtures() {}

    static Scenario scenario() {
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value = VALUES.getOrDefault(scalar, scalar.low());
            Origin origin = new Origin("scenario.toml", scalar.key(), Basis.INVENTED, "");
            settings.put(scalar, new Setting(scalar, value, Optional.empty(), origin));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(
                    choice,
                    choice.allowed().isEmpty() ? "any" : choice.allowed().get(0));
        }
        choices.put(Choice.WORKMANSHIP, "typical");
        return new Scenario(settings, choices);
    }

    static Assumptions assumptions(List<LapFault> faults, Scenario scenario) {
        return new Assumptions(List.of(), List.of(), List.of(), List.of(), faults, List.of(), scenario);
    }

    static LeakTables tables() {
        return LeakTables.of(assumptions(FAULTS, scenario()));
    }

    static LapFault old(String id, Joint joint, double prior, FirstLine line, Lap seen, double stainOdds) {
        return new LapFault(
                id,
                joint,
                id.replace('_', ' '),
                "lets water in",
                MethodScope.of(Method.INSERT),
                FaultKind.EXISTING,
                Condition.ALWAYS,
                Map.of(Barrier.HOUSEWRAP, prior, Barrier.BUILDING_PAPER, prior / 2, Barrier.NONE, 0.0),
                Map.of(),
                Map.of(),
                line,
                new ThreePoint(0.005, 0.03, 0.1),
                Optional.of(new SeenAs(joint, seen)),
                stainOdds,
                new Origin("lap-faults.csv", id, Basis.INVENTED, ""));
    }

    static LapFault work(String id, Joint joint, MethodScope method, double typical, FirstLine line) {
        return new LapFault(
                id,
                joint,
                id.replace('_', ' '),
                "lets water in",
                method,
                FaultKind.NEW,
                Condition.ALWAYS,
                Map.of(),
                Map.of(),
                Map.of(
                        Workmanship.CAREFUL,
                        typical / 3,
                        Workmanship.TYPICAL,
                        typical,
                        Workmanship.HURRIED,
                        typical * 2),
                line,
                new ThreePoint(0.001, 0.01, 0.02),
                Optional.empty(),
                1,
                new Origin("lap-faults.csv", id, Basis.INVENTED, ""));
    }

    static Opening opening(String id, Lap head, Lap jamb, Lap sill, Sighting stain) {
        return MadeOpening.of(id)
                .in(Room.BEDROOM)
                .at(40, 36)
                .laps(head, jamb, sill, stain)
                .opening();
    }

    static Opening unseen(String id) {
        return opening(id, Lap.UNKNOWN, Lap.UNKNOWN, Lap.UNKNOWN, Sighting.UNKNOWN);
    }

    static House house(Barrier barrier, List<Opening> openings) {
        Elevation wall = MadeWall.of("north", openings).size(40, 18).wall();
        return MadeHouse.of("h1", wall).over(barrier).storeys(2).house();
    }

    /** Water at the joints of a 3 × 5 ft window, roughly in the shares that the rain model gives. */
    static OpeningExposure exposure(double litresPerM2Year) {
        Map<Joint, Double> litres = new EnumMap<>(Joint.class);
        litres.put(Joint.HEAD, 0.25 * litresPerM2Year);
        litres.put(Joint.JAMB, 0.15 * litresPerM2Year);
        litres.put(Joint.SILL, 1.4 * litresPerM2Year);
        litres.put(Joint.CORNER, 0.3 * litresPerM2Year);
        litres.put(Joint.FIELD, 0.65 * litresPerM2Year);
        return new OpeningExposure(litresPerM2Year, litresPerM2Year, 0, litres, 0.25, litresPerM2Year / 2);
    }
}
