package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.labour.LabourTakeoff;
import weatherlap.sim.labour.Paces;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.CrewRate;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.run.HouseLeaks.RepairMeans;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * Houses by other crews and over other horizons: the means that a {@link Simulator} with another {@code crew_size} or
 * {@code horizon_years} and the same draws gives.
 */
public final class JobAlternatives {
    private final Simulator simulator;
    private final World world;
    private final SortedMap<Integer, Paces> crews = new TreeMap<>();
    private final SortedMap<Integer, LeakTables> horizons = new TreeMap<>();
    private final ThreadLocal<LeakDraws> scratch;

    /**
     * @param scratch that the simulator draws in too
     * @param people in a crew, each 1 or more
     * @param years of a horizon, each 1 or more
     */
    JobAlternatives(
            Simulator simulator,
            World world,
            ThreadLocal<LeakDraws> scratch,
            List<Integer> people,
            List<Integer> years) {
        this.simulator = simulator;
        this.world = world;
        this.scratch = scratch;
        people.forEach(crew -> crews.put(crew, new Paces(changed(Scalar.CREW_SIZE, crew))));
        years.forEach(year -> horizons.put(year, LeakTables.of(changed(Scalar.HORIZON_YEARS, year))));
    }

    private Assumptions changed(Scalar scalar, int value) {
        Assumptions base = simulator.assumptions();
        return base.with(base.scenario().with(scalar, value));
    }

    /**
     * One house by every method that it is open to.
     *
     * @param run of the simulator at the house
     * @throws IllegalArgumentException where a day leaves a crew no time to work
     */
    public Map<Method, JobParts> of(HouseResult run) {
        return of(run, simulator.takeoff(run.house()));
    }

    /** The same from what the run drew from. */
    public Map<Method, JobParts> of(SimulatedHouse house) {
        return of(house.result(), house.takeoffs());
    }

    private Map<Method, JobParts> of(HouseResult run, Map<Method, HouseTakeoff> takeoffs) {
        List<Map<Method, JobParts.Repairs>> repairs = repairs(run, takeoffs.values());
        Map<Integer, LabourTakeoff> labour = new HashMap<>();
        Map<Method, JobParts> parts = new EnumMap<>(Method.class);
        takeoffs.forEach((method, takeoff) -> {
            double[] materialUsd = takeoff.work().openingMaterialUsd();
            parts.put(
                    method,
                    new JobParts(
                            method,
                            work(takeoff, labour),
                            Each.of(repairs, years -> years.get(method)),
                            materialUsd,
                            takeoff.directUsd(materialUsd)));
        });
        return parts;
    }

    /** Present worth of a dollar at the end of each year of each horizon, USD: what a yearly loss of glass is multiplied by. */
    public static List<Double> worthOfADollarAYear(Assumptions assumptions, List<Integer> horizons) {
        double rate = assumptions.scenario().value(Scalar.DISCOUNT_RATE);
        return Each.of(horizons, years -> HouseSummary.annuity(rate, years));
    }

    /** @param labour of the house by other crews, which serves all methods: made when it is first asked for */
    private List<JobParts.CrewWork> work(HouseTakeoff takeoff, Map<Integer, LabourTakeoff> labour) {
        WorkTakeoff own = takeoff.work();
        HouseQuantities quantities = HouseTakeoff.quantities(
                takeoff.house(), takeoff.methods(), Each.of(takeoff.openings(), OpeningTakeoff::geometry));
        List<JobParts.CrewWork> works = new ArrayList<>();
        crews.forEach((people, paces) -> {
            if (people == own.crewSize()) {
                works.add(work(people, own));
            } else if (CrewRate.isKnown(paces.assumptions().wages(takeoff.house()), people)) {
                LabourTakeoff theirs = labour.computeIfAbsent(
                        people,
                        any -> new LabourTakeoff(
                                paces, takeoff.house(), own.steps().facts()));
                works.add(work(people, own.by(theirs, quantities)));
            }
        });
        return works;
    }

    private static JobParts.CrewWork work(int people, WorkTakeoff work) {
        return new JobParts.CrewWork(
                people,
                work.meanMinutes(),
                work.crewDays().days(),
                work.materialUsd(),
                work.openings().stream().mapToDouble(OpeningWork::meanMinutes).toArray());
    }

    /** For each horizon, by all methods before the next one: what leaks alike by several of them is drawn once. */
    private List<Map<Method, JobParts.Repairs>> repairs(HouseResult run, Collection<HouseTakeoff> takeoffs) {
        int own = simulator.assumptions().scenario().whole(Scalar.HORIZON_YEARS);
        LeakCauses causes = simulator.leakCauses(run.house());
        List<Map<Method, JobParts.Repairs>> repairs = new ArrayList<>();
        horizons.forEach((years, tables) ->
                repairs.add(years == own ? repairs(own, run) : repairs(years, tables, List.copyOf(takeoffs), causes)));
        return repairs;
    }

    private static Map<Method, JobParts.Repairs> repairs(int own, HouseResult run) {
        Map<Method, JobParts.Repairs> repairs = new EnumMap<>(Method.class);
        run.methods()
                .forEach((method, result) -> repairs.put(
                        method, new JobParts.Repairs(own, result.warrantyUsd(), result.expectedDamageUsd())));
        return repairs;
    }

    private Map<Method, JobParts.Repairs> repairs(
            int years, LeakTables tables, List<HouseTakeoff> takeoffs, LeakCauses causes) {
        List<Method> methods = Each.of(takeoffs, HouseTakeoff::method);
        HouseLaps laps = takeoffs.get(0).laps().beside(tables);
        List<List<LeakModel>> models = Each.of(
                takeoffs.get(0).openings(),
                opening -> LeakModel.each(opening.opening(), methods, opening.exposure(), laps));
        LeakDraws draws = scratch.get();
        draws.forget();
        Map<Method, JobParts.Repairs> repairs = new EnumMap<>(Method.class);
        for (int m = 0; m < methods.size(); m++) {
            int method = m;
            RepairMeans means = RepairMeans.of(
                    Each.of(models, opening -> opening.get(method)),
                    world.meanRepairUsd(),
                    causes,
                    draws,
                    (o, worth) -> {});
            repairs.put(
                    methods.get(m),
                    new JobParts.Repairs(years, means.allWarranted() * world.meanRepairUsd(), means.allDamageUsd()));
        }
        return repairs;
    }
}
