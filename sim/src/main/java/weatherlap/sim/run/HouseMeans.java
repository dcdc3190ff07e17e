package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.AdmittedShares;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.many.Recent;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.OpeningRain;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;
import weatherlap.sim.random.Uniforms;
import weatherlap.sim.run.HouseLeaks.RepairMeans;
import weatherlap.sim.work.WorkTakeoff;

/**
 * Means of one house under two methods, worked out again and again as assumptions change: those of {@link Simulator#simulate}, without
 * what only their bands need. What a change does not touch is kept from before, so that a sweep costs what it changes. Not for several
 * threads at once.
 */
public final class HouseMeans {
    /** What the rain at the openings hangs on, beside the climate. */
    private static final Set<Scalar> OF_RAIN = EnumSet.range(Scalar.WALL_FACTOR_BARE, Scalar.YEAR_SPREAD);

    /** What is believed of the laps. */
    private static final Set<Scalar> OF_LAPS = EnumSet.of(
            Scalar.TEMPERATURE_F,
            Scalar.TAPE_WARM_F,
            Scalar.COLD_TAPE_ODDS,
            Scalar.HOUSE_CORRELATION,
            Scalar.INSPECTION_RELIABILITY,
            Scalar.SASH_WEIGHTS_UNTIL_YEAR,
            Scalar.FLANGE_FROM_YEAR,
            Scalar.WOOD_FLANGE_FROM_YEAR);

    /** What follows from them. */
    private static final Set<Scalar> OF_LEAKS = with(
            EnumSet.range(Scalar.SOUND_SEAL_PASSES, Scalar.DAMAGE_SPREAD),
            Scalar.HORIZON_YEARS,
            Scalar.DISCOUNT_RATE,
            Scalar.WARRANTY_YEARS);

    private static final Set<Scalar> OF_GEOMETRY = EnumSet.range(Scalar.WALL_DEPTH_IN, Scalar.FOAM_FILL);

    /** What the work hangs on beside the geometry. */
    private static final Set<Scalar> OF_WORK = with(
            EnumSet.range(Scalar.TEMPERATURE_F, Scalar.WOOD_FLANGE_FROM_YEAR),
            Scalar.CREW_SIZE,
            Scalar.HOURS_PER_DAY,
            Scalar.TRAVEL_MINUTES_PER_DAY,
            Scalar.PERMIT_USD,
            Scalar.DISPOSAL_USD_PER_TON,
            Scalar.TIPPING_LEAST_USD);

    private static final Set<Scalar> OF_SHAPE_AND_WORK = with(OF_GEOMETRY, OF_WORK);

    private static final Set<Choice> LAP_CHOICES = EnumSet.of(Choice.WORKMANSHIP, Choice.SILL_FLANGE);
    private static final Set<Choice> GEOMETRY_CHOICES = EnumSet.of(Choice.NEW_UNIT_MATERIAL, Choice.SILL_FLANGE);
    private static final Set<Choice> WORK_CHOICES = EnumSet.of(Choice.REGION, Choice.COLD_CURVE);

    private final House house;
    private final Contrast contrast;
    private final Uniforms uniforms;
    private final Map<String, double[]> worldUniforms = new HashMap<>();
    private final LeakCauses luck;
    private final LeakDraws scratch;

    private final Recent<List<Object>, List<OpeningExposure>> exposures = new Recent<>();
    private final Recent<List<LapFault>, List<LapFault>> kinds = new Recent<>();
    private final Recent<List<LapFault>, AdmittedShares> admitted = new Recent<>();
    private final Recent<List<Object>, HouseLaps> laps = new Recent<>();
    private final Recent<List<Object>, LeakTables> tables = new Recent<>();
    private final Recent<List<Object>, Map<Method, List<LeakModel>>> leaks = new Recent<>();
    private final Recent<List<Object>, Map<Method, Shape>> shapes = new Recent<>();
    private final Recent<List<Object>, Map<Method, WorkTakeoff>> works = new Recent<>();

    /** What the geometry of all openings comes to under a method. */
    private record Shape(HouseQuantities quantities, double glassLostFt2) {}

    /**
     * One method.
     *
     * @param horizonCostUsd price, repairs that the family pays and worth of the glass lost
     * @param leakProbability chance of leak damage at any opening within the horizon
     */
    public record Mean(double horizonCostUsd, double leakProbability) {}

    /**
     * @param base of which all assumptions asked about later are variants: their faults are these but for what they admit
     * @param draws of what varies by luck
     */
    public HouseMeans(House house, Assumptions base, Sampling sampling, int draws, long seed) {
        this.house = house;
        contrast = base.scenario().contrast().at(house.cladding());
        uniforms = new Uniforms(sampling, draws, new Streams(seed), Simulator.leading(base));
        luck = HouseCauses.leaks(house.id(), uniforms, new AdmittedShares(new double[0][]));
        scratch = new LeakDraws(draws);
    }

    /** The two methods that {@link #at} tells of. */
    public Contrast contrast() {
        return contrast;
    }

