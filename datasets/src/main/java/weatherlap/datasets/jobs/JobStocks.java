package weatherlap.datasets.jobs;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.material.NewUnit;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * The material behind jobs. Where the house was measured it is taken off it, for the share of its windows that were done. Elsewhere it is
 * made from the record as its work is ({@link JobQuantities}); tape, sealant, foam and coil, which no record counts, are as much for a foot
 * around as at the house that stands for the record's facts. What a record counted itself stands over both.
 */
public final class JobStocks {
    private static final Set<Driver> NEVER_COUNTED =
            Set.of(Driver.TAPE_FT, Driver.SEALANT_IN3, Driver.FOAM_IN3, Driver.CAPPING_FT2);

    private final Assumptions assumptions;
    private final JobHouses houses;
    private final Map<Kind, WorkTakeoff> standIns = new ConcurrentHashMap<>();

    private record Kind(House house, Method method) {}

    public JobStocks(Assumptions assumptions, JobHouses houses) {
        this.assumptions = assumptions;
        this.houses = houses;
    }

    public JobStock of(JobRecord job) {
        return houses.isMeasured(job) ? measured(job) : made(job);
    }

    private JobStock measured(JobRecord job) {
        House house = houses.of(job);
        WorkTakeoff work = HouseTakeoff.work(house, job.method(), on(job));
        double share = job.openings() / (double) house.openingCount();
        Map<Driver, Double> most = most(work.materials());
        Map<String, Double> quantities = new LinkedHashMap<>();
        for (MaterialLine line : work.materials()) {
            Driver driver = line.item().driver();
            OptionalDouble counted = job.counted().of(driver);
            double own = driver == Driver.JOB ? 1 : share;
            double kept = counted.isPresent() ? counted.getAsDouble() / most.get(driver) : own;
            double quantity = kept * line.driverQuantity();
            if (quantity > 0) {
                quantities.put(line.item().id(), quantity);
            }
        }
        Map<Operation, JobStock.NewUnits> units = new EnumMap<>(Operation.class);
        house.elevations().forEach(wall -> wall.openings()
                .forEach(opening ->
                        units.merge(opening.newOperation(), units(opening).times(share), JobStock.NewUnits::plus)));
        return new JobStock(
                job, quantities, units, tipping(job, work), work.personHour().value());
    }

    private static JobStock.NewUnits units(Opening opening) {
        return new JobStock.NewUnits(opening.units(), NewUnit.unitedInches(opening));
    }

    private static Map<Driver, Double> most(List<MaterialLine> lines) {
        Map<Driver, Double> most = new EnumMap<>(Driver.class);
        lines.forEach(line -> most.merge(line.item().driver(), line.driverQuantity(), Math::max));
        return most;
    }

    private JobStock made(JobRecord job) {
        Map<Fact, String> facts = JobWork.facts(job);
        Facts asked = Facts.of(facts);
        Scenario day = on(job).scenario();
        Map<Driver, Double> counted = JobQuantities.of(job, facts, day);
        double around = counted.get(Driver.PERIMETER_FT);
        House house = houses.of(job);
        WorkTakeoff work = standIns.computeIfAbsent(
                new Kind(house, job.method()), kind -> HouseTakeoff.work(kind.house(), kind.method(), assumptions));
        Map<Driver, Double> most = most(work.materials());
        double aroundHouse = aroundFt(house);
        Map<String, Double> quantities = new LinkedHashMap<>();
        assumptions
                .materials(job.method())
                .filter(item -> item.appliesWhen().holds(asked))
                .forEach(item -> {
                    double quantity = NEVER_COUNTED.contains(item.driver())
                            ? around * most.getOrDefault(item.driver(), 0.0) / aroundHouse
                            : counted.get(item.driver());
                    if (quantity > 0) {
                        quantities.put(item.id(), quantity);
                    }
                });
        int mulled = Integer.parseInt(facts.get(Fact.UNITS));
        double inches = Units.feetToInches(around / 2 + (mulled - 1) * counted.get(Driver.JAMB_FT) / 2);
        Operation operation = Operation.valueOf(facts.get(Fact.NEW_OPERATION).toUpperCase(Locale.ROOT));
        return new JobStock(
                job,
                quantities,
                Map.of(operation, new JobStock.NewUnits(job.openings() * (double) mulled, inches)),
                tipping(job, work),
                work.personHour().value());
    }

    private double tipping(JobRecord job, WorkTakeoff work) {
        double all = Sum.of(work.openings(), OpeningWork::tippingUsd);
        return Math.max(
                assumptions.scenario().value(Scalar.TIPPING_LEAST_USD),
                all * job.openings() / work.openings().size());
    }

    private static double aroundFt(House house) {
        return house.elevations().stream()
                .flatMap(wall -> wall.openings().stream())
                .mapToDouble(opening -> 2
                        * Units.inchesToFeet(
                                opening.frame().widthIn() + opening.frame().heightIn()))
                .sum();
    }

    private Assumptions on(JobRecord job) {
        OptionalDouble day = job.temperatureF();
        return day.isEmpty()
                ? assumptions
                : assumptions.with(assumptions.scenario().with(Scalar.TEMPERATURE_F, day.getAsDouble()));
    }
}
