package weatherlap.sim.run;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.AdmittedShares;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.OpeningRain;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;
import weatherlap.sim.random.Uniforms;

/** The chances of leak damage alone, to the digit those of a {@link Simulator}, without the work and its price. */
public final class LeakSimulator {
    private final Assumptions assumptions;
    private final Uniforms uniforms;
    private final LeakTables tables;
    private final AdmittedShares admitted;
    private final ThreadLocal<LeakDraws> scratch;

    /**
     * @param draws a house, 1 or more
     * @param seed of every stream
     */
    public LeakSimulator(Assumptions assumptions, Sampling sampling, int draws, long seed) {
        this.assumptions = assumptions;
        uniforms = new Uniforms(sampling, draws, new Streams(seed), Simulator.leading(assumptions));
        tables = LeakTables.of(assumptions);
        admitted = new AdmittedShares(World.admitted(assumptions, uniforms::world));
        scratch = ThreadLocal.withInitial(() -> new LeakDraws(draws));
    }

    /** Rain on the openings of a house, in table order over its walls; it hangs on nothing that leaks hang on beside. */
    public static List<OpeningExposure> rain(House house, RainClimate climate, Assumptions assumptions) {
        return house.elevations().stream()
                .flatMap(e ->
                        e.openings().stream().map(o -> OpeningRain.of(climate, house, e, o, assumptions.scenario())))
                .map(OpeningRain::exposure)
                .toList();
    }

    /**
     * What each lap fault adds to the chance of damage within the horizon at each opening of a house.
     *
     * @param rain as {@link #rain} gives it
     * @return an element an opening: contributions by position of the fault in its table, which sum to the chance
     */
    public List<double[]> contributions(House house, Method method, List<OpeningExposure> rain) {
        HouseLaps laps = HouseLaps.of(house, tables);
        LeakCauses causes = HouseCauses.leaks(house.id(), uniforms, admitted);
        List<Opening> openings = house.openings().toList();
        return Stream.iterate(0, o -> o < openings.size(), o -> o + 1)
                .map(o -> contributions(LeakModel.of(openings.get(o), method, rain.get(o), laps), causes))
                .toList();
    }

    private double[] contributions(LeakModel model, LeakCauses causes) {
        LeakDraws draws = scratch.get();
        model.run(causes, draws);
        double[] byFault = new double[assumptions.faults().size()];
        for (int path = 0; path < model.paths().size(); path++) {
            byFault[model.paths().get(path).faultIndex()] += draws.contribution()[path];
        }
        return byFault;
    }
}
