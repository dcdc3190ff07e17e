package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.WarrantyCovers;
import weatherlap.sim.house.House;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/** The work of a house whose openings get different methods, against the work by one method and against the price of the plan. */
class MixedTakeoffTest {
    private static final Assumptions BUNDLED = AssumptionTables.bundled().assumptions();
    private static final RainClimate CLIMATE = RainClimate.of(DemoClimate.hourly(), BUNDLED.scenario());
    private static final List<House> HOUSES = DemoPortfolio.load().houses();

    private static Map<Method, HouseTakeoff> each(House house, Assumptions assumptions) {
        return HouseTakeoff.of(house, assumptions, CLIMATE, LeakTables.of(assumptions));
    }

    @Test
    void aMixOfOneMethodIsTheHouseByIt() {
        for (House house : HOUSES) {
            Map<Method, HouseTakeoff> each = each(house, BUNDLED);
            each.forEach((method, takeoff) -> {
                HouseTakeoff mixed = HouseTakeoff.mixed(each, Collections.nCopies(house.openingCount(), method));
                assertThat(mixed.methods()).isEqualTo(takeoff.methods());
                assertThat(mixed.panelsDown()).isEqualTo(takeoff.panelsDown());
                assertThat(mixed.openings().stream()
                                .map(OpeningTakeoff::codeFlags)
                                .toList())
                        .isEqualTo(takeoff.openings().stream()
                                .map(OpeningTakeoff::codeFlags)
                                .toList());
                assertThat(mixed.rooms()).hasSameSizeAs(takeoff.rooms());
                assertThat(mixed.work().crewDays()).isEqualTo(takeoff.work().crewDays());
                assertThat(mixed.work().materials())
                        .usingRecursiveFieldByFieldElementComparator()
                        .isEqualTo(takeoff.work().materials());
                assertThat(mixed.work().labour().value())
                        .isEqualTo(takeoff.work().labour().value());
                assertThat(mixed.work().material().value())
                        .isEqualTo(takeoff.work().material().value());
            });
        }
    }

    /**
     * What the price of a plan leaves out is how working days are packed and what is left in packages; without items, travel and daily
     * steps the two are one, with panels as a union and each shared step once.
     */
    @Test
    void minutesAndUnitsArePricedAsThePlanIs() {
        Assumptions assumptions = BUNDLED.withMaterials(List.of())
                .withSteps(BUNDLED.steps().stream()
                        .filter(step -> step.driver() != Driver.DAY)
                        .toList())
                .with(BUNDLED.scenario()
                        .with(Scalar.TRAVEL_MINUTES_PER_DAY, 0)
                        .with(
                                Choice.WARRANTY_COVERS,
                                WarrantyCovers.NOTHING.name().toLowerCase(java.util.Locale.ROOT)));
        Simulator simulator = new Simulator(assumptions, CLIMATE, Sampling.SOBOL, 4, 7);
        Random random = new Random(11);
        int mixed = 0;
        for (House house : HOUSES) {
            SimulatedHouse simulated = simulator.simulateForPlans(house);
            Map<Method, HouseTakeoff> each = each(house, assumptions);
            List<Method> methods = any(house, random);
            HouseTakeoff takeoff = HouseTakeoff.mixed(each, methods);
            mixed += takeoff.methods().size() > 1 ? 1 : 0;
            assertThat(Pricing.of(assumptions.scenario())
                            .priceUsd(takeoff.work().expectedCost(0)))
                    .as(house.id())
                    .isCloseTo(PlanCost.plan(simulated.parts(), methods, 0).priceUsd(), within(1e-6));
        }
        assertThat(mixed).isGreaterThan(HOUSES.size() / 2);
    }

    /**
     * The working days that a plan's price holds are those of each method, spread over its minutes; those of the sheet are packed anew,
     * in whole days.
     */
    @Test
    void crewDaysAreThoseOfThePriceToTheDay() {
        Random random = new Random(13);
        for (House house : HOUSES) {
            Map<Method, HouseTakeoff> each = each(house, BUNDLED);
            List<Method> methods = any(house, random);
            double held = 0;
            for (int o = 0; o < methods.size(); o++) {
                WorkTakeoff work = each.get(methods.get(o)).work();
                double all = work.openings().stream()
                        .mapToDouble(OpeningWork::meanMinutes)
                        .sum();
                held += work.openings().get(o).meanMinutes()
                        / all
                        * work.crewDays().days();
            }
            assertThat((double)
                            HouseTakeoff.mixed(each, methods).work().crewDays().days())
                    .as(house.id())
                    .isCloseTo(held, within(1.5));
        }
    }

    @Test
    void aMethodThatTheHouseIsNotOpenToIsRefused() {
        House brick = HOUSES.stream()
                .filter(house -> !house.cladding().inCourses())
                .findFirst()
                .orElseThrow();
        Map<Method, HouseTakeoff> each = each(brick, BUNDLED);
        assertThatThrownBy(
                        () -> HouseTakeoff.mixed(each, Collections.nCopies(brick.openingCount(), Method.FULL_FLANGE)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HouseTakeoff.mixed(each, List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Method> any(House house, Random random) {
        List<Method> open = Method.openTo(house.cladding());
        return Stream.generate(() -> open.get(random.nextInt(open.size())))
                .limit(house.openingCount())
                .toList();
    }
}