    /** Means under some assumptions. */
    public Map<Method, Mean> at(Assumptions assumptions, RainClimate climate) {
        Scenario scenario = assumptions.scenario();
        Pricing pricing = Pricing.of(scenario);
        ThreePoint repair = scenario.repairUsd();
        double glassUsdPerFt2 = HouseSummary.glassWorthUsdPerFt2(scenario);
        LeakCauses causes = new LeakCauses(
                admitted.at(assumptions.faults(), () -> admitted(assumptions)),
                luck.houseStratum(),
                luck.crewStratum(),
                luck.weatherNormal());
        Map<Method, List<LeakModel>> models = leaks(assumptions, climate);
        Map<Method, Shape> shape = shapes(assumptions);
        Map<Method, WorkTakeoff> work = work(assumptions, shape);
        Map<Method, Mean> means = new EnumMap<>(Method.class);
        for (Method method : contrast.both()) {
            double[][] dry = new double[models.get(method).size()][];
            RepairMeans leak = RepairMeans.of(
                    models.get(method), repair.mean(), causes, scratch, (o, worth) -> dry[o] = scratch.none());
            double damageUsd = leak.allDamageUsd();
            double priceUsd = pricing.priceUsd(work.get(method).expectedCost(leak.allWarranted() * repair.mean()));
            double glassUsd = shape.get(method).glassLostFt2() * glassUsdPerFt2;
            means.put(
                    method,
                    new Mean(priceUsd + damageUsd + glassUsd, Summary.mean(HouseLeaks.any(dry, causes.draws()))));
        }
        return means;
    }

    private double[] world(String cause) {
        return worldUniforms.computeIfAbsent(cause, uniforms::world);
    }

    private AdmittedShares admitted(Assumptions assumptions) {
        return new AdmittedShares(World.admitted(assumptions, this::world));
    }

    private Map<Method, List<LeakModel>> leaks(Assumptions assumptions, RainClimate climate) {
        Scenario scenario = assumptions.scenario();
        List<OpeningExposure> rain = exposures.at(
                key(scenario, OF_RAIN, EnumSet.of(Choice.SHELTER), climate), () -> rain(climate, scenario));
        List<LapFault> kind = kinds.at(assumptions.faults(), () -> assumptions.faults().stream()
                .map(fault -> fault.withAdmitted(ThreePoint.exactly(0)))
                .toList());
        List<Object> believed = key(scenario, OF_LAPS, LAP_CHOICES, kind);
        List<Object> standing = key(scenario, OF_LEAKS, EnumSet.of(Choice.WARRANTY_COVERS), believed);
        LeakTables table = tables.at(standing, () -> LeakTables.of(assumptions));
        return leaks.at(List.of(standing, rain), () -> {
            HouseLaps belief =
                    laps.at(believed, () -> HouseLaps.of(house, table)).beside(table);
            return byMethod(method -> models(method, rain, belief));
        });
    }

    private List<OpeningExposure> rain(RainClimate climate, Scenario scenario) {
        List<OpeningExposure> rain = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            for (Opening opening : elevation.openings()) {
                rain.add(OpeningRain.of(climate, house, elevation, opening, scenario)
                        .exposure());
            }
        }
        return List.copyOf(rain);
    }

    private List<LeakModel> models(Method method, List<OpeningExposure> rain, HouseLaps belief) {
        List<LeakModel> models = new ArrayList<>();
        house.openings().forEach(opening -> models.add(LeakModel.of(opening, method, rain.get(models.size()), belief)));
        return models;
    }

    private Map<Method, Shape> shapes(Assumptions assumptions) {
        return shapes.at(
                key(assumptions.scenario(), OF_GEOMETRY, GEOMETRY_CHOICES, assumptions.sightlines()),
                () -> byMethod(method -> shape(method, assumptions)));
    }

    private Shape shape(Method method, Assumptions assumptions) {
        List<OpeningGeometry> openings = HouseTakeoff.geometries(house, method, assumptions);
        double existing =
                openings.stream().mapToDouble(o -> o.existing().glassFt2()).sum();
        double replaced =
                openings.stream().mapToDouble(o -> o.replaced().glassFt2()).sum();
        return new Shape(HouseTakeoff.quantities(house, Set.of(method), openings), existing - replaced);
    }

    private Map<Method, WorkTakeoff> work(Assumptions assumptions, Map<Method, Shape> shape) {
        List<Object> rates = List.of(
                shape, assumptions.steps(), assumptions.materials(), assumptions.unitPrices(), assumptions.wages());
        return works.at(
                key(assumptions.scenario(), OF_SHAPE_AND_WORK, WORK_CHOICES, rates),
                () -> byMethod(method ->
                        WorkTakeoff.of(assumptions, house, shape.get(method).quantities())));
    }

    private <T> Map<Method, T> byMethod(Function<Method, T> made) {
        Map<Method, T> all = new EnumMap<>(Method.class);
        contrast.both().forEach(method -> all.put(method, made.apply(method)));
        return all;
    }

    private static List<Object> key(Scenario scenario, Set<Scalar> scalars, Set<Choice> choices, Object beside) {
        List<Object> key = new ArrayList<>();
        choices.forEach(choice -> key.add(scenario.choice(choice)));
        scalars.forEach(scalar -> key.add(scenario.value(scalar)));
        key.add(beside);
        return key;
    }

    private static Set<Scalar> with(Set<Scalar> some, Scalar... more) {
        return with(some, Set.of(more));
    }

    private static Set<Scalar> with(Set<Scalar> some, Set<Scalar> more) {
        Set<Scalar> all = EnumSet.copyOf(some);
        all.addAll(more);
        return all;
    }
}
