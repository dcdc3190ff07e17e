package weatherlap.datasets.madeup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Fact;

class JobHabitsTest {
    private static final Assumptions TABLES = AssumptionTables.bundled().assumptions();
    private static final List<JobRecord> PLAIN =
            new JobMaker(TABLES, MadeShop.drawn(TABLES, 0, 1), 0.15, 0.2, 5).jobs(400);

    private static double[] ratios(JobHabits habits) {
        List<JobRecord> kept = habits.applied(PLAIN);
        return IntStream.range(0, PLAIN.size())
                .mapToDouble(j -> kept.get(j).personHours().orElseThrow()
                        / PLAIN.get(j).personHours().orElseThrow())
                .toArray();
    }

    @Test
    void carefulRecordsStayAsTheyAre() {
        assertThat(JobHabits.CAREFUL.applied(PLAIN)).isEqualTo(PLAIN);
    }

    @Test
    void aCrewIsSlowInAllThatItDoes() {
        List<JobRecord> kept = new JobHabits(Map.of("south", 1.35), 0, 0, 0, 0, 0, 1).applied(PLAIN);
        for (int j = 0; j < PLAIN.size(); j++) {
            double factor = PLAIN.get(j).crew().orElseThrow().equals("south") ? 1.35 : 1;
            assertThat(kept.get(j).personHours().orElseThrow())
                    .isCloseTo(factor * PLAIN.get(j).personHours().orElseThrow(), within(1e-9));
            double minutes = kept.get(j).stepMinutes().getOrDefault("unload", 0.0);
            assertThat(minutes)
                    .isCloseTo(factor * PLAIN.get(j).stepMinutes().getOrDefault("unload", 0.0), within(1e-9));
        }
    }

    /** 400 jobs three days apart: the first is 3.277 years before the last. */
    @Test
    void driftEndsAtTheLastJob() {
        double[] ratios = ratios(new JobHabits(Map.of(), 0.1, 0, 0, 0, 0, 1));
        assertThat(ratios[399]).isCloseTo(1, within(1e-12));
        assertThat(ratios[0]).isCloseTo(Math.pow(1.1, -399 * 3 / 365.25), within(1e-12));
    }

    @Test
    void faultsComeAsOftenAsSaid() {
        assertThat(share(new JobHabits(Map.of(), 0, 0, 0, 0, 0.1, 1), 0.5)).isCloseTo(0.1, within(0.05));
        JobHabits typing = new JobHabits(Map.of(), 0, 0, 0.2, 0, 0, 1);
        assertThat(share(typing, 10) + share(typing, 0.1)).isBetween(0.1, 0.25);
        List<JobRecord> blank = new JobHabits(Map.of(), 0, 0, 0, 0.2, 0, 1).applied(PLAIN);
        double left = blank.stream()
                        .filter(job -> !job.facts().containsKey(Fact.CLADDING))
                        .count()
                / 400.0;
        assertThat(left).isCloseTo(0.2, within(0.06));
    }

    private static double share(JobHabits habits, double ratio) {
        double[] ratios = ratios(habits);
        return IntStream.range(0, ratios.length)
                        .filter(j -> Math.abs(ratios[j] - ratio) < 1e-9)
                        .count()
                / (double) ratios.length;
    }

    @Test
    void hoursAreRoundedToQuarters() {
        for (JobRecord job : new JobHabits(Map.of(), 0, 0.25, 0, 0, 0, 1).applied(PLAIN)) {
            assertThat(job.personHours().orElseThrow() % 0.25).isZero();
        }
    }
}
