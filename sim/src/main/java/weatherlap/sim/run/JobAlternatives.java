package weatherlap.sim.run;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * Houses by other crews and over other horizons: the means that a {@link Simulator} with another {@code crew_size} or
 * {@code horizon_years} and the same draws gives. Not for several threads at once.
 */
public final class JobAlternatives {
    private final Simulator simulator;
    private final World world;
    private final SortedMap<Integer, Assumptions> crews = new TreeMap<>();
    private final SortedMap<Integer, LeakTables> horizons = new TreeMap<>();
    private final LeakDraws scratch;
    private final int own;

    /**
     * @param people in a crew, each 1 or more
     * @param years of a horizon, each 1 or more
     */
    JobAlternatives(Simulator simulator, World world, List<Integer> people, List<Integer> years) {
        this.simulator = simulator;
        this.world = world;
        people.forEach(crew -> crews.put(crew, changed(Scalar.CREW_SIZE, crew)));
        years.forEach(year -> horizons.put(year, LeakTables.of(changed(Scalar.HORIZON_YEARS, year))));
        scratch = new LeakDraws(world.draws());
        own = simulator.assumptions().scenario().whole(Scalar.HORIZON_YEARS);
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
        LeakCauses causes = simulator.leakCauses(run.house());
        Map<Method, JobParts> parts = new EnumMap<>(Method.class);
        simulator
                .takeoff(run.house())
                .forEach((method, takeoff) -> parts.put(method, parts(run.method(method), takeoff, causes)));
        return parts;
    }

    /** Present worth of a dollar at the end of each year of each horizon, USD: what a yearly loss of glass is multiplied by. */
    public List<Double> worthOfADollarAYear() {
        double rate = simulator.assumptions().scenario().value(Scalar.DISCOUNT_RATE);
        return horizons.keySet().stream()
                .map(years -> HouseSummary.annuity(rate, years))
                .toList();
    }

    private JobParts parts(MethodResult run, HouseTakeoff takeoff, LeakCauses causes) {
        HouseQuantities quantities = HouseTakeoff.quantities(
                takeoff.house(),
                takeoff.methods(),
                takeoff.openings().stream().map(OpeningTakeoff::geometry).toList());
        return new JobParts(
                run.method(),
                crews.entrySet().stream()
                        .map(crew -> work(crew.getKey(), takeoff.work().by(crew.getValue(), quantities)))
                        .toList(),
                horizons.entrySet().stream()
                        .map(horizon -> horizon.getKey() == own
                                ? new JobParts.Repairs(own, run.warrantyUsd(), run.expectedDamageUsd())
                                : repairs(horizon.getKey(), horizon.getValue(), takeoff, causes))
                        .toList(),
                Arrays.stream(takeoff.work().openingMaterialUsd()).boxed().toList(),
                Arrays.stream(takeoff.directUsd()).boxed().toList());
    }

    private static JobParts.CrewWork work(int people, WorkTakeoff work) {
        return new JobParts.CrewWork(
                people,
                work.meanMinutes(),
                work.crewDays().days(),
                work.materialUsd(),
                work.openings().stream().map(OpeningWork::meanMinutes).toList());
    }

    private JobParts.Repairs repairs(int years, LeakTables tables, HouseTakeoff takeoff, LeakCauses causes) {
        var laps = takeoff.laps().beside(tables);
        List<LeakModel> models = takeoff.openings().stream()
                .map(opening -> LeakModel.of(opening.opening(), takeoff.method(), opening.exposure(), laps))
                .toList();
        HouseLeaks leaks = HouseLeaks.of(models, world.repairUsd(), world.meanRepairUsd(), causes, scratch);
        return new JobParts.Repairs(years, leaks.warranted() * world.meanRepairUsd(), leaks.meanDamageUsd());
    }
}
