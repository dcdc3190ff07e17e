package weatherlap.analysis.drivers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.breakeven.BreakEven;
import weatherlap.analysis.drivers.Houses.Difference;
import weatherlap.analysis.drivers.Houses.OneHouse;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.made.MadeOpening;
import weatherlap.sim.made.MadeWall;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.rain.HourlyWeather;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Streams;

/** The whole simulation behind the drivers and the break-even. The house and its weather are invented. */
class SimulatedPortfolioTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    private static final RainClimate CLIMATE = RainClimate.of(weather(), BUNDLED.scenario());

    private final SimulatedPortfolio portfolio = new SimulatedPortfolio(List.of(house()), s -> CLIMATE, 40, 3);

    @Test
    void breakEvenOfTheWorthOfGlassIsWhereALineThroughTwoRunsCrossesZero() {
        // The horizon cost is linear in the worth of a square foot of glass: D(v) = D(0) + v (D(10) − D(0))/10.
        Factor glass = Factors.named(BUNDLED, Scalar.GLASS_VALUE_USD_PER_FT2_YEAR.key())
                .orElseThrow();
        double atNothing = mean(glass.set(BUNDLED, 0));
        double atTen = mean(glass.set(BUNDLED, 10));
        double byHand = -atNothing / (atTen - atNothing) * 10;
        // The insert shows less glass, so the difference falls. The crossing is off the sensible range where damage
        // decides alone.
        assertThat(atTen).isLessThan(atNothing);
        double shift = 300 - atNothing;
        BreakEven found = BreakEven.over(
                Contrast.USUAL,
                glass.name(),
                0,
                1000,
                v -> Arrays.stream(portfolio.costs(glass.set(BUNDLED, v)).differenceUsd())
                        .map(d -> d + shift)
                        .toArray(),
                new BreakEven.Effort(2, 50, new Streams(1)));
        assertThat(found.crossings()).hasSize(1);
        assertThat(found.crossings().get(0).value()).isCloseTo(byHand + shift / (atNothing - atTen) * 10, within(0.01));
    }

    @Test
    void dearerRepairsFavourTheMethodThatLeaksLess() {
        Factor repair = Factors.named(BUNDLED, Scalar.REPAIR_COST_USD.key()).orElseThrow();
        OneHouse house = portfolio.house(0, BUNDLED);
        Difference cheap = house.at(repair.set(BUNDLED, 100));
        Difference dear = house.at(repair.set(BUNDLED, 10_000));
        assertThat(dear.risk()).isEqualTo(cheap.risk()).isNotZero();
        assertThat(Math.signum(dear.costUsd() - cheap.costUsd())).isEqualTo(Math.signum(cheap.risk()));
    }

    @Test
    void dearerLabourShiftsThePriceAndNotTheRisk() {
        Factor wage = Factors.all(BUNDLED).stream()
                .filter(f -> f.table().equals("wages") && f.name().contains("carpenter"))
                .findFirst()
                .orElseThrow();
        OneHouse house = portfolio.house(0, BUNDLED);
        Difference now = house.at(BUNDLED);
        Difference dear = house.at(wage.set(BUNDLED, 3 * wage.range().likely()));
        assertThat(dear.risk()).isEqualTo(now.risk());
        assertThat(dear.costUsd()).isGreaterThan(now.costUsd());
    }

    @Test
    void sampleStepsEvenlyThroughTheList() {
        List<House> ten = IntStream.range(0, 10).mapToObj(i -> house()).toList();
        assertThat(SimulatedPortfolio.sample(ten, 4)).containsExactly(ten.get(0), ten.get(2), ten.get(5), ten.get(7));
        assertThat(SimulatedPortfolio.sample(ten, 40)).hasSize(10);
    }

    /** The means take the mean of a repair as known, the draws do not: they differ by sampling error. */
    @Test
    void costsOfTheMethodsDifferByTheMeanDifference() {
        SimulatedPortfolio.Costs costs = portfolio.costs(BUNDLED);
        double standardError = standardError(costs.differenceUsd());
        assertThat(costs.firstUsd() - costs.secondUsd()).isCloseTo(mean(BUNDLED), within(3 * standardError));
    }

    private static double standardError(double[] draws) {
        return new StandardDeviation().evaluate(draws) / Math.sqrt(draws.length);
    }

    private double mean(Assumptions assumptions) {
        return Arrays.stream(portfolio.costs(assumptions).differenceUsd())
                .average()
                .orElseThrow();
    }

    private static HourlyWeather weather() {
        int hours = 365 * 24;
        double[] rain = new double[hours];
        double[] wind = new double[hours];
        double[] from = new double[hours];
        for (int t = 0; t < hours; t++) {
            rain[t] = t % 12 == 0 ? 1 + t % 5 : 0;
            wind[t] = 3 + t % 7;
            from[t] = t % 360;
        }
        return new HourlyWeather("invented", LocalDateTime.of(2001, 1, 1, 0, 0), from, wind, rain, new double[hours]);
    }

    private static House house() {
        Elevation wall = MadeWall.of("w", opening())
                .facing(90)
                .size(24, 9)
                .under(6)
                .courses(8, 144)
                .wall();
        return MadeHouse.of("h", wall)
                .built(1985)
                .over(Barrier.BUILDING_PAPER)
                .lead(LeadTest.NEGATIVE)
                .house();
    }

    private static Opening opening() {
        return MadeOpening.of("o").size(36, 54).at(60, 36).opening();
    }
}
