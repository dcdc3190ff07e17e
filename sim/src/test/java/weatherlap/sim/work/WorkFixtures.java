package weatherlap.sim.work;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.quantity.OpeningQuantities;
import weatherlap.sim.quantity.SidingRun;

/** Small round numbers that can be followed by hand. */
public final class WorkFixtures {
    private static final Origin ORIGIN = new Origin("test.csv", "row", Basis.INVENTED, "");

    private static final Map<Scalar, Double> VALUES = Map.ofEntries(
            Map.entry(Scalar.CREW_SIZE, 2.0),
            Map.entry(Scalar.HOURS_PER_DAY, 8.0),
            Map.entry(Scalar.TRAVEL_MINUTES_PER_DAY, 60.0),
            Map.entry(Scalar.TEMPERATURE_F, 60.0),
            Map.entry(Scalar.LEARNING_SLOPE, 1.0),
            Map.entry(Scalar.HEIGHT_FACTOR_SECOND, 1.2),
            Map.entry(Scalar.HEIGHT_FACTOR_THIRD, 1.4),
            Map.entry(Scalar.LEAD_SAFE_FACTOR, 1.25),
            Map.entry(Scalar.BREAKAGE_FRACTION, 0.015),
            Map.entry(Scalar.BREAKAGE_FREEZING_FACTOR, 10.0 / 3),
            Map.entry(Scalar.BREAKAGE_COLD_FACTOR, 25.0 / 3),
            Map.entry(Scalar.BREAKAGE_UNKNOWN_FACTOR, 1.5),
            Map.entry(Scalar.BREAKAGE_BRITTLE_FACTOR, 2.0),
            Map.entry(Scalar.UNIT_PRICE_SPREAD, 0.1),
            Map.entry(Scalar.PERMIT_USD, 75.0),
            Map.entry(Scalar.DISPOSAL_USD_PER_TON, 80.0),
            Map.entry(Scalar.PANES, 2.0),
            Map.entry(Scalar.PANE_THICKNESS_MM, 3.0),
            Map.entry(Scalar.FRAME_LB_PER_FT, 1.0),
            Map.entry(Scalar.GROSS_MARGIN, 0.4),
            Map.entry(Scalar.NET_PROFIT, 0.08),
            Map.entry(Scalar.SERVICE_RESERVE, 0.02),
            Map.entry(Scalar.OVERHEAD_USD_PER_CREW_HOUR, 45.0));

    private WorkFixtures() {}

    /** Scalars as above, the others at their lowest; NECA, gross margin, wages of {@code here}. */
    public static Scenario scenario() {
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value = VALUES.getOrDefault(scalar, scalar.low());
            settings.put(scalar, new Setting(scalar, value, Optional.empty(), ORIGIN));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(
                    choice,
                    choice.allowed().isEmpty() ? "here" : choice.allowed().get(0));
        }
        choices.put(Choice.COLD_CURVE, "neca");
        return new Scenario(settings, choices);
    }

    public static LabourStep step(String id, Driver driver, double minutes) {
        return new LabourStep(
                id,
                MethodScope.EVERY,
                id,
                driver,
                new ThreePoint(minutes / 2, minutes, 1.5 * minutes),
                Condition.ALWAYS,
                false,
                false,
                1,
                ORIGIN);
    }

    public static LabourStep step(String id, Driver driver, double minutes, boolean cold, boolean height, int people) {
        return step(id, driver, minutes, "", cold, height, people);
    }

    public static LabourStep step(
            String id, Driver driver, double minutes, String when, boolean cold, boolean height, int people) {
        return new LabourStep(
                id,
                MethodScope.EVERY,
                id,
                driver,
                new ThreePoint(minutes / 2, minutes, 1.5 * minutes),
                Condition.parse(when, Fact.ofWork()),
                cold,
                height,
                people,
                ORIGIN);
    }

    public static Material item(String id, Driver driver, double perDriver, double waste, double size, double price) {
        return new Material(
                id,
                MethodScope.EVERY,
                id,
                driver,
                perDriver,
                "ft",
                waste,
                size,
                new ThreePoint(price / 2, price, 1.5 * price),
                Condition.ALWAYS,
                ORIGIN);
    }

    public static Assumptions assumptions(List<LabourStep> steps, List<Material> materials) {
        List<UnitPrice> prices = List.of(
                new UnitPrice(Method.FULL_FLANGE, Operation.DOUBLE_HUNG, 200, 4, ORIGIN),
                new UnitPrice(Method.INSERT, Operation.DOUBLE_HUNG, 210, 4, ORIGIN));
        List<Wage> wages =
                List.of(new Wage("here", "carpenter", 30, 0.5, ORIGIN), new Wage("here", "helper", 20, 0.5, ORIGIN));
        return new Assumptions(steps, materials, prices, List.of(), List.of(), wages, scenario());
    }

    /** A 36 × 60 in. double hung on the first storey of a two-storey wall. */
    public static Opening opening(String id, double sillHeightIn, int units) {
        return MadeOpening.of(id).mulled(units).at(24, sillHeightIn).opening();
    }

    public static Elevation elevation(String id, List<Opening> openings) {
        return MadeWall.of(id, openings).size(40, 18).courses(8, 150).wall();
    }

    public static House house(int yearBuilt, Elevation... elevations) {
        return MadeHouse.of("h1", elevations).built(yearBuilt).storeys(2).house();
    }

    private static List<Integer> positions(Elevation wall) {
        return IntStream.range(0, wall.openings().size()).boxed().toList();
    }

    /** Every opening alike: 16 ft of perimeter, 48 fasteners, one opening. */
    public static HouseQuantities quantities(House house, Method method, double panelsDown) {
        Map<Driver, Double> opening =
                Map.of(Driver.OPENING, 1.0, Driver.UNIT, 1.0, Driver.PERIMETER_FT, 16.0, Driver.FASTENER, 48.0);
        return new HouseQuantities(
                Set.of(method),
                house.elevations().stream()
                        .map(e -> new ElevationQuantities(
                                e.openings().isEmpty() ? List.of() : List.of(new SidingRun(positions(e), panelsDown)),
                                e.openings().stream()
                                        .map(o -> new OpeningQuantities(method, opening))
                                        .toList()))
                        .toList());
    }
}
