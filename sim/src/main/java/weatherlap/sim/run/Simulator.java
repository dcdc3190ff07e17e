package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.Geometries;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Portfolio;
import weatherlap.sim.labour.Paces;
import weatherlap.sim.laps.AdmittedShares;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.laps.LeakDraws;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.many.InChunks;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;
import weatherlap.sim.random.Uniforms;
import weatherlap.sim.run.HouseLeaks.RepairMeans;
import weatherlap.sim.run.MethodDraws.MaterialPrices;

/**
 * Simulates houses under both methods. A house's result depends on the assumptions, the climate, the seed and the house alone: not on
 * other houses, threads or their order.
 */
public final class Simulator {
    private final Contrast contrast;
    private final Assumptions assumptions;
    private final RainClimate climate;
    private final Uniforms uniforms;
    private final World world;
    private final LeakTables leakTables;
    private final Alike alike;
    private final AdmittedShares admitted;
    private final MaterialPrices prices;
    private final ThreadLocal<LeakDraws> scratch;

    /** What is known of houses and openings like others under some assumptions. Safe to share between threads. */
    record Alike(Geometries geometries, Paces paces) {
        Alike(Assumptions assumptions) {
            this(new Geometries(assumptions), new Paces(assumptions));
        }
    }

    /**
     * @param draws a house, 1 or more
     * @param seed of every stream
     */
    public Simulator(Assumptions assumptions, RainClimate climate, Sampling sampling, int draws, long seed) {
        this(assumptions, climate, new Uniforms(sampling, draws, new Streams(seed), leading(assumptions)));
    }

    private Simulator(Assumptions assumptions, RainClimate climate, Uniforms uniforms) {
        this(assumptions, climate, uniforms, World.of(assumptions, uniforms::world));
    }

    private Simulator(Assumptions assumptions, RainClimate climate, Uniforms uniforms, World world) {
        this(
                assumptions,
                climate,
                uniforms,
                world,
                new AdmittedShares(world.admitted()),
                LeakTables.of(assumptions),
                new Alike(assumptions));
    }

    private Simulator(
            Assumptions assumptions,
            RainClimate climate,
            Uniforms uniforms,
            World world,
            AdmittedShares admitted,
            LeakTables leakTables,
            Alike alike) {
        contrast = assumptions.scenario().contrast();
        this.assumptions = assumptions;
        this.climate = climate;
        this.uniforms = uniforms;
        this.world = world;
        this.leakTables = leakTables;
        this.alike = alike;
        this.admitted = admitted;
        prices = new MaterialPrices(world);
        scratch = ThreadLocal.withInitial(() -> new LeakDraws(world.draws()));
    }

    /**
     * The causes of leaks, which enter by products, so that no stratum of one alone keeps a mean. Faults come last, in table order, so that
     * a new row shifts no other cause. Which dimension a cause has changes the sampling error alone; this order did well of those tried.
     */
    static List<String> leading(Assumptions assumptions) {
        List<String> causes =
                new ArrayList<>(List.of(HouseCauses.OLD_LAPS, HouseCauses.WEATHER, HouseCauses.NEW_LAPS, World.REPAIR));
        assumptions.faults().forEach(fault -> causes.add(World.admitted(fault)));
        return causes;
    }

    /** The two methods that are set side by side. */
    public Contrast contrast() {
        return contrast;
    }

    /** The same but for the admitted share of one lap fault, which is known; by position of the fault in its table. */
    public Simulator withAdmitted(int fault, double share) {
        return new Simulator(
                assumptions,
                climate,
                uniforms,
                world.withAdmitted(fault, share),
                admitted.with(fault, share),
                leakTables,
                alike);
    }

