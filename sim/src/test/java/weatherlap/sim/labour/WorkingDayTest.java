package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.work.WorkFixtures.assumptions;
import static weatherlap.sim.work.WorkFixtures.scenario;
import static weatherlap.sim.work.WorkFixtures.step;

import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;

class WorkingDayTest {
    /** 8 h are 480 min; 50 on the road; 30 person-minutes a day of a crew of two are 15; what is done once an opening is no part of it. */
    @Test
    void whatIsLeftOfADay() {
        Assumptions assumptions = assumptions(
                        List.of(step("sweep", Driver.DAY, 30), step("set", Driver.OPENING, 60)), List.of())
                .with(scenario().with(Scalar.HOURS_PER_DAY, 8).with(Scalar.TRAVEL_MINUTES_PER_DAY, 50));
        assertThat(WorkingDay.leastLeftMinutes(assumptions)).isCloseTo(480 - 50 - 15, within(1e-9));
    }
}
