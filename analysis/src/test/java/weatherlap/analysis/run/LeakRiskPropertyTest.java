package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Simulator;

/** On the bundled rows, from the weather to the score of each opening under each method: risk never falls where it should not. */
class LeakRiskPropertyTest {
    private static final int HOURS = 4000;
    private static final int DRAWS = 32;
    private static final int SEED = 11;
    private static final double ROUNDING = 1e-9;
    /** Points of the score by which a longer horizon, whose mean weather varies less, may lower that of an opening all but dry. */
    private static final double NEARLY_DRY = 0.01;

    private static final House HOUSE = Town.house("H1", Lap.UNKNOWN, 6, 24);

    private static double[] scores(Assumptions assumptions, RainClimate climate, House house) {
        return new Simulator(assumptions, climate, Sampling.STRATIFIED, DRAWS, SEED)
                .simulate(house).openings().stream()
                        .map(OpeningResult::leakScore)
                        .mapToDouble(score -> score.mean())
                        .toArray();
    }

    private static void neverFalls(double[] before, double[] after) {
        neverFalls(before, after, ROUNDING);
    }

    private static void neverFalls(double[] before, double[] after, double points) {
        assertThat(after).hasSameSizeAs(before);
        for (int o = 0; o < before.length; o++) {
            assertThat(after[o]).isBetween(before[o] - points, 100.0);
        }
        assertThat(Arrays.stream(after).sum())
                .as("the property must not hold emptily")
                .isPositive();
    }

    /** Invented hours, wet in a share of them; with a larger share the same hours are wet, and others too. */
    private static RainClimate climate(long seed, double wetShare) {
        UniformRandomProvider rng = RandomSource.XO_SHI_RO_256_PP.create(seed);
        double[] from = rng.doubles(HOURS, 0, 360).toArray();
        double[] speed = rng.doubles(HOURS, 0.5, 14).toArray();
        double[] amount = rng.doubles(HOURS, 0.3, 6).toArray();
        double[] chance = rng.doubles(HOURS).toArray();
        double[] rain = new double[HOURS];
        for (int t = 0; t < HOURS; t++) {
            rain[t] = chance[t] < wetShare ? amount[t] : 0;
        }
        LocalDateTime start = LocalDateTime.of(2001, 1, 1, 0, 0);
        return RainClimate.of(
                new HourlyWeather("invented", start, from, speed, rain, new double[HOURS]), Town.BUNDLED.scenario());
    }

    @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void moreRainNeverLowersTheScore(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0.02, max = 0.2) double wet,
            @ForAll @DoubleRange(min = 0, max = 0.2) double more) {
        neverFalls(
                scores(Town.BUNDLED, climate(seed, wet), HOUSE),
                scores(Town.BUNDLED, climate(seed, wet + more), HOUSE));
    }

    @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void lessOverhangNeverLowersTheScore(
            @ForAll @DoubleRange(min = 0, max = 40) double overhangIn,
            @ForAll @DoubleRange(min = 0, max = 30) double wider) {
        neverFalls(
                scores(
                        Town.BUNDLED,
                        Town.CLIMATE,
                        Town.house("H1", Lap.UNKNOWN, overhangIn + wider, overhangIn + wider)),
                scores(Town.BUNDLED, Town.CLIMATE, Town.house("H1", Lap.UNKNOWN, overhangIn, overhangIn)));
    }

    @Provide
    Arbitrary<Integer> rows() {
        return Arbitraries.integers().between(0, Town.BUNDLED.faults().size() - 1);
    }

    @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
    void oneMoreFaultNeverLowersTheScore(@ForAll("rows") int row) {
        List<LapFault> fewer = new ArrayList<>(Town.BUNDLED.faults());
        fewer.remove(row);
        neverFalls(scores(with(Town.BUNDLED, fewer), Town.CLIMATE, HOUSE), scores(Town.BUNDLED, Town.CLIMATE, HOUSE));
    }

    @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void aLaterHorizonNeverLowersTheScore(
            @ForAll @IntRange(min = 1, max = 40) int years, @ForAll @IntRange(min = 1, max = 20) int later) {
        neverFalls(
                scores(until(years), Town.CLIMATE, HOUSE),
                scores(until(years + later), Town.CLIMATE, HOUSE),
                NEARLY_DRY);
    }

    @Property(tries = 10, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void aColderDayNeverLowersTheScore(
            @ForAll @DoubleRange(min = 0, max = 100) double warm,
            @ForAll @DoubleRange(min = 0, max = 40) double colder) {
        neverFalls(scores(at(warm), Town.CLIMATE, HOUSE), scores(at(warm - colder), Town.CLIMATE, HOUSE));
    }

    private static Assumptions until(int years) {
        return Town.BUNDLED.with(Town.BUNDLED.scenario().with(Scalar.HORIZON_YEARS, years));
    }

    private static Assumptions at(double temperatureF) {
        return Town.BUNDLED.with(Town.BUNDLED.scenario().with(Scalar.TEMPERATURE_F, temperatureF));
    }

    static Assumptions with(Assumptions all, List<LapFault> faults) {
        return new Assumptions(
                all.steps(), all.materials(), all.unitPrices(), all.sightlines(), faults, all.wages(), all.scenario());
    }
}