    /** The same draws with one choice of the scenario taken otherwise; how they are laid, {@link Choice#SAMPLING}, stays. */
    public Simulator withChoice(Choice choice, String word) {
        Assumptions changed = assumptions.with(assumptions.scenario().with(choice, word));
        return new Simulator(changed, climate, uniforms, world, admitted, LeakTables.of(changed), new Alike(changed));
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    public RainClimate climate() {
        return climate;
    }

    public int draws() {
        return world.draws();
    }

    /**
     * The mean leak score of a house, 0 to 100: that of {@link #simulate}, without the work and its price.
     *
     * @param takeoff of the house by one method, from this simulator or one {@link #withAdmitted} another share
     */
    public double leakScore(HouseTakeoff takeoff) {
        LeakDraws draws = scratch.get();
        double[][] dry = new double[takeoff.leaks().size()][];
        RepairMeans.of(
                takeoff.leaks(),
                world.meanRepairUsd(),
                leakCauses(takeoff.house()),
                draws,
                (o, worth) -> dry[o] = draws.none());
        return 100 * Summary.mean(HouseLeaks.any(dry, draws()));
    }

    /** What one house is without any draw, by method: the same that {@link #simulate} draws from. */
    public Map<Method, HouseTakeoff> takeoff(House house) {
        return HouseTakeoff.of(house, assumptions, climate, leakTables, alike);
    }

    /** One house under every method. */
    public HouseResult simulate(House house) {
        return HouseSummary.of(house, contrast, draw(house), assumptions);
    }

    /** The same, with what any plan of the house is put together from. */
    public SimulatedHouse simulateForPlans(House house) {
        return simulateForPlans(house, takeoff(house));
    }

    /** The same of a house that is taken off already, as {@link #takeoff} does. */
    public SimulatedHouse simulateForPlans(House house, Map<Method, HouseTakeoff> takeoffs) {
        Map<Method, MethodDraws> drawn = draw(house, takeoffs);
        return new SimulatedHouse(
                HouseSummary.of(house, contrast, drawn, assumptions),
                PlanPricing.of(drawn, assumptions.scenario(), world),
                takeoffs);
    }

    /** What the job at one house costs the shop, USD, a draw an element: the draws behind the summary of {@link #simulate}. */
    public Map<Method, double[]> costUsd(House house) {
        Map<Method, double[]> costs = new EnumMap<>(Method.class);
        draw(house).forEach((method, draws) -> costs.put(method, draws.costUsd()));
        return costs;
    }

    /**
     * One opening's numbers under one method, explained.
     *
     * @param opening position in the house, in table order over the walls
     */
    public OpeningExplanation explain(House house, int opening, Method method) {
        return OpeningExplanation.of(draw(house).get(method), opening, assumptions);
    }

    /** What it is worth to open up one window of a house before deciding, from its result here; empty where no look could tell anything new. */
    public Optional<HouseLook> look(HouseResult result) {
        return result.contrast()
                .leaves()
                .flatMap(leaves -> HouseLook.of(leaves, HouseLaps.of(result.house(), leakTables), result));
    }

    /**
     * Houses with the same draws, by other crews and over other horizons.
     *
     * @param people in a crew, each 1 or more
     * @param years of a horizon, each 1 or more
     */
    public JobAlternatives alternatives(List<Integer> people, List<Integer> years) {
        return new JobAlternatives(this, world, scratch, people, years);
    }

    /** What the leaks of a house hang on, draw by draw. */
    LeakCauses leakCauses(House house) {
        return HouseCauses.leaks(house.id(), uniforms, admitted);
    }

    private Map<Method, MethodDraws> draw(House house) {
        return draw(house, takeoff(house));
    }

    private Map<Method, MethodDraws> draw(House house, Map<Method, HouseTakeoff> takeoffs) {
        Scenario scenario = assumptions.scenario();
        HouseCauses causes = HouseCauses.of(house, scenario, uniforms, admitted);
        Map<Method, MethodDraws> drawn = new EnumMap<>(Method.class);
        takeoffs.forEach((method, takeoff) ->
                drawn.put(method, MethodDraws.of(takeoff, scenario, world, prices, causes, scratch.get())));
        return drawn;
    }

    /**
     * Every house of a portfolio, in its order.
     *
     * @param threads 1 or more
     */
    public Results run(Portfolio portfolio, int threads) {
        List<HouseResult> houses = new ArrayList<>(portfolio.houses().size());
        InChunks.of(portfolio.houses().iterator(), threads, this::simulate, Function.identity(), houses::addAll);
        return new Results(houses, draws());
    }

    /**
     * Every house as it comes; results are not kept.
     *
     * @param threads 1 or more
     * @param summary of the results of some houses in a row, made on any thread
     * @param taker of the summaries in the order of the houses, called on this thread
     */
    public <T> void run(
            Iterator<House> houses, int threads, Function<List<SimulatedHouse>, T> summary, Consumer<T> taker) {
        InChunks.of(houses, threads, this::simulateForPlans, summary, taker);
    }
}
