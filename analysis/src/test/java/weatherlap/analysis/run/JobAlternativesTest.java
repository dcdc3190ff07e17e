package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Simulator;

/** What other crews and horizons come to is what a run with them gives. */
class JobAlternativesTest {
    private static final House HOUSE = Town.house("h");
    private static final List<Integer> PEOPLE = List.of(1, 2, 4);
    private static final List<Integer> YEARS = List.of(5, 20, 30);
    private static final Simulator RUN = simulator(Town.BUNDLED);
    private static final Offset<Double> SAME = within(1e-6);

    private final Map<Method, JobParts> parts = RUN.alternatives(PEOPLE, YEARS).of(RUN.simulate(HOUSE));

    @Test
    void anotherCrewIsThatOfARunWithIt() {
        for (int crew = 0; crew < PEOPLE.size(); crew++) {
            HouseResult run = run(Scalar.CREW_SIZE, PEOPLE.get(crew));
            for (Method method : Method.openTo(HOUSE.cladding())) {
                MethodResult house = run.method(method);
                JobParts.CrewWork work = parts.get(method).crews().get(crew);
                assertThat(work.people()).isEqualTo(PEOPLE.get(crew));
                assertThat(work.days()).isEqualTo(house.crewDays());
                assertThat(work.materialUsd()).isCloseTo(house.costParts().get("material"), SAME);
                assertThat(work.personMinutes())
                        .isCloseTo(
                                house.labourMinutesByStep().values().stream()
                                        .mapToDouble(minutes -> minutes)
                                        .sum(),
                                SAME);
            }
        }
    }

    @Test
    void aLonePersonTakesLongerAtAnOpening() {
        JobParts flange = parts.get(Method.FULL_FLANGE);
        assertThat(flange.crews().get(0).openingMinutes()[0])
                .isGreaterThan(flange.crews().get(1).openingMinutes()[0]);
        assertThat(flange.crews().get(0).days())
                .isGreaterThan(flange.crews().get(2).days());
    }

    @Test
    void anotherHorizonIsThatOfARunWithIt() {
        for (int horizon = 0; horizon < YEARS.size(); horizon++) {
            HouseResult run = run(Scalar.HORIZON_YEARS, YEARS.get(horizon));
            for (Method method : Method.openTo(HOUSE.cladding())) {
                JobParts.Repairs repairs = parts.get(method).horizons().get(horizon);
                assertThat(repairs.years()).isEqualTo(YEARS.get(horizon));
                assertThat(repairs.shopUsd()).isCloseTo(run.method(method).warrantyUsd(), SAME);
                assertThat(repairs.familyUsd()).isCloseTo(run.method(method).expectedDamageUsd(), SAME);
            }
        }
    }

    private static HouseResult run(Scalar scalar, int value) {
        return simulator(Town.BUNDLED.with(Town.BUNDLED.scenario().with(scalar, value)))
                .simulate(HOUSE);
    }

    private static Simulator simulator(Assumptions assumptions) {
        return new Simulator(assumptions, Town.CLIMATE, Sampling.SOBOL, 64, 7);
    }
}
