package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.drivers.Houses.Difference;
import weatherlap.analysis.drivers.Houses.OneHouse;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

/** What a sweep keeps from one point to the next is nothing that the next one touches: it tells what a simulation from scratch tells. */
class SweptHouseTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    private static final Map<Double, RainClimate> CLIMATES = new HashMap<>();
    private static final int DRAWS = 8;
    private static final List<House> HOUSES = List.of(demo(Cladding.BRICK_VENEER), demo(Cladding.VINYL_SIDING));
    private static final SimulatedPortfolio PORTFOLIO =
            new SimulatedPortfolio(HOUSES, SweptHouseTest::climate, DRAWS, 1);

    @Test
    void everyFactorByItselfMovesASweepAsItMovesASimulation() {
        List<Factor> factors = Factors.ranged(BUNDLED);
        double[] point = new double[factors.size()];
        Arrays.fill(point, 0.5);
        for (int h = 0; h < HOUSES.size(); h++) {
            RangedAssumptions ranged = new RangedAssumptions(BUNDLED, factors);
            OneHouse swept = PORTFOLIO.house(h, BUNDLED);
            assertSame(swept, HOUSES.get(h), ranged.at(point), "all at their medians");
            for (int f = 0; f < factors.size(); f++) {
                point[f] = 0.1;
                assertSame(
                        swept, HOUSES.get(h), ranged.at(point), factors.get(f).name());
                point[f] = 0.5;
            }
        }
    }

    @Test
    void pointsThatMoveAllAtOnceAndPartsOfThemDoToo() {
        List<Factor> factors = Factors.ranged(BUNDLED);
        RangedAssumptions ranged = new RangedAssumptions(BUNDLED, factors);
        OneHouse swept = PORTFOLIO.house(1, BUNDLED);
        Random random = new Random(5);
        double[] a = random.doubles(factors.size()).toArray();
        for (int i = 0; i < 20; i++) {
            double[] b = random.doubles(factors.size()).toArray();
            double[] mixed = a.clone();
            random.ints(40, 0, factors.size()).forEach(f -> mixed[f] = b[f]);
            assertSame(swept, HOUSES.get(1), ranged.at(mixed), "parts of point " + i);
            assertSame(swept, HOUSES.get(1), ranged.at(b), "point " + i);
            a = b;
        }
    }

    /** But for that of the two methods, which are those of the base. */
    @Test
    void everyChoiceDoesToo() {
        OneHouse swept = PORTFOLIO.house(1, BUNDLED);
        for (Choice choice : Choice.values()) {
            if (choice != Choice.SAMPLING && choice != Choice.METHODS) {
                for (String word : choice.allowed()) {
                    Assumptions chosen = BUNDLED.with(BUNDLED.scenario().with(choice, word));
                    assertSame(swept, HOUSES.get(1), chosen, choice.key() + "=" + word);
                }
            }
        }
    }

    private static void assertSame(OneHouse swept, House house, Assumptions known, String what) {
        Scenario scenario = known.scenario();
        Simulator simulator =
                new Simulator(known, climate(scenario), scenario.choice(Choice.SAMPLING, Sampling.class), DRAWS, 1);
        HouseResult result = simulator.simulate(house);
        double usd = result.first().horizonCostUsd().mean()
                - result.second().horizonCostUsd().mean();
        Difference found = swept.at(known);
        assertThat(found.costUsd()).as(what).isCloseTo(usd, within(1e-6));
        assertThat(found.risk())
                .as(what)
                .isCloseTo(result.first().leakProbability() - result.second().leakProbability(), within(1e-12));
    }

    /** Of all that a climate hangs on the spread of the years alone has a range. */
    private static RainClimate climate(Scenario scenario) {
        return CLIMATES.computeIfAbsent(
                scenario.value(Scalar.YEAR_SPREAD), spread -> RainClimate.of(DemoClimate.hourly(), scenario));
    }

    private static House demo(Cladding cladding) {
        return DemoPortfolio.load().houses().stream()
                .filter(house -> house.cladding() == cladding)
                .findFirst()
                .orElseThrow();
    }
}
